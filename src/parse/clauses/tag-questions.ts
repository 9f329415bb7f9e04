// "You have no pain, do you", "no swelling there, is there, mate": words behind what was said that make a question of it.

import { hasTag } from '../islands/island.ts';
import { isSmall, type Piece, readingOf } from '../pieces/piece.ts';
import { pauseAfter } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { become, type Place, type Turn } from './place.ts';
import { isOpenEnd } from './run-on.ts';

/** "You have no pain, do you": what was said becomes a question. */
export function tagQuestion({ piece, pieces, i, tokens, full, draft }: Place): Turn | null {
  const tag = readingOf(piece, 'talk.tag');
  if (tag === null || !full || draft.mood !== 'statement' || !closes(pieces, i, tokens)) return null;
  if (hasTag(tag, 'denied-before') && !isOfDenial(draft.pieces, tokens)) return null;
  if (hasTag(tag, 'to-you') && !isToSomebody(draft.pieces, pieces.slice(i), tokens)) return null;
  return become('question');
}

const isToSomebody = (
  said: readonly Piece[],
  [tag, next]: readonly Piece[],
  tokens: readonly Token[],
): boolean =>
  said.some((piece) => isSmall(piece, 'you') || OWNED.test(saidIn(tokens, piece.from, piece.to))) ||
  next?.role === 'talk' ||
  (tag !== undefined && !isOpenEnd(tokens, tag.from));

const OWNED = /\b(you|your)\b/;

// "Do you, mate": nothing but whom it is said to stands behind it.
function closes(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const end = pieces.findIndex((one, k) => k >= i && /^(end|ask)$/.test(pauseAfter(tokens, one)));
  return pieces.slice(i + 1, end < 0 ? pieces.length : end + 1).every(({ role }) => role === 'talk');
}

// "No swelling there, is there" is of what is denied; "no swelling, and the pulse is there" of the pulse.
function isOfDenial(said: readonly Piece[], tokens: readonly Token[]): boolean {
  const at = said.findLastIndex((one) => DENIES.test(saidIn(tokens, one.from, one.to)));
  const behind = said.slice(at + 2);
  return at >= 0 && !behind.some(({ role }) => role === 'csm' || role === 'vital');
}

const DENIES = /\b(no|not|never|nothing|none|without)\b/;
