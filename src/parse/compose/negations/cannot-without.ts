// Tells the "without" of "can't move it without pain", which denies nothing.

import { likelyTag } from '../../pieces/piece.ts';
import { type Item, pieceOf } from '../sites/item.ts';

/** True where what somebody cannot do stands before the "without" at token `start`: "can't move it without pain" hurts. */
export const isCannotWithout = (items: readonly Item[], start: number): boolean =>
  items.some((item) => {
    const piece = pieceOf(item);
    return (
      piece?.role === 'finding' &&
      piece.to <= start &&
      likelyTag(piece, 'finding') === 'limited-motion' &&
      likelyTag(piece, 'present') !== 'false'
    );
  });
