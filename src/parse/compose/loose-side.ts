// A side said apart from any site: "tender on the left", "right is fine". A bare "right" that opens a sentence may be mere talk.

import type { Side } from '../../terms/index.ts';
import type { SiteRef } from '../context.ts';
import { tagOf } from '../islands/island.ts';
import { isSmall, marked, type Piece, readingOf } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import type { Item } from './site-phrase.ts';
import { otherSide } from './talk.ts';

export interface LooseSide {
  readonly side: Side;
  readonly piece: Piece;
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
    const item = items[k];
    if (item?.type !== 'piece') continue;
    const isMirror = readingOf(item.piece, 'sides.mirror') !== null;
    if (item.piece.role !== 'side' && !isMirror) continue;
    if (items.slice(Math.min(i, k) + 1, Math.max(i, k)).some((one) => one.type === 'site') && k > i) continue;
    // "Weaker than the left" is said of the other side.
    const against = items[k - 1];
    if (against?.type === 'piece' && isSmall(against.piece, 'before')) continue;
    const read = sideOf(item.piece, tokens, items, mind);
    if (read !== null) return read;
  }
  return null;
}

const byDistance = (length: number, i: number): readonly number[] =>
  Array.from({ length }, (_, k) => k)
    .filter((k) => k !== i)
    .sort((a, b) => Math.abs(a - i) - Math.abs(b - i) || b - a);

function sideOf(
  piece: Piece,
  tokens: readonly Token[],
  items: readonly Item[],
  mind: readonly SiteRef[],
): LooseSide | null {
  const after = readingOf(piece, 'sides.side-after');
  const island = after ?? readingOf(piece, 'sides.side-before') ?? readingOf(piece, 'sides.mirror');
  const named = island === null ? null : tagOf(island, 'side');
  if (named === null || marked(piece, 'homophone')) return null;
  const inMind = mind.find(({ side }) => side === 'left' || side === 'right')?.side ?? null;
  if (named === 'mirror') {
    const side = otherSide(inMind);
    return side === null ? null : { side, piece, doubt: [] };
  }
  const side = named as Side;
  if (!piece.weak) return { side, piece, doubt: [] };
  // A bare "right" or "left" is a side only where something is said of it at once, and not where it ends a sentence's call.
  const position = items.findIndex((item) => item.type === 'piece' && item.piece === piece);
  const next = items[position + 1];
  const paused = (tokens[piece.to - 1]?.pause ?? '') !== '';
  if (paused && position === 0) return null;
  if (next?.type === 'piece' && isSmall(next.piece, 'link')) return { side, piece, doubt: [] };
  if (next?.type === 'piece' && next.piece.role === 'csm' && !paused) return { side, piece, doubt: [] };
  if (position === 0 && inMind !== null && otherSide(side) === inMind)
    return { side, piece, doubt: [`Was "${side}" said as the side?`] };
  if (position === 0) return side === 'left' && inMind !== null ? { side, piece, doubt: [] } : null;
  return { side, piece, doubt: [] };
}
