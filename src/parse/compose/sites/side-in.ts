// The side that a stretch of talk ends on, and the one it takes back ("not the left, the right").

import type { Side } from '../../../terms/index.ts';
import { marked, type Piece, readingOf } from '../../pieces/piece.ts';
import { sideAfter } from './said-side.ts';

interface EndSide {
  readonly side: Side;
  /** the side it was not ("not the left, the right") */
  readonly instead: Side | null;
}

/** The side a clause ends on, and the one it takes back; null where it names none. */
export function sideIn(pieces: readonly Piece[]): EndSide | null {
  const sides: { readonly side: Side; readonly negated: boolean }[] = [];
  let negated = false;
  for (const piece of pieces) {
    // "It was left" denies nothing.
    if (readingOf(piece, 'negation') !== null && !marked(piece, 'negation', 'stop')) negated = true;
    const side = piece.role === 'side' ? sideAfter(piece) : null;
    if (side === null || side === 'mirror') continue;
    sides.push({ side, negated });
    negated = false;
  }
  const last = sides.findLast((one) => !one.negated);
  return last === undefined
    ? null
    : { side: last.side, instead: sides.find((one) => one.side !== last.side)?.side ?? null };
}
