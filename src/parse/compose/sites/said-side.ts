// What a piece says by itself of side and part.

import type { Part, Side } from '../../../terms/index.ts';
import type { Island } from '../../islands/island.ts';
import { tagOf, tagsOf } from '../../islands/island.ts';
import { type Piece, readingOf } from '../../pieces/piece.ts';

/** The side as the grammar gives it; `mirror` is the other one of the side in mind. */
export type SaidSide = Side | 'mirror';

const sideOf = (island: Island | null): SaidSide | null =>
  island === null ? null : (tagOf(island, 'side') as SaidSide | null);

/** The side that stands before its site, or else after it ("left arm", "arm on the left"), or null. */
export const sideBefore = (piece: Piece): SaidSide | null =>
  sideOf(
    readingOf(piece, 'sides.side-before') ??
      readingOf(piece, 'sides.side-after') ??
      readingOf(piece, 'sides.mirror'),
  );

/** The side that stands after what it is said of, or else before it, or null. */
export const sideAfter = (piece: Piece): SaidSide | null =>
  sideOf(
    readingOf(piece, 'sides.side-after') ??
      readingOf(piece, 'sides.side-before') ??
      readingOf(piece, 'sides.mirror'),
  );

/** True where the piece may be "the other", "opposite". */
export const isMirror = (piece: Piece): boolean => readingOf(piece, 'sides.mirror') !== null;

/** The parts of a site that a piece names. */
export const partsOf = (piece: Piece): readonly Part[] => {
  const reading = readingOf(piece, 'sides.part-before') ?? readingOf(piece, 'sides.part-after');
  return reading === null ? [] : (tagsOf(reading, 'part') as Part[]);
};
