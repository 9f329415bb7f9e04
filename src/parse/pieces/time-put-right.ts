// "On at fourteen twenty, no, fourteen twenty three": the second time is the one that was meant, and the first was never said.

import type { TimeReading } from '../times/index.ts';
import type { Token } from '../token.ts';
import { marked, type Piece, type Role, readingOf } from './piece.ts';

const TURNING = /^(no|nope|sorry|negative|correction|wait|actually|rather|make|that|i|mean|hang|on)$/;

/** The pieces with each time, its "no" and the time behind it as one piece that tells the later one. */
export function withTimesPutRight(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  if (!pieces.some(({ role }) => role === 'time')) return pieces;
  const out: Piece[] = [];
  for (let i = 0; i < pieces.length; i++) {
    const piece = pieces[i];
    if (piece === undefined) break;
    const behind = isTimeOfCare(pieces, i) ? meantBehind(pieces, i, tokens) : 0;
    const meant = pieces[i + behind];
    const time = behind === 0 || meant === undefined ? null : timeOf(meant);
    out.push(time === null || meant === undefined ? piece : told(piece, meant.to, time));
    if (time !== null) i += behind;
  }
  return out;
}

// "Heart rate one ten, no, one thirty" puts a figure right.
function isTimeOfCare(pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece?.role !== 'time' || timeOf(piece) === null) return false;
  const of = pieces.slice(0, i).findLast(({ role }) => OF.has(role));
  return of?.role === 'care' || (of?.role === 'vital' && !marked(piece, 'ago-only'));
}

const OF: ReadonlySet<Role> = new Set(['care', 'vital', 'csm', 'figure']);

/** How many pieces behind a time the one stands that puts it right; 0 for none. */
function meantBehind(pieces: readonly Piece[], from: number, tokens: readonly Token[]): number {
  let at = from + 1;
  while (isTurning(pieces[at], tokens)) at++;
  const meant = pieces[at];
  return at > from + 1 && meant !== undefined && timeOf(meant) !== null ? at - from : 0;
}

const isTurning = (piece: Piece | undefined, tokens: readonly Token[]): boolean =>
  piece !== undefined && tokens.slice(piece.from, piece.to).every(({ word }) => TURNING.test(word));

const timeOf = (piece: Piece): TimeReading['time'] | null =>
  readingOf(piece, 'times.when')?.slots.find(({ time }) => time !== null)?.time ?? null;

const told = (piece: Piece, to: number, time: TimeReading['time']): Piece => ({
  ...piece,
  to,
  islands: piece.islands.map((island) => ({
    ...island,
    to,
    slots: island.slots.map((slot) => (slot.time === null ? slot : { ...slot, time })),
  })),
});
