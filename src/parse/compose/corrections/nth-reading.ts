// "Correction, first pulse was eighty": of several readings of a sign the one that the words name is put right, and not the last.

import type { Nth } from '../../frame.ts';
import type { Span } from '../../span.ts';
import { saidIn } from '../../token.ts';
import type { Talk } from '../talk.ts';
import type { Changed } from './changes.ts';

const WORDS: readonly (readonly [Nth, RegExp])[] = [
  [1, /\b(first|initial|initially|original|originally|earliest|on (arrival|scene)|to (start|begin) with) ?/],
  [2, /\b(?<!(one|two|three|four|five|six|a) )second\b/],
  [3, /\bthird\b/],
  ['earlier', /\b(earlier|previous|previously|prior)\b/],
];

/** Which reading of its sign a correction means, where its words name one that may not be the last; null else. */
export function nthMeant(
  { tokens, context }: Talk,
  { change, target }: Changed,
  { from, to }: Span,
): Nth | null {
  const isOfSign =
    (change.change === 'statement' && change.statement.kind === 'vital') ||
    (change.change === 'number' && (target.kind === 'vital' || context.said.at(-1)?.kind === 'vital'));
  if (!isOfSign) return null;
  const said = saidIn(tokens, from, to);
  return WORDS.find(([, words]) => words.test(said))?.[0] ?? null;
}

/** True where the words straight before the token name an earlier reading of the sign that it begins, to put it right. */
export function namesEarlier({ tokens, clauses }: Pick<Talk, 'tokens' | 'clauses'>, from: number): boolean {
  const isAnew = clauses.some(
    ({ mood, pieces }) => mood === 'correction' && pieces.some((piece) => piece.from === from),
  );
  return isAnew && /^(initial|earlier|previous|original|prior)$/.test(tokens[from - 1]?.word ?? '');
}
