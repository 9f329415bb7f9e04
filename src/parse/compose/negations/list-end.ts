// Where a denied list ends at its site: "no pain in the neck, tenderness in the back".

import { hasTag } from '../../islands/island.ts';
import { likelyTag, marked, readingOf, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, isAdjective, isSmallItem, phraseOf, pieceOf, wordsOf } from '../sites/item.ts';
import { isQuiet } from '../sites/site-group.ts';
import { isInListWithOr } from './or-list.ts';

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

/**
 * True for a finding or a check past a pause that leads to a place of its own, after a denial of what a place is:
 * "jaw not tender, graze to the right elbow".
 */
export function beginsAtOwnPlace(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const role = pieceOf(items[i])?.role;
  if ((role !== 'finding' && role !== 'csm') || isAdjective(items[i]) || joinedByOr(items, i)) return false;
  const start = items.slice(0, i).findLastIndex((item) => !isSmallItem(item, 'article'));
  const before = items[start];
  if (before === undefined || !isPaused(tokens, wordsOf(before))) return false;
  const denial = items.slice(0, i).findLastIndex(isDenial);
  const denied = items.findIndex((item, k) => k > denial && k < i && isFinding(item));
  if (denial < 0 || denied < 0 || isInListWithOr(items, denied + 1)) return false;
  const isOfPlace = items.slice(0, denial).some(({ type }) => type === 'site');
  const isWhole = isAdjective(items[denied]) || isAbnormality(items[denied]);
  return isOfPlace && isWhole && leadsToPlace(items, tokens, i);
}

function isAbnormality(item: Item | undefined): boolean {
  const piece = pieceOf(item);
  return piece !== null && likelyTag(piece, 'finding') === 'abnormality';
}

function leadsToPlace(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.findIndex((item, k) => k > i && item.type === 'site');
  const between = items.slice(i, at);
  return (
    at > i &&
    phraseOf(items[at])?.led === true &&
    between.slice(1).every((item) => isQuiet(item)) &&
    !between.some((item) => isPaused(tokens, wordsOf(item)))
  );
}
