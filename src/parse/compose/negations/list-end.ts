// Where a denied list ends at its site: "no pain in the neck, tenderness in the back".

import { hasTag } from '../../islands/island.ts';
import { likelyTag, marked, readingOf, tagIn } from '../../pieces/piece.ts';
import { type Item, isSmallItem, pieceOf } from '../sites/item.ts';

// A "nothing" opens what is denied and is no member of its list.
function isFinding(item: Item | undefined): boolean {
  const piece = pieceOf(item);
  return piece?.role === 'finding' && !marked(piece, 'nothing');
}

/** True where "or" stands straight before item `i`. */
export const joinedByOr = (items: readonly Item[], i: number): boolean => isOr(items[i - 1]);

function isOr(item: Item | undefined): boolean {
  const piece = pieceOf(item);
  const small = piece === null ? null : readingOf(piece, 'small');
  return small !== null && hasTag(small, 'or');
}

// "No neck pain, no back pain": a new denial begins a list of its own.
const sinceDenial = (items: readonly Item[], i: number): readonly Item[] =>
  items.slice(items.slice(0, i).findLastIndex(isDenial) + 1, i);

function isDenial(item: Item): boolean {
  const piece = pieceOf(item);
  return piece !== null && piece.role !== 'finding' && marked(piece, 'negation', 'before');
}

/** True where the site at `i` follows findings and closes their list, unless "or" or "and" goes on. */
export function closesList(items: readonly Item[], i: number): boolean {
  if (!sinceDenial(items, i).some(isFinding)) return false;
  // "Denies neck pain and back pain" goes on in the same order.
  if (goesOn(items, i) || repeats(items, i)) return false;
  const next = pieceOf(items[i + 1]);
  if (next === null || isOr(items[i + 1])) return false;
  const small = readingOf(next, 'small');
  if (small !== null && hasTag(small, 'small', 'join')) return items[i + 2]?.type !== 'site';
  // "Deformity of the wrist: none", "swelling of the ankle is absent" reach back over the site.
  return !(tagIn(next, 'negation', 'negation') ?? '').endsWith('after');
}

/**
 * True where the site at `i` and the finding after it are of the form of the pair before them, with nothing to join the
 * two: "no neck pain, back pain". A list goes on so, and so does somebody who found something: it must be asked.
 */
export function repeats(items: readonly Item[], i: number): boolean {
  const [before, after] = [pieceOf(items[i - 1]), pieceOf(items[i + 1])];
  if (items[i]?.type !== 'site' || items[i - 2]?.type !== 'site') return false;
  if (before?.role !== 'finding' || after?.role !== 'finding') return false;
  const same = likelyTag(before, 'finding');
  return same !== null && same === likelyTag(after, 'finding');
}

function goesOn(items: readonly Item[], i: number): boolean {
  const before = items[i - 1];
  const joined = isSmallItem(before, 'join') || isSmallItem(before, 'or');
  if (!joined || !isFinding(items[i + 1])) return false;
  const finding = items.slice(0, i).findLastIndex(isFinding);
  return items[finding - 1]?.type === 'site';
}
