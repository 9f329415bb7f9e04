// Where a "none" is said of another place than the finding before it, which is there.

import { hasRole, type Item, isSmallItem, phraseOf, phrasesIn } from '../sites/item.ts';

/** True for "pain in the left arm, none in the chest": what has its own place is there, and the chest is free of it. */
export function isAtAnother(items: readonly Item[], i: number): boolean {
  const last = lastLoud(items, i);
  const next = items
    .slice(i + 1)
    .find((item) => !isSmallItem(item, 'preposition') && !isSmallItem(item, 'article'));
  if (last?.type !== 'site' || next?.type !== 'site') return false;
  return !next.phrase.sites.some(({ site }) => last.phrase.sites.some((one) => one.site === site));
}

/** True for "swelling on the outside of the ankle, none on the inside": it is there in the part that was named. */
export function isInAnotherPart(items: readonly Item[], i: number): boolean {
  const next = items
    .slice(i + 1)
    .find((item) => !isSmallItem(item, 'preposition') && !isSmallItem(item, 'article'));
  const hasPart = items
    .slice(0, i)
    .some(
      (item) => hasRole(item, 'part') || (phraseOf(item)?.sites ?? []).some(({ parts }) => parts.length > 0),
    );
  return hasPart && hasRole(next, 'part');
}

/** True for a "none" with a circumstance straight after it: "pain with movement, none at rest". */
export function isElsewhere(items: readonly Item[], i: number): boolean {
  const next = items[i + 1];
  const leads = isSmallItem(next, 'preposition') || hasRole(next, 'unknown') || hasRole(next, 'mood');
  // "The rash has gone from the chest": past its article a place is no circumstance.
  const led = items.slice(i + 2).find((item) => !isSmallItem(item, 'article'));
  return leads && led !== undefined && led.type !== 'site' && !hasRole(led, 'side');
}

/** The item before `i` that is no small word. */
export const lastLoud = (items: readonly Item[], i: number): Item | undefined =>
  items.slice(0, i).findLast((item) => !hasRole(item, 'small'));

/** Past the site at `i` where the same site of the other side follows it ("not the left hip, the right hip is tender"). */
export function otherSideAfter(items: readonly Item[], i: number): number | null {
  const phrase = phraseOf(items[i]);
  const later = phrasesIn(items.slice(i + 1)).map(({ sites }) => sites[0]);
  const here = phrase?.sites[0];
  const turns = later.some(
    (one) => one?.site === here?.site && one?.side !== here?.side && one?.sideKnown === 'spoken',
  );
  return phrase !== null && turns ? phrase.to : null;
}
