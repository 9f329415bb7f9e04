// A side said apart from any site: "tender on the left", "right is fine". A bare "right" that opens a sentence may be mere talk.

import type { Side } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf } from './item.ts';
import { isMirror, sideAfter } from './said-side.ts';
import { oneSide, otherSide } from './side.ts';

export interface LooseSide {
  readonly side: Side;
  readonly piece: Piece;
  /** what a person must settle of it, in plain words */
  readonly doubt: readonly string[];
}

/** The side that stands nearest to item `i` without a site of its own, or null. */
export function looseSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  for (const k of byDistance(items.length, i)) {
    const piece = pieceOf(items[k]);
    if (piece === null || (piece.role !== 'side' && !isMirror(piece))) continue;
    // A side past the next site is that site's.
    if (k > i && items.slice(i + 1, k).some((one) => one.type === 'site')) continue;
    // "Weaker than the left" is said of the other side.
    if (isSmallItem(items[k - 1], 'before')) continue;
    const read = sideAt(items, tokens, k, piece, mind);
    if (read !== null) return read;
  }
  return null;
}

const byDistance = (length: number, i: number): readonly number[] =>
  Array.from({ length }, (_, k) => k)
    .filter((k) => k !== i)
    .sort((a, b) => Math.abs(a - i) - Math.abs(b - i) || b - a);

function sideAt(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
  piece: Piece,
  mind: readonly SiteRef[],
): LooseSide | null {
  const side = sideAfter(piece);
  if (side === null || marked(piece, 'homophone')) return null;
  const inMind = oneSide(mind);
  if (side === 'mirror') {
    const other = otherSide(inMind);
    return other === null ? null : { side: other, piece, doubt: [] };
  }
  const sure: LooseSide = { side, piece, doubt: [] };
  if (!piece.weak) return sure;
  // A bare "right" or "left" is a side only where something is said of it at once, and not where it ends a sentence's call.
  const next = items[k + 1];
  const paused = isPaused(tokens, piece);
  const opens = k === 0;
  if (paused && opens) return null;
  if (next?.type === 'piece' && isSmall(next.piece, 'link')) return sure;
  if (hasRole(next, 'csm') && !paused) return sure;
  // "Left facial droop": a finding that has its own place can only be on a side of it.
  if (next?.type === 'piece' && next.piece.role === 'finding' && marked(next.piece, 'at') && !paused)
    return sure;
  if (!opens) return sure;
  if (inMind !== null && otherSide(side) === inMind)
    return { side, piece, doubt: [`Was "${side}" said as the side?`] };
  return side === 'left' && inMind !== null ? sure : null;
}
