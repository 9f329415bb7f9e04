// Which sites each finding of a clause belongs to: the one before it, the one it leads to, or the one in mind.

import { holdersOf, regionOf } from '../../../terms/index.ts';
import { isLikely, isSmall, marked, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, phraseOf, pieceOf, wordsOf } from './item.ts';
import { anySite, isExtent, lastSite, nextSite, says } from './near-site.ts';
import {
  type Attaches,
  groupFrom,
  groupUpTo,
  isQuiet,
  LEADING,
  ownsWhatFollows,
  pauseAfterItem,
} from './site-group.ts';

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
    const next =
      nextSite(items, tokens, i, attaches) ??
      (before === null ? anySite(items, tokens, i, attaches, hasMind) : null);
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

interface Choice {
  readonly items: readonly Item[];
  readonly tokens: readonly Token[];
  readonly i: number;
  readonly before: number | null;
  readonly after: number | null;
  readonly used: ReadonlySet<number>;
  /** an earlier finding of the clause led to its site */
  readonly findingFirst: boolean;
  readonly attaches: Attaches;
}

function choose({ items, tokens, i, before, after, used, findingFirst, attaches }: Choice): number | null {
  const led =
    after !== null && (phraseOf(items[after])?.led === true || leadsStraight(items, tokens, i, after));
  if (before !== null && after !== null && isNextOnes({ items, tokens, i, after, attaches })) return before;
  if (before !== null && after !== null && beginsAnew({ items, tokens, i, before, after, used, attaches }))
    return after;
  if (before !== null && !used.has(before) && !items.slice(before + 1, i).some(attaches)) {
    // "The left arm has bruising at the elbow": the narrower place that it leads to is the one.
    const straight = led || (after !== null && tellsQuadrant(items, tokens, i, before, after, attaches));
    if (
      straight &&
      isWithin(items[after ?? -1], items[before]) &&
      !items.slice(i + 1, after ?? i).some(attaches)
    )
      return after;
    // A heading with a pause after it, or after what was said of it, yields to a site that is led to: "right leg, swelling
    // over the knee", "left forearm bleeding, tourniquet on the left upper arm".
    const heading = items.slice(before, i).some((_, k) => pauseAfterItem(items, tokens, before + k) !== '');
    // "Both eyes open, no bleeding from the nose": a denial begins anew, and leads to its own site.
    const denied = items.slice(before + 1, i).some(isNo);
    // "Right hip is high and there's swelling in the groin".
    const anew = items
      .slice(before + 1, i)
      .some((item) => isSmallItem(item, 'exists') || isThere(item, tokens));
    // "Back no tenderness, graze at the sacrum": past a pause the place is the next finding's.
    const isOthers = denied && !heading && !anew && isParted(items, tokens, i, after ?? i, attaches);
    return led && (heading || denied || anew) && !isOthers ? after : before;
  }
  // "Right hip swollen and tender, deformity of the right thigh": a pause ends what is said of the hip.
  if (led && before !== null && after !== null && endsGroup(items, tokens, i, attaches)) return before;
  if (led || before === null) return after;
  if (after !== null && findingFirst && isAdjacent(items, tokens, i, after)) return after;
  if (after !== null && isAttributive(items, tokens, i, after)) return after;
  return before;
}

// "Abdomen tender right lower quadrant" leads to the quadrant by standing straight before it.
function tellsQuadrant(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  before: number,
  after: number,
  attaches: Attaches,
): boolean {
  const piece = pieceOf(items[i]);
  const isBelly = phraseOf(items[before])?.sites.every(({ site }) => site === 'abdomen') === true;
  if (!isBelly || piece === null || isLikely(piece, 'present', 'false')) return false;
  return isAdjacent(items, tokens, i, after) && !ownsWhatFollows(items, tokens, after, attaches);
}

// "Belly soft, tender left lower", "shoulder fine but bruised left elbow": after a pause or a "but" what stands straight
// before a site is said of it, where the site before has had its say or holds it.
function beginsAnew({
  items,
  tokens,
  i,
  before,
  after,
  used,
  attaches,
}: Omit<Choice, 'findingFirst' | 'before' | 'after'> & {
  readonly before: number;
  readonly after: number;
}): boolean {
  if (!isAdjacent(items, tokens, i, after) || isSmallItem(items[i - 1], 'link')) return false;
  const parted = items
    .slice(before, i)
    .some((item, k) => pauseAfterItem(items, tokens, before + k) !== '' || isStop(item));
  const done =
    used.has(before) || items.slice(before + 1, i).some(attaches) || hasItsSay(items, tokens, before, i);
  const excepts = items.slice(before, i).some(isException);
  return parted && (done || excepts || isWithin(items[after], items[before]));
}

const SAYING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital']);

