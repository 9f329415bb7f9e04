// Lists of findings that an "or" further on joins to the denial before them.

import { hasRole, type Item, isAdjective, isSmallItem } from '../sites/item.ts';

/** "Not swollen, tender or bruised": the "or" further on shows that all of these are denied. */
export function isInListWithOr(items: readonly Item[], i: number): boolean {
  if (!isAdjective(items[i - 1])) return false;
  const end = items.findIndex((item, k) => k > i && !isAdjective(item) && !isSmallItem(item, 'or'));
  const list = items.slice(i, end < 0 ? items.length : end);
  return isAdjective(list.at(-1)) && list.some((item) => isSmallItem(item, 'or'));
}

/** "No issues, numbness or weakness", "no problems or swelling"; "nothing wrong here or there" names no finding. */
export function goesOnWithOr(items: readonly Item[], i: number): boolean {
  const end = items.findIndex((item, k) => k > i && item.type === 'site');
  const list = items.slice(i + 1, end < 0 ? items.length : end);
  const [first, next] = list;
  if (isSmallItem(first, 'or')) return hasRole(next, 'finding');
  return hasRole(first, 'finding') && list.some((item) => isSmallItem(item, 'or'));
}
