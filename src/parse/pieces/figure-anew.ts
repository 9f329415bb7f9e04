// "Resps fourteen no eighteen sorry the engine shook": whether a figure behind a sign is that sign's own, said again.

import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import type { Piece } from './piece.ts';

// What was misread is not many times another: then the number counts something else.
const MOST_TIMES = 2;

/** True for two numbers that may be of the same sign. */
export const isNear = (was: number, now: number): boolean =>
  now <= was * MOST_TIMES && was <= now * MOST_TIMES;

/** The first figure of a sign that was said with one, or null. */
export const numberOfSign = (sign: Piece | undefined): number | null =>
  sign?.role === 'vital' ? (sign.islands[0]?.slots[0]?.value ?? null) : null;

const BEHIND = /^(sorry|my|mine|i|we|it|he|she|they|the|his|her|because|cause|that|and|but|then)$/;

/** True where a figure ends what is put right: nothing, a pause, a "sorry", the reason of the slip or other talk follows, and no unit. */
export function endsAnew(pieces: readonly Piece[], at: number, tokens: readonly Token[]): boolean {
  const [figure, next] = [pieces[at], pieces[at + 1]];
  if (figure === undefined || next === undefined || isPaused(tokens, figure)) return true;
  return BEHIND.test(tokens[next.from]?.word ?? '');
}

/** True for "hang on", "hold on": who reads a sign looks again. */
export const looksAgain = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  /^(hang|hold) on$/.test(saidIn(tokens, from, to));
