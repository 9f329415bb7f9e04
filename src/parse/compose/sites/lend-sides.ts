// A site without a side takes that of a wider or narrower one in its clause: "fingers are warm on the left hand".

import { isPaired } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, phrasesIn, wordsOf } from './item.ts';
import { sameLimb } from './limb.ts';
import { isNested } from './nested-sites.ts';

/** The items with sides lent to the sites that lack one. */
export function lendSides(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  return items.map((item, i) => {
    if (item.type !== 'site') return item;
    const [ref, ...others] = item.phrase.sites;
    if (ref === undefined || others.length > 0 || ref.side !== null || !isPaired(ref.site)) return item;
    const earlier = phrasesIn(items.slice(0, i)).map(({ sites }) => sites[0]);
    const later = phrasesIn(upToNewSay(items, tokens, i)).map(({ sites }) => sites[0]);
    // "Left hand third finger cut, right hand thumb numb": the hand straight before a finger holds it.
    const isHeld = holdsStraight(items, tokens, i);
    const near = isHeld ? [earlier.at(-1), later[0]] : [later[0], earlier.at(-1)];
    const giver =
      near.find((one) => isSpoken(one) && isOne(ref, one)) ??
      // "Down the right leg, thigh fine, knee swollen": the limb's side holds for what follows of it.
      earlier.findLast((one) => isSpoken(one) && sameLimb(one.site, ref.site));
    if (giver?.side == null) return item;
    const sideKnown = isOne(ref, giver) ? 'spoken' : 'carried';
    return { type: 'site', phrase: { ...item.phrase, sites: [{ ...ref, side: giver.side, sideKnown }] } };
  });
}

function holdsStraight(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.slice(0, i).findLastIndex((item) => item.type === 'site');
  const between = items.slice(at + 1, i);
  if (at < 0 || !between.every((item) => hasRole(item, 'small'))) return false;
  const isParted = items.slice(at, i).some((item) => isPaused(tokens, wordsOf(item)));
  const next = phrasesIn(items.slice(i + 1))[0];
  return !isParted || next?.led !== true;
}

// "Foot pulses strong both sides, sensation normal in the right toe": what is said past a pause lends nothing back.
function upToNewSay(items: readonly Item[], tokens: readonly Token[], i: number): readonly Item[] {
  const rest = items.slice(i + 1);
  // "Sore thumb, gone white, right hand": a bare place that closes the list is where all of it is.
  const [last, before] = [rest.at(-1), rest.at(-2)];
  if (last?.type === 'site' && before !== undefined && isPaused(tokens, wordsOf(before))) return rest;
  const pause = rest.findIndex((item) => isPaused(tokens, wordsOf(item)));
  if (pause < 0 || !rest.slice(0, pause + 1).some(says)) return rest;
  const next = rest.findIndex((item, k) => k > pause && says(item));
  return next < 0 ? rest : rest.slice(0, next);
}

const says = (item: Item): boolean => hasRole(item, 'finding') || hasRole(item, 'csm');

// The same place named twice ("left ribs tender, fifth rib bruised"), or one that holds the other.
const isOne = (a: SiteRef, b: SiteRef): boolean => a.site === b.site || isNested(a, b);

const isSpoken = (ref: SiteRef | undefined): ref is SiteRef => ref?.sideKnown === 'spoken';
