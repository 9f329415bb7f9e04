// "A kiwi allergy": the word before "allergy" is what it is to, whatever word that is. Of these no allergy at all is denied.

import type { HistoryStatement } from '../../../terms/index.ts';
import { hasTag, tagOf } from '../../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { type Talk, textOf } from '../talk.ts';
import type { FoundHistory } from './found-history.ts';

const isAllergy = (piece: Piece | undefined): piece is Piece => {
  const island = piece === undefined ? null : readingOf(piece, 'history.allergies');
  return island !== null && tagOf(island, 'topic') === 'allergies' && hasTag(island, 'noun');
};

/** The allergy whose allergen stands straight before the topic's name at `i`, or null. */
export function namedAllergy(
  talk: Talk,
  pieces: readonly Piece[],
  i: number,
  negated: boolean,
): FoundHistory | null {
  const piece = pieces[i];
  const { tokens } = talk;
  if (!isAllergy(piece) || !/^allerg(?:y|ies)$/.test(tokens[piece.from]?.word ?? '')) return null;
  let first = i;
  while (isJoined(talk, pieces[first - 1]) && isWordOfIt(pieces[first - 1] as Piece)) first--;
  const named = pieces.slice(first, i);
  if (!named.some(({ role }) => role === 'unknown')) return null;
  // The words that deny it are kept with it: without them the text would tell of the allergy.
  const before = pieces[first - 1];
  const denies = negated && before !== undefined && marked(before, 'negation', 'before') ? before : undefined;
  const from = denies?.from ?? pieces[first]?.from ?? piece.from;
  const to = piece.to;
  const statement: HistoryStatement = { kind: 'history', topic: 'allergies', text: textOf(talk, from, to) };
  return { statement: negated ? { ...statement, present: false } : statement, known: {}, from, to };
}

const isJoined = ({ tokens }: Talk, before: Piece | undefined): boolean =>
  before !== undefined && !isPaused(tokens, before);

// "A bad kiwi allergy", "passion fruit allergy", "kiwi or mango allergy".
const isWordOfIt = (piece: Piece): boolean =>
  piece.role === 'unknown' ||
  piece.role === 'attribute' ||
  (isSmall(piece, 'word') && !isSmall(piece, 'turn') && !isSmall(piece, 'thing')) ||
  isSmall(piece, 'article') ||
  isSmall(piece, 'or');
