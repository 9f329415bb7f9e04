// Whether a yes or a no stands for itself, or begins what it denies ("no deformity").

import { endsBreath } from '../islands/bounds.ts';
import { isLikely, isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused, pauseAfter, pauseBefore } from '../span.ts';
import type { Token } from '../token.ts';

// What may stand between a "no" and the finding that it denies.
const SKIPPED: ReadonlySet<Role> = new Set(['small', 'talk', 'side', 'part', 'site', 'attribute', 'figure']);

const SUBJECT = /^(i|we|he|she|they)$/;

/** True where the yes or no at `i` stands for itself and does not begin "no deformity" or "no left arm pain". */
export function answers(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  // "It's not swollen": the words that could answer say what it is not.
  if (piece !== undefined && isPredicated(piece, pieces[i + 1], tokens)) return false;
  if (piece !== undefined && (isCutShort(piece, tokens) || isOfNoun(piece, pieces[i + 1], tokens)))
    return false;
  if (piece === undefined || readingOf(piece, 'negation') === null || isPaused(tokens, piece)) return true;
  const after = pieces[i + 1];
  // "No and a cut on the chin": the "no" has had its say.
  if (after !== undefined && isSmall(after, 'join') && !isSmall(after, 'or')) return true;
  for (let k = i + 1; k < pieces.length; k++) {
    const next = pieces[k];
    if (next === undefined) break;
    // "No, okay": the courtesy is nothing that is denied.
    if (next.role === 'finding' && next.weak && isLikely(next, 'soft')) return true;
    // "No sir, nothing", "no, no hurt there": what follows denies by itself.
    if (next.role === 'finding' && (marked(next, 'nothing') || tokens[next.from]?.word === 'no')) return true;
    if (next.role === 'finding') return isLikely(next, 'adj') && k > i + 1;
    // "No, I remember all of it": what has its own subject is told, and not denied.
    if (next.role === 'history' && SUBJECT.test(tokens[next.from]?.word ?? '')) return true;
    // "No, I can't feel that."
    if (next.role === 'csm' && tokens.slice(next.from, next.to).some(({ word }) => word === 'not'))
      return true;
    if (next.role === 'csm' || next.role === 'history' || next.role === 'care') return k > i + 1;
    if (!SKIPPED.has(next.role) || isPaused(tokens, next)) return true;
  }
  return true;
}

/** "Any pain there", "does it hurt a lot?": words that could answer are the question's own end, said in the same breath. */
export function endsQuestion(piece: Piece, tokens: readonly Token[]): boolean {
  if (pauseBefore(tokens, piece) !== '') return false;
  // "Any worse when I do this?"
  const isOwn =
    marked(piece, 'explicit') && /^(this|that|it|these|those)$/.test(tokens[piece.to]?.word ?? '');
  return marked(piece, 'pointed') || isOwn || pauseAfter(tokens, piece) === 'ask';
}

/** True for words that answer only where nothing goes on with them: "I do not like it" is no "I do not", "I have none left" no "none". */
export const isCutShort = (piece: Piece, tokens: readonly Token[]): boolean => {
  const { from, to } = piece;
  if (marked(piece, 'short') && !endsBreath(tokens, piece)) return true;
  const [before, last, next] = [tokens[from - 1], tokens[to - 1], tokens[to]];
  if (last?.pause === '' && next?.word === 'not' && AUXILIARY.test(last.word)) return true;
  return (
    before?.pause === '' && HAVING.test(before.word) && /^(none|nothing)$/.test(tokens[from]?.word ?? '')
  );
};

// "Bad heart": how bad it is, is said of what follows.
const isOfNoun = (piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean =>
  piece.role === 'attribute' &&
  !isPaused(tokens, piece) &&
  (next?.role === 'unknown' || (next?.role === 'site' && tokens[piece.to - 1]?.word === 'bad'));

const AUXILIARY = /^(do|does|did|is|are|am|was|were|can|could|has|have|had)$/;
const HAVING = /^(have|has|had|got|take|takes)$/;

const isPredicated = (piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean =>
  tokens[piece.to - 1]?.word === 'not' &&
  /^(is|are|was|were)$/.test(tokens[piece.to - 2]?.word ?? '') &&
  !isPaused(tokens, piece) &&
  next?.role === 'finding' &&
  !next.weak;
