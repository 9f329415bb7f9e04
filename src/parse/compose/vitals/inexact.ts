// Whether a number only bounds a sign or is one end of a range ("over a hundred", "twenty to twenty four"): it is no reading.

import type { Island } from '../../islands/island.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

const BOUND = /^(over|under|above|below|than|between|from|least|most|exceeding|beyond|past|not)$/;

/** True where a word between a sign's name and its figure makes the figure a bound: "pulse is over a hundred". */
export const isBounded = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({ word }) => BOUND.test(word));

const NUMBERS: ReadonlySet<Role> = new Set(['figure', 'vital', 'time', 'attribute']);

/** True where the number that ends piece `i` opens a range: "resps twenty to twenty four", "ninety or ninety two"; or a count: "twenty two in fifteen". */
export function opensRange(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const [piece, joint, end] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || joint === undefined || end === undefined) return false;
  if (isPaused(tokens, piece) || isPaused(tokens, joint) || !NUMBERS.has(end.role)) return false;
  const joins = /^(to|or|through|in)$/.test(tokens[joint.from]?.word ?? '') && joint.to - joint.from === 1;
  return joins && (joint.role === 'small' || isSmall(joint, 'or')) && startsWithNumber(end);
}

/** True where the number that begins piece `i` closes one: "ten to | twelve breaths". */
export function closesRange(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const [start, joint, end] = pieces.slice(Math.max(0, i - 2), i + 1);
  if (i < 2 || start === undefined || joint === undefined || end === undefined) return false;
  const joins = /^(to|or)$/.test(tokens[joint.from]?.word ?? '') && joint.to - joint.from === 1;
  return (
    joins &&
    start.role === 'figure' &&
    !isPaused(tokens, start) &&
    !isPaused(tokens, joint) &&
    startsWithNumber(end)
  );
}

/** True where nobody can tell where the time before a sign's figure ends: "pulse at sixteen | twenty one fifteen". */
export const isRestOfTime = (tokens: readonly Token[], sign: Island, next: Piece): boolean =>
  next.role === 'time' && marked(next, 'ago-only') && tokens[(sign.slots[0]?.from ?? 0) - 1]?.word === 'at';

const startsWithNumber = ({ from, islands: [island] }: Piece): boolean => island?.slots[0]?.from === from;

/** True for "pulse at two oh five was eighty": the first of the two numbers is when. */
export function isTimeOfSign(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const [piece, link, figure] = pieces.slice(i, i + 3);
  if (piece === undefined || link === undefined || figure?.role !== 'figure') return false;
  const led = tokens[(piece.islands[0]?.slots.at(-1)?.from ?? 0) - 1]?.word === 'at';
  return led && !isPaused(tokens, piece) && /^(was|is|were)$/.test(tokens[link.from]?.word ?? '');
}

/** True where the piece before a sign's figure ends in a word that makes it a bound: "at least | ninety systolic". */
export const endsInBound = (tokens: readonly Token[], before: Piece | undefined): boolean =>
  before !== undefined &&
  !isPaused(tokens, before) &&
  before.role !== 'vital' &&
  isBounded(tokens, before.to - 1, before.to);
