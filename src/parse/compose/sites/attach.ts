// Which sites each finding of a clause belongs to: the one before it, the one it leads to, or the one in mind.

import type { Token } from '../../token.ts';
import { choose, deniesOfIt } from './choose-site.ts';
import { hasRole, type Item, isContrast, isException, isSmallItem, wordsOf } from './item.ts';
import { anySite, isExtent, lastSite, nextSite, says } from './near-site.ts';
import { type Attaches, groupFrom, groupUpTo } from './site-group.ts';

/** Indexes of the site items a finding belongs to; empty: the site in mind. */
export type Attachment = readonly number[];

const isFinding: Attaches = (item) => hasRole(item, 'finding');

/** For each item that is a finding (or whatever `attaches` says), the sites it belongs to; `hasMind` where one is in mind. */
export function attach(
  items: readonly Item[],
  tokens: readonly Token[],
  attaches: Attaches = isFinding,
  hasMind = false,
): ReadonlyMap<number, Attachment> {
  const result = new Map<number, Attachment>();
  const used = new Set<number>();
  let findingFirst = false;
  for (const [i, item] of items.entries()) {
    if (!attaches(item)) continue;
    const spared = sparedFrom(items, tokens, i);
    // "Everything but the left ankle is fine" says nothing of the ankle, and of no site in mind: it stays in words.
    if (spared !== null && !items.slice(0, spared).some(({ type }) => type === 'site')) continue;
    const before = lastSite(items, spared ?? i);
    // With no site before it in the clause, a later one is meant rather than the one in mind ("bruise, size of a fist, right hip").
    const ahead =
      nextSite(items, tokens, i, attaches) ??
      (before === null ? anySite(items, tokens, i, attaches, hasMind) : null);
    // "Two punctures there, and swelling up the calf": "there" is the place that is spoken of.
    const pointed = items[i + 1];
    const isThere =
      hasMind &&
      before === null &&
      pointed?.type === 'piece' &&
      tokens[pointed.piece.from - 1]?.pause === '' &&
      /^(there|here)$/.test(tokens[pointed.piece.from]?.word ?? '') &&
      pointed.piece.to - pointed.piece.from === 1;
    // "Belly:" "no guarding, except in the lower right quadrant": what is excepted is not the place that is spoken of.
    const isExcepted =
      (hasMind || before !== null) &&
      ahead !== null &&
      items.slice(i, ahead).some((one) => isException(one) || isContrast(one));
    // "It's swollen, with a gash about four centimetres wrist not tender": what is there "with" it is of the place in mind.
    const isWith = hasMind && before === null && ahead !== null && isWithIt(items, tokens, i);
    const isMinds = isExcepted || (isThere && isJoined(items[i + 2]));
    const next = isMinds || (isWith && deniesOfIt(items, tokens, ahead, attaches)) ? null : ahead;
    // "Bite on the calf, swelling up to the knee": so far the swelling goes.
    const after = before !== null && next !== null && isExtent(items, tokens, next) ? null : next;
    const choice = choose({ items, tokens, i, before, after, used, findingFirst, attaches });
    if (choice === null) {
      result.set(i, []);
      continue;
    }
    if (choice === after) findingFirst = true;
    const group =
      choice === after
        ? groupFrom(items, tokens, choice, attaches)
        : // "A bruise on the right cheek and the left eye swollen": the cheek is the bruise's.
          groupUpTo(items, tokens, choice).filter((at) => at === choice || !findingFirst || !used.has(at));
    for (const index of group) used.add(index);
    result.set(i, group);
  }
  return result;
}

// "Face: no cuts, but the nose is bleeding."
const isWithIt = (items: readonly Item[], tokens: readonly Token[], i: number): boolean =>
  items.slice(0, i).some((item) => tokens[wordsOf(item).from]?.word === 'with');

const isJoined = (item: Item | undefined): boolean => isSmallItem(item, 'join');

// "Both legs except the left ankle are fine": what is said after an exception is said of what stands before it, where
// nothing was said of that yet. Gives the place of the "except", or null.
function sparedFrom(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const at = items.slice(0, i).findLastIndex(isException);
  if (at < 0 || items.slice(0, at).some(says) || !items.slice(at, i).some(({ type }) => type === 'site'))
    return null;
  return items.slice(at, i).some((item) => isNewClause(item, tokens)) ? null : at;
}

// "Which is swollen", "there is a bruise".
const isNewClause = (item: Item, tokens: readonly Token[]): boolean =>
  isSmallItem(item, 'exists') || /^(which|who|that|it|there)$/.test(tokens[wordsOf(item).from]?.word ?? '');
