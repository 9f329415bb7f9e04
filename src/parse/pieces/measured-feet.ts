// "At eleven thousand feet", "ten feet up": what is counted so is a length, and nobody's foot.

import { pauseAfter } from '../span.ts';
import type { Token } from '../token.ts';
import { figureIn, type Piece } from './piece.ts';

// Nobody has more of them.
const MOST_FEET = 2;

/** The pieces with each "feet" behind such a number read as a word that names no place. */
export const withoutMeasuredFeet = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) =>
    isUnit(piece, pieces[i - 1], tokens) ? { ...piece, role: 'unknown', islands: [], weak: false } : piece,
  );

function isUnit(piece: Piece, before: Piece | undefined, tokens: readonly Token[]): boolean {
  if (piece.role !== 'site' || piece.to - piece.from > 1 || before === undefined) return false;
  if (!/^(feet|foot)$/.test(tokens[piece.from]?.word ?? '') || pauseAfter(tokens, before) !== '')
    return false;
  const counted = before.role === 'figure' ? figureIn(before) : null;
  return counted !== null && counted > MOST_FEET;
}
