// "Neck, chest and back", "hip and knee": sites joined by a word, or three and more by pauses, are meant together.

import { pauseAfter } from '../../span.ts';
import type { Pause, Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem, wordsOf } from './item.ts';

/** True for an item that is said of a site: a finding, a check of a limb, care. */
export type Attaches = (item: Item) => boolean;

/** The pause that was marked after the item at `index`. */
export const pauseAfterItem = (items: readonly Item[], tokens: readonly Token[], index: number): Pause => {
  const item = items[index];
  return item === undefined ? '' : pauseAfter(tokens, wordsOf(item));
};

/** True for small words and attributes that neither join two things nor say one of the other. */
export const isQuiet = (item: Item): boolean =>
  (hasRole(item, 'small') || hasRole(item, 'attribute')) &&
  !isSmallItem(item, 'join') &&
  !isSmallItem(item, 'link');

/** The sites that begin at `first` and are meant together. */
export function groupFrom(
  items: readonly Item[],
  tokens: readonly Token[],
  first: number,
  attaches: Attaches,
): readonly number[] {
  const group = [first];
  let joined = false;
  for (let k = first + 1; k < items.length; k++) {
    const item = items[k];
    if (item?.type === 'site') {
      if (ownsWhatFollows(items, tokens, k, attaches)) break;
      const parted = isParted(items, tokens, group.at(-1) ?? first, k);
      if (!joined && !parted && !item.phrase.led && !leadsToJoin(items, tokens, k, attaches)) break;
      group.push(k);
    } else if (isSmallItem(item, 'join')) joined = true;
    else if (item === undefined || !isQuiet(item)) break;
  }
  return joined || group.length > 2 ? group : [first];
}

// "Nose mouth or ears", as a recogniser writes it: sites with nothing between them are a list where a word joins the last.
function leadsToJoin(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
  attaches: Attaches,
): boolean {
  let joined = false;
  for (let at = k + 1; at < items.length; at++) {
    const item = items[at];
    if (item === undefined || pauseAfterItem(items, tokens, at - 1) !== '') return false;
    if (item.type === 'site') {
      if (joined) return !ownsWhatFollows(items, tokens, at, attaches);
    } else if (isSmallItem(item, 'join')) joined = true;
    else if (!isSmallItem(item, 'article')) return false;
  }
  return false;
}

// "His face, the front of the chest and both hands": an article may stand between the comma and the site.
const isParted = (items: readonly Item[], tokens: readonly Token[], from: number, to: number): boolean =>
  items.slice(from, to).some((_, k) => pauseAfterItem(items, tokens, from + k) !== '');

/** True for a site that something is said of: "… and left knee is bruised" does not belong to the list before it. */
export function ownsWhatFollows(
  items: readonly Item[],
  tokens: readonly Token[],
  k: number,
  attaches: Attaches,
): boolean {
  const next = items[k + 1];
  if (next === undefined || pauseAfterItem(items, tokens, k) !== '') return false;
  return (attaches(next) && !leadsOn(items, tokens, k + 1)) || isSmallItem(next, 'link');
}

// "CSM good in both hands and the right foot, no movement in the left foot": what leads on to a site of its own is not said
// of the one before.
function leadsOn(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const [item, next] = [items[i], items[i + 1]];
  if (item === undefined || next?.type !== 'site' || pauseAfterItem(items, tokens, i) !== '') return false;
  return LEADING.has(tokens[wordsOf(item).to - 1]?.word ?? '');
}

/** Words that lead to the site after them. */
export const LEADING: ReadonlySet<string> = new Set([
  'on',
  'onto',
  'to',
  'over',
  'around',
  'across',
  'at',
  'in',
]);

/** The sites that end at `last` and are meant together. */
export function groupUpTo(items: readonly Item[], tokens: readonly Token[], last: number): readonly number[] {
  const group = [last];
  let joined = false;
  for (let k = last - 1; k >= 0; k--) {
    const item = items[k];
    if (item?.type === 'site') {
      if (!joined && pauseAfterItem(items, tokens, k) === '') break;
      group.unshift(k);
    } else if (isSmallItem(item, 'join')) joined = true;
    else if (item === undefined || !isQuiet(item)) break;
  }
  return joined || group.length > 2 ? group : [last];
}
