// "Tourniquet no, direct pressure on the left arm": a "no" that ends the breath of a thing of care denies that thing and nothing behind it.

import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { deniedBehind } from './checklist.ts';
import { marked, type Piece, type Role, readingOf } from './piece.ts';

export function withCareDenied(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  return pieces.some(({ role }) => role === 'care')
    ? pieces.map((piece, i) => (deniesCare(pieces, i, tokens) ? deniedBehind(piece) : piece))
    : pieces;
}

const BESIDE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'time']);

function deniesCare(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || piece.to - piece.from > 1 || !NO.test(tokens[piece.from]?.word ?? ''))
    return false;
  if (next !== undefined && !isPaused(tokens, piece)) return false;
  const start = pieces.slice(0, i).findLastIndex((one) => isPaused(tokens, one)) + 1;
  const said = pieces.slice(start, i);
  return (
    said.filter((one) => one.role === 'care' && isThing(one)).length === 1 &&
    said.every((one) => one.role === 'care' || (BESIDE.has(one.role) && !marked(one, 'negation')))
  );
}

const NO = /^(no|nope|nah|negative)$/;

const isThing = (piece: Piece): boolean => {
  const island = readingOf(piece, 'care');
  return island !== null && marked(piece, 'noun') && island.slots.length === 0;
};
