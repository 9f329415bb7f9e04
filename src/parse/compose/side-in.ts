// The side that a stretch of talk ends on, and the one it takes back ("not the left, the right").

import type { Side } from '../../terms/index.ts';
import { tagOf } from '../islands/island.ts';
import { type Piece, readingOf } from '../pieces/piece.ts';

interface SaidSide {
  readonly side: Side;
  /** the side it was not ("not the left, the right") */
  readonly instead: Side | null;
}

/** The side a clause ends on, and the one it takes back. */
export function sideIn(pieces: readonly Piece[]): SaidSide | null {
  const sides: { side: Side; negated: boolean }[] = [];
  let negated = false;
  for (const piece of pieces) {
    if (readingOf(piece, 'negation') !== null) negated = true;
    if (piece.role !== 'side') continue;
    const island = readingOf(piece, 'sides.side-after') ?? readingOf(piece, 'sides.side-before');
    const side = island === null ? null : tagOf(island, 'side');
    if (side === null || side === 'mirror') continue;
    sides.push({ side: side as Side, negated });
    negated = false;
  }
  const last = sides.findLast((one) => !one.negated) ?? null;
  return last === null
    ? null
    : { side: last.side, instead: sides.find((one) => one.side !== last.side)?.side ?? null };
}
