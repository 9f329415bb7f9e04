// "Sorry, no bruising": where "sorry no" is followed by what it denies, its "no" is no part of the words that take back.

import type { Island } from '../islands/island.ts';
import type { Token } from '../token.ts';
import type { Piece, Role } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces with each such "no" parted from the words before it. */
export const withPartedNo = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.some(({ role }) => role === 'correction')
    ? pieces.flatMap((piece, i) => (denies(pieces, i, tokens) ? parted(piece) : [piece]))
    : pieces;

function denies(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece?.role !== 'correction' || piece.to - piece.from < 2 || next === undefined) return false;
  const [before, no] = [tokens[piece.to - 2], tokens[piece.to - 1]];
  // "No no": one says nothing else than the other.
  return no?.word === 'no' && no.pause === '' && before?.word !== 'no' && DENIED.has(next.role) && !next.weak;
}

const DENIED: ReadonlySet<Role> = new Set(['finding', 'attribute']);

function parted(piece: Piece): readonly Piece[] {
  const no = { ...piece, from: piece.to - 1, weak: true };
  const readings: readonly Island[] = [
    ...reread(no, 'answer', 'talk.answer', { answer: 'no', plain: '' }).islands,
    ...reread(no, 'answer', 'negation.negation', { negation: 'before' }).islands,
  ];
  return [
    { ...piece, to: piece.to - 1 },
    { ...no, role: 'answer', islands: readings },
  ];
}
