// "The little finger on the left hand", "the right leg just above the ankle": one place, named by the narrower site.

import { holdersOf, isPaired } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, isSmallItem, phraseOf, type SitePhrase } from './item.ts';

/** True where one of the two sites holds the other. */
export const isNested = (a: SiteRef, b: SiteRef): boolean =>
  holdersOf(a.site).includes(b.site) || holdersOf(b.site).includes(a.site);

/** The items with neighbours that name one place joined. */
export function joinNested(items: readonly Item[], tokens: readonly Token[]): readonly Item[] {
  const out: Item[] = [];
  for (const item of items) {
    const at = out.findLastIndex((one) => one.type === 'site');
    const [before, after] = [phraseOf(out[at]), phraseOf(item)];
    const joints = out.slice(at + 1);
    const phrase =
      before !== null && after !== null && joints.every(isJoint)
        ? merged(before, after, joints.length > 0, tokens)
        : null;
    if (phrase === null) out.push(item);
    else out.splice(at, 1 + joints.length, { type: 'site', phrase });
  }
  return out;
}

// "The lumbar spine around L three".
const isLevelled = (a: SiteRef, b: SiteRef): boolean =>
  a.site === b.site && a.level === null && b.level !== null;

// "The left leg above the knee": the words of the narrower place lead to it themselves.
const isNear = (tokens: readonly Token[], { from }: SitePhrase): boolean =>
  /^(above|below|just|near|behind)$/.test(tokens[from]?.word ?? '');

// "Toes left foot numb", "thumb right hand cut": the wider place tells the side of the narrower one, which has none of its own.
const isBare = ({ site, side, level }: SiteRef): boolean => isPaired(site) && side === null && level === null;

// "Checking the foot left leg is sore": with its article it is a place by itself.
const isOwned = (tokens: readonly Token[], { from }: SitePhrase): boolean =>
  [tokens[from - 1], tokens[from]].some((token) =>
    /^(the|his|her|their|my|your|both)$/.test(token?.word ?? ''),
  );

const isJoint = (item: Item): boolean =>
  (isSmallItem(item, 'preposition') || isSmallItem(item, 'article')) && !isSmallItem(item, 'join');

function merged(a: SitePhrase, b: SitePhrase, jointed: boolean, tokens: readonly Token[]): SitePhrase | null {
  const [refA, refB] = [a.sites[0], b.sites[0]];
  if (refA === undefined || refB === undefined || a.sites.length > 1 || b.sites.length > 1) return null;
  const near = isNear(tokens, b);
  const isOne = isNested(refA, refB) || isLevelled(refA, refB) || (near && refA.site === refB.site);
  // "Tender in the lumbar spine, at L two": past the comma the level can only be that of the spine before it.
  const isParted = isPaused(tokens, a) && !isLevelled(refA, refB);
  const isOfSide =
    !jointed &&
    isBare(refA) &&
    !isOwned(tokens, a) &&
    b.sites.every(({ sideKnown }) => sideKnown === 'spoken');
  const isOuterLast = isOfSide && holdersOf(refA.site).includes(refB.site);
  if (isParted || (!b.led && !jointed && !near && !isOuterLast) || !isOne) return null;
  const [inner, outer] = holdersOf(refA.site).includes(refB.site) ? [refA, refB] : [refB, refA];
  if (inner.side !== null && outer.side !== null && inner.side !== outer.side && inner.sideKnown === 'spoken')
    return null;
  const sided = outer.sideKnown === 'spoken' && isPaired(inner.site) && inner.sideKnown !== 'spoken';
  const ref = sided ? { ...inner, side: outer.side, sideKnown: outer.sideKnown } : inner;
  return { ...a, to: b.to, sites: [ref], doubtful: false, homophone: a.homophone ?? b.homophone };
}
