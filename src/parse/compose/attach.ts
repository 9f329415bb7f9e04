// Which site each finding of a clause belongs to: the one before it, the one it leads to, or the one in mind.

import { holdersOf } from '../../terms/index.ts';
import { hasTag } from '../islands/island.ts';
import { isSmall, type Role } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import type { Item, SitePhrase } from './site-phrase.ts';

/** Indexes of the site items a finding belongs to; empty: the site in mind. */
export type Attachment = readonly number[];

const isFinding = (item: Item | undefined): boolean =>
  item?.type === 'piece' && item.piece.role === 'finding';
const isJoin = (item: Item | undefined): boolean => item?.type === 'piece' && isSmall(item.piece, 'join');
const isLink = (item: Item | undefined): boolean => item?.type === 'piece' && isSmall(item.piece, 'link');

/** For each item that is a finding (or whatever `attaches` says), the sites it belongs to. */
export function attach(
  items: readonly Item[],
  tokens: readonly Token[],
  attaches: (item: Item) => boolean = isFinding,
): ReadonlyMap<number, Attachment> {
  const result = new Map<number, Attachment>();
  const used = new Set<number>();
  let findingFirst = false;
  items.forEach((item, i) => {
    if (!attaches(item)) return;
    const before = lastSite(items, i);
    // With no site before it in the clause, a later one is meant rather than the one in mind ("bruise, size of a fist, right hip").
    const after = nextSite(items, tokens, i, attaches) ?? (before === null ? anySite(items, i) : null);
    const choice = choose({ items, tokens, i, before, after, used, findingFirst, attaches });
    if (choice === null) return void result.set(i, []);
    if (choice === after) findingFirst = true;
    const group =
      choice === after ? groupFrom(items, tokens, choice, attaches) : groupUpTo(items, tokens, choice);
    for (const index of group) used.add(index);
    result.set(i, group);
  });
  return result;
}

interface Choice {
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
  readonly i: number;
  readonly before: number | null;
  readonly after: number | null;
  readonly used: ReadonlySet<number>;
  readonly findingFirst: boolean;
  readonly attaches: (item: Item) => boolean;
}

function choose({ items, tokens, i, before, after, used, findingFirst, attaches }: Choice): number | null {
  const led = after !== null && phraseAt(items, after)?.led === true;
  if (before !== null && !used.has(before) && !items.slice(before + 1, i).some(attaches)) {
    // "The left arm has bruising at the elbow": the narrower place that it leads to is the one.
    if (led && after !== null && isWithin(items, after, before) && !items.slice(i + 1, after).some(attaches))
      return after;
    // A heading with a pause after it yields to a site that the finding leads to: "right leg, swelling over the knee".
    const heading = led && after !== null && pauseAfter(items, tokens, before) !== '';
    return heading ? after : before;
  }
  if (led) return after;
  if (before === null) return after;
  if (after !== null && findingFirst && adjacent(items, tokens, i, after)) return after;
  if (after !== null && isAttributive(items, tokens, i, after)) return after;
  return before;
}

function isWithin(items: readonly Item[], inner: number, outer: number): boolean {
  const [a, b] = [phraseAt(items, inner)?.sites[0], phraseAt(items, outer)?.sites[0]];
  if (a === undefined || b === undefined) return false;
  return holdersOf(a.site).includes(b.site) || (a.site === b.site && a.level !== null);
}

const phraseAt = (items: readonly Item[], index: number): SitePhrase | null => {
  const item = items[index];
  return item?.type === 'site' ? item.phrase : null;
};

function lastSite(items: readonly Item[], i: number): number | null {
  for (let k = i - 1; k >= 0; k--) if (items[k]?.type === 'site') return k;
  return null;
}

const PASSED: ReadonlySet<Role> = new Set([
  'attribute',
  'figure',
  'negation',
  'answer',
  'vital',
  'part',
  'talk',
  'small',
]);

// Only what belongs to the list of findings may stand between a finding and the site it leads to.
function nextSite(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  attaches: (item: Item) => boolean,
): number | null {
  for (let k = i + 1; k < items.length; k++) {
    const item = items[k];
    if (item === undefined) return null;
    if (item.type === 'site') {
      const paused = pauseAfter(items, tokens, k - 1) !== '';
      return paused && !item.phrase.led && k - 1 > i ? null : k;
    }
    if (attaches(item)) continue;
    if (!PASSED.has(item.piece.role) || isSmall(item.piece, 'before')) return null;
  }
  return null;
}

function anySite(items: readonly Item[], i: number): number | null {
  for (let k = i + 1; k < items.length; k++) {
    const item = items[k];
    if (item?.type === 'site') return k;
    // "Weak because of the thumb" is not said of the thumb.
    if (item !== undefined && isSmall(item.piece, 'before')) return null;
  }
  return null;
}

function pauseAfter(items: readonly Item[], tokens: readonly Token[], index: number): string {
  const item = items[index];
  if (item === undefined) return '';
  const to = item.type === 'site' ? item.phrase.to : item.piece.to;
  return tokens[to - 1]?.pause ?? '';
}

const isQuiet = (item: Item): boolean =>
  item.type === 'piece' &&
  (item.piece.role === 'small' || item.piece.role === 'attribute') &&
  !isJoin(item) &&
  !isLink(item);

function adjacent(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  return items.slice(i + 1, site).every(isQuiet) && pauseAfter(items, tokens, i) === '';
}

// "Swollen right knee": an adjective straight before a site, and not what an "is" says of the site before.
function isAttributive(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const item = items[i];
  const island = item?.type === 'piece' ? item.piece.islands[0] : undefined;
  if (island === undefined || !hasTag(island, 'adj') || hasTag(island, 'predicate')) return false;
  return site === i + 1 && pauseAfter(items, tokens, i) === '' && !isLink(items[i - 1]);
}

// "Neck, chest and back", "hip and knee": sites joined by a word, or three and more by pauses, are meant together.
function groupFrom(
  items: readonly Item[],
  tokens: readonly Token[],
  first: number,
  attaches: (item: Item) => boolean,
): readonly number[] {
  const group = [first];
  let joined = false;
  for (let k = first + 1; k < items.length; k++) {
    const item = items[k];
    if (item?.type === 'site') {
      if (ownsWhatFollows(items, tokens, k, attaches)) break;
      if (!joined && pauseAfter(items, tokens, k - 1) === '' && !item.phrase.led) break;
      group.push(k);
    } else if (isJoin(item)) joined = true;
    else if (!(item !== undefined && isQuiet(item))) break;
  }
  return joined || group.length > 2 ? group : [first];
}

// "… and left knee is bruised": a site that something is said of does not belong to the list before it.
function ownsWhatFollows(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
  attaches: (item: Item) => boolean,
): boolean {
  const next = items[k + 1];
  if (next === undefined || pauseAfter(items, tokens, k) !== '') return false;
  return attaches(next) || isLink(next);
}

function groupUpTo(items: readonly Item[], tokens: readonly Token[], last: number): readonly number[] {
  const group = [last];
  let joined = false;
  for (let k = last - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type === 'site') {
      if (!joined && pauseAfter(items, tokens, k) === '') break;
      group.unshift(k);
    } else if (isJoin(item)) joined = true;
    else if (!(item !== undefined && isQuiet(item))) break;
  }
  return joined || group.length > 2 ? group : [last];
}

/** The group of sites around one, for a clause that only names sites. */
export const siteGroup = groupUpTo;
