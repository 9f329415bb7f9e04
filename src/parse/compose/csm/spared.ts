// What an exception leaves of a limb check: "good in all but the left foot".

import type { Side } from '../../../terms/index.ts';
import type { LimbEnd } from '../../context.ts';
import type { Piece } from '../../pieces/piece.ts';
import { type Item, pieceOf } from '../sites/item.ts';
import { otherSide } from '../sites/side.ts';
import { ALL_FOUR } from './limb-ends.ts';

export const piecesAfter = (items: readonly Item[], at: number): readonly Piece[] =>
  items.slice(at + 1).flatMap((item) => pieceOf(item) ?? []);

export const without = (end: LimbEnd, excepted: Side): LimbEnd => {
  const side = end.side === 'both' ? otherSide(excepted) : end.side;
  return { ...end, side };
};

/** Both hands and both feet but those. */
export const othersThan = (excepted: readonly LimbEnd[]): readonly LimbEnd[] =>
  ALL_FOUR.filter(
    (end) =>
      !excepted.some(
        ({ site, side }) => site === end.site && (side === end.side || side === 'both' || side === null),
      ),
  );
