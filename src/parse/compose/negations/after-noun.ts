// Whether a denied noun stands before a place of a clause, with nothing but plain pieces between.

import { isLikely, marked } from '../../pieces/piece.ts';
import type { Item } from '../sites/item.ts';

/** True where the item at `i` comes after a denied finding, or after a "no" that denies nouns only. */
export function isAfterNoun(items: readonly Item[], i: number): boolean {
  for (let k = i - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type !== 'piece') return false;
    const { piece } = item;
    // "There's no guarding, and it's not distended": it is denied itself.
    if (piece.role === 'answer' && marked(piece, 'answer', 'no') && !marked(piece, 'plain')) return false;
    if (piece.role === 'negation') return isLikely(piece, 'nouns');
    if (piece.role === 'finding') return !marked(piece, 'nothing');
  }
  return false;
}
