// Whether a finding begins something of its own where it stands: past a pause the place before it has had its say.

import { holdersOf, regionOf } from '../../../terms/index.ts';
import { isSmall, marked, type Role } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isException, isSmallItem, phraseOf, pieceOf } from './item.ts';
import { type Attaches, isQuiet, pauseAfterItem } from './site-group.ts';

/** A finding and the places that it may belong to. */
export interface Choice {
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

// "Belly soft, tender left lower", "shoulder fine but bruised left elbow": after a pause or a "but" what stands straight
// before a site is said of it, where the site before has had its say or holds it.
export function beginsAnew({
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
export function isNextOnes({
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

// True for the last of joined findings that a pause parts from the next one.
export function endsGroup(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  attaches: Attaches,
): boolean {
  const joined =
    isSmallItem(items[i - 1], 'join') && items[i - 2] !== undefined && attaches(items[i - 2] as Item);
  return joined && pauseAfterItem(items, tokens, i) !== '' && items.slice(i + 1).some(attaches);
}

export const isParted = (
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

export function isWithin(inner: Item | undefined, outer: Item | undefined): boolean {
  const [a, b] = [phraseOf(inner)?.sites[0], phraseOf(outer)?.sites[0]];
  if (a === undefined || b === undefined) return false;
  // "Left forearm cut, halfway between elbow and wrist".
  if (a.site === b.site && a.parts.length > 0 && b.parts.length === 0) return true;
  return holdersOf(a.site).includes(b.site) || (a.level !== null && regionOf(a.site) === regionOf(b.site));
}

export const isAdjacent = (
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
): boolean => items.slice(i + 1, site).every(isQuiet) && pauseAfterItem(items, tokens, i) === '';

// A bare "no" may be an answer too.
export const isNo = (item: Item): boolean => {
  const piece = pieceOf(item);
  const mayDeny = piece?.role === 'negation' || piece?.role === 'answer';
  return mayDeny && marked(piece, 'negation', 'before');
};
