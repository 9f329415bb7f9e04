// Where care was given: at the place of a wound, at the one that is spoken of ("I've dressed it"), at several with a time each.

import type { SiteRef } from '../../context.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { toldIn } from '../../told.ts';
import type { Attachment } from '../sites/attach.ts';
import { hasRole, type Item, wordsOf } from '../sites/item.ts';
import { nextSite } from '../sites/near-site.ts';
import type { Talk } from '../talk.ts';

// "Tourniquets on, right arm at thirteen twelve and right leg at thirteen eighteen": each place has its own time.
export function furtherSites(items: readonly Item[], group: Attachment): readonly number[] {
  const found: number[] = [];
  let last = group.at(-1);
  let timed = false;
  for (let k = (last ?? items.length) + 1; k < items.length; k++) {
    const item = items[k];
    if (item === undefined) break;
    if (item.type === 'site') {
      const next = items.slice(k + 1).find((one) => !hasRole(one, 'small'));
      if (!timed || !hasRole(next, 'time')) break;
      found.push(k);
      last = k;
      timed = false;
    } else if (hasRole(item, 'time')) timed = true;
    else if (!hasRole(item, 'small')) break;
  }
  return found;
}

const PLACELESS: ReadonlySet<string | null> = new Set(['medication', 'fluids', 'food', 'oxygen', 'collar']);

export const isPlaceless = (island: Island): boolean => PLACELESS.has(tagOf(island, 'care'));

// "Fentanyl fifty micrograms, splint on the left wrist": a drug has no place but the one it was given at, straight after it.
export function isNext(items: readonly Item[], tokens: readonly Token[], i: number, site: number): boolean {
  const between = items.slice(i + 1, site);
  const isReason = between.some((item) => tokens[wordsOf(item).from]?.word === 'for');
  const parted = items.slice(i, site).some((item) => isPaused(tokens, wordsOf(item)));
  return (
    site > i &&
    !isReason &&
    !parted &&
    between.every((item) => hasRole(item, 'small') || hasRole(item, 'figure'))
  );
}

// "I've dressed it": what was done to it was done to the place that is spoken of, unless nothing but good was told of that.
export function isOfMind(
  { tokens, context }: Talk,
  { from, to, islands: [island] }: Piece,
  mind: readonly SiteRef[],
): boolean {
  if (island === undefined || isPlaceless(island) || mind.length === 0) return false;
  if (!tokens.slice(from, to).some(({ word }) => /^(it|that|them)$/.test(word))) return false;
  const told = toldIn(context.found);
  return mind.every(({ site, side }) => {
    const there = told.filter((one) => one.site === site && one.side === side);
    return there.length === 0 || there.some(({ present }) => present);
  });
}

export const inMind = (ref: SiteRef): SiteRef => ({
  ...ref,
  sideKnown: ref.side === null ? null : 'carried',
});

// "Dressed the graze on the left knee": it was done where the graze is.
export function placeOfWound(items: readonly Item[], tokens: readonly Token[], i: number): Attachment {
  const wound = items.findIndex((item, k) => k > i && !hasRole(item, 'attribute') && !hasRole(item, 'small'));
  if (!hasRole(items[wound], 'finding') || pauseIn(items, tokens, i, wound)) return [];
  const site = nextSite(items, tokens, wound, (item) => hasRole(item, 'finding'));
  return site === null || pauseIn(items, tokens, wound, site) ? [] : [site];
}

const pauseIn = (items: readonly Item[], tokens: readonly Token[], from: number, to: number): boolean =>
  items.slice(from, to).some((item) => isPaused(tokens, wordsOf(item)));