// "No deformity of the left arm, moves both feet": the breath of the arm says something of it, and this one of the feet.
function hasItsSay(items: readonly Item[], tokens: readonly Token[], before: number, i: number): boolean {
  const isEnd = (k: number): boolean => pauseAfterItem(items, tokens, k) !== '';
  let from = before;
  while (from > 0 && !isEnd(from - 1)) from--;
  let to = before;
  while (to < i && !isEnd(to)) to++;
  return to < i && items.slice(from, to + 1).some((item) => SAYING.has(pieceOf(item)?.role ?? 'small'));
}

// "Spine's straight, no steps, he winces at T twelve": past a pause and a new subject the site is the next one's.
function isNextOnes({
  items,
  tokens,
  i,
  after,
  attaches,
}: Pick<Choice, 'items' | 'tokens' | 'i' | 'attaches'> & { readonly after: number }): boolean {
  if (pauseAfterItem(items, tokens, i) === '') return false;
  const between = items.slice(i + 1, after);
  const next = between.findIndex(attaches);
  if (next < 0) return false;
  // "No step along the spine, no bruising, tender at L two": what is there is another's say.
  const [denies, other] = [items[i - 1], items[i + next]];
  if (denies !== undefined && isNo(denies) && other !== undefined && !isNo(other)) return true;
  return between.slice(0, next).some((item) => isSmallItem(item, 'person') || isSmallItem(item, 'link'));
}

const isStop = (item: Item): boolean => {
  const piece = pieceOf(item);
  return piece !== null && marked(piece, 'negation', 'stop') && !isSmall(piece, 'article');
};

// "Tourniquet on the left upper arm": the phrase took the preposition in, and leads to the site straight after it.
function leadsStraight(items: readonly Item[], tokens: readonly Token[], i: number, after: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || after !== i + 1 || isPaused(tokens, piece)) return false;
  const words = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  // "Dressing on the" forehead.
  const last = /^(the|his|her|a|an)$/.test(words.at(-1) ?? '') ? words.at(-2) : words.at(-1);
  return words.length > 1 && LEADING.has(last ?? '');
}

// True for the last of joined findings that a pause parts from the next one.
function endsGroup(items: readonly Item[], tokens: readonly Token[], i: number, attaches: Attaches): boolean {
  const joined =
    isSmallItem(items[i - 1], 'join') && items[i - 2] !== undefined && attaches(items[i - 2] as Item);
  return joined && pauseAfterItem(items, tokens, i) !== '' && items.slice(i + 1).some(attaches);
}

function isWithin(inner: Item | undefined, outer: Item | undefined): boolean {
  const [a, b] = [phraseOf(inner)?.sites[0], phraseOf(outer)?.sites[0]];
  if (a === undefined || b === undefined) return false;
  return holdersOf(a.site).includes(b.site) || (a.level !== null && regionOf(a.site) === regionOf(b.site));
}

// "Both legs except the left ankle are fine": what is said after an exception is said of what stands before it, where
// nothing was said of that yet. Gives the place of the "except", or null.
function sparedFrom(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const at = items.slice(0, i).findLastIndex(isException);
  if (at < 0 || items.slice(0, at).some(says) || !items.slice(at, i).some(({ type }) => type === 'site'))
    return null;
  return items.slice(at, i).some((item) => isNewClause(item, tokens)) ? null : at;
}

const isParted = (
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  attaches: Attaches,
): boolean =>
  items.some(
    (item, k) =>
      k > i &&
      k < site &&
      attaches(item) &&
      (items.slice(i, k).some((_, at) => pauseAfterItem(items, tokens, i + at) !== '') ||
        // "Back no tenderness one graze over the shoulder blade".
        isSmallItem(items[k - 1], 'article') ||
        hasRole(items[k - 1], 'figure')),
  );

// "Pressing on the breastbone causes pain in the ribs", too.
const isThere = (item: Item, tokens: readonly Token[]): boolean =>
  /^(there|causes|gives|produces|reproduces|brings)$/.test(tokens[wordsOf(item).from]?.word ?? '');

// "Which is swollen", "there is a bruise".
const isNewClause = (item: Item, tokens: readonly Token[]): boolean =>
  isSmallItem(item, 'exists') || /^(which|who|that|it|there)$/.test(tokens[wordsOf(item).from]?.word ?? '');

// A bare "no" may be an answer too.
const isNo = (item: Item): boolean => {
  const piece = pieceOf(item);
  const mayDeny = piece?.role === 'negation' || piece?.role === 'answer';
  return mayDeny && marked(piece, 'negation', 'before');
};

const isException = (item: Item): boolean => {
  const piece = pieceOf(item);
  return piece !== null && marked(piece, 'except');
};

const isAdjacent = (items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean =>
  items.slice(i + 1, site).every(isQuiet) && pauseAfterItem(items, tokens, i) === '';

// "Swollen right knee": an adjective straight before a site, and not what an "is" says of the site before.
function isAttributive(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const [item, piece] = [items[i], pieceOf(items[i])];
  if (item === undefined || piece === null || site !== i + 1) return false;
  if (!isLikely(piece, 'adj') || isLikely(piece, 'predicate')) return false;
  return !isPaused(tokens, wordsOf(item)) && !isSmallItem(items[i - 1], 'link');
}
