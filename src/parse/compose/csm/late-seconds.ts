// A refill time that comes after the limb: "cap refill in the left foot, two seconds".

import { hasTag, type Island } from '../../islands/island.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import { type Item, pieceOf } from '../sites/item.ts';

// Longer is no refill time but another number that was misheard.
const MOST_SECONDS = 30;

/** The figure that belongs to a refill named at item `i`, or null. */
export function lateSeconds(
  items: readonly Item[],
  i: number,
  island: Island,
): { readonly value: number; readonly piece: Piece } | null {
  if (!hasTag(island, 'refill') || !hasTag(island, 'heading')) return null;
  const piece = items
    .slice(i + 1)
    .flatMap((item) => pieceOf(item) ?? [])
    .find(({ role }) => role !== 'small' && role !== 'side');
  const value = piece?.role === 'figure' ? figureIn(piece) : null;
  return piece === undefined || value === null || value > MOST_SECONDS ? null : { value, piece };
}
