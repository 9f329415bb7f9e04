// The side straight after a limb check's word, which is its own whatever limb was named before.

import type { SiteRef } from '../../context.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';
import { type LooseSide, looseSide } from '../sites/loose-side.ts';

/** "Pulse in the foot is strong on the right": the side stands behind what is said of the check at `i`. */
export function sideOfState(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  const at = items.findIndex((item, k) => k > i && item.type !== 'site' && !hasRole(item, 'small'));
  if (at < 0 || !hasRole(items[at], 'state')) return null;
  if (items.slice(i, at).some((item) => isPaused(tokens, wordsOf(item)))) return null;
  return sideStraightAfter(items, tokens, at, mind);
}

// "No pulse on the left, one on top of the right foot": a side straight after it is its own, whatever limb was named.
export function sideStraightAfter(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  // "Can't feel them on the right".
  const at = items.findIndex(
    (item, k) => k > i && !isSmallItem(item, 'preposition') && !isSmallItem(item, 'person'),
  );
  const piece = pieceOf(items[at]);
  const isNear = items.slice(i, at).every((item) => !isPaused(tokens, wordsOf(item)));
  if (piece?.role !== 'side' || !isNear || items[at + 1]?.type === 'site') return null;
  const side = looseSide(items, tokens, i, mind);
  return side?.piece === piece && side.side !== 'both' ? side : null;
}
