// "Pulses in both feet": a pulse that is named with its place, and nothing else said, was found there.

import { hasTag } from '../../islands/island.ts';
import { readingOf } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

/** True where the pulse at `i` and its place are all that was said; that it was found is then inferred. */
export function isPulseNamedAt(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const piece = pieceOf(items[i]);
  const island = piece === null ? null : readingOf(piece, 'csm');
  if (piece === null || island?.rule !== 'csm.distal-pulse') return false;
  // "The pulse in the left foot" may go on with how it is, and "checking the pulse" looks for it.
  if (/^(the|his|her|that)$/.test(tokens[piece.from]?.word ?? '')) return false;
  const [first, last] = [items[0], items.at(-1)];
  if (first === undefined || last === undefined) return false;
  const isAll = wordsOf(first).from === 0 && wordsOf(last).to === tokens.length;
  const isPlaced =
    items.some(({ type }) => type === 'site') ||
    (hasTag(island, 'pulse') && items.some((item) => hasRole(item, 'side')));
  return isAll && isPlaced && items.every((item, k) => k === i || isPlace(item));
}

const isPlace = (item: Item): boolean =>
  item.type === 'site' ||
  hasRole(item, 'side') ||
  hasRole(item, 'part') ||
  (['preposition', 'article', 'join'] as const).some((kind) => isSmallItem(item, kind));
