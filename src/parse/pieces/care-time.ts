// "Oxygen, fifteen litres, started at quarter past two": behind care it is the care's time, and no illness began then.

import type { Token } from '../token.ts';
import { marked, type Piece, type Role, readingOf } from './piece.ts';

/** The pieces with each such "started at" read as a time. */
export const withTimesOfCare = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some(({ role }) => role === 'care')
    ? pieces.map((piece, i) => {
        const when = readingOf(piece, 'times.when');
        return when !== null && startsCare(pieces, i, tokens)
          ? { ...piece, role: 'time', islands: [when] }
          : piece;
      })
    : pieces;

const BESIDE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'figure']);

function startsCare(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const piece = pieces[i];
  if (piece?.role !== 'history' || !marked(piece, 'topic', 'onset')) return false;
  if (!/^(started|began|begun)$/.test(tokens[piece.from]?.word ?? '')) return false;
  const care = pieces.slice(0, i).findLastIndex(({ role }) => role === 'care');
  const between = pieces.slice(care + 1, i);
  return care >= 0 && between.every(({ role, to }) => BESIDE.has(role) && tokens[to - 1]?.pause !== 'end');
}
