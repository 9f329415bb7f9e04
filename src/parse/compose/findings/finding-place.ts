// Where a finding is: the sites said, its own home ("tracheal deviation"), or the sites in mind.

import { isSite, regionOf, type Side, type Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';
import { type Island, tagOf } from '../../islands/island.ts';
import { limbOf } from '../sites/limb.ts';
import { plainSite } from '../sites/site-ref.ts';

/**
 * The sites of a finding; none where it can be at none of them. The grammar's tags say where it may be: `at` is there
 * and nowhere else ("trachea deviated"), `for` only where a site of that region was said or is in mind, `only` where that very site was, `home` where none was.
 */
export function placesOf(
  island: Island,
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
  side: Side | null,
): readonly SiteRef[] {
  return inMidline(island, placed(island, spoken, mind, side));
}

function placed(
  island: Island,
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
  side: Side | null,
): readonly SiteRef[] {
  const at = sitesIn(island, 'at');
  // "No JVD, chest stable": it is of the neck's veins, whatever place is named beside it.
  // "Nose, no deviation": of the nose nobody means the trachea.
  if (tagOf(island, 'finding') === 'tracheal-deviation' && spoken.some(({ site }) => FACE.has(site)))
    return [];
  // "Left hand deviated": nor of a limb.
  const isLimb = spoken.length > 0 && spoken.every(({ site }) => limbOf(site) !== null);
  if (tagOf(island, 'finding') === 'tracheal-deviation' && isLimb && tagOf(island, 'for') !== null) return [];
  // "Ribs on the right moving the wrong way": those are the part of the chest that does.
  const named = spoken.length > 0 || tagOf(island, 'only') === null ? spoken : mind;
  if (tagOf(island, 'finding') === 'paradoxical-motion' && areRibs(named)) return sided(named, side);
  const isOwn = LOCATED.some((finding) => tagOf(island, 'finding') === finding);
  if (at.length > 0 && (isOwn || spoken.every(({ site }) => isInRegionOf(at, site))))
    return fixed(
      island,
      at,
      side ??
        spoken.find((ref) => ref.side !== null && ref.side !== 'both')?.side ??
        ofMind(island, at, spoken, mind),
    );
  const refs = spoken.length > 0 ? spoken : sideOfMind(mind, side);
  const only = sitesIn(island, 'for');
  // "Loose" is said of teeth and of nothing else on a body; of rock it is no finding.
  const exact = sitesIn(island, 'only');
  if (exact.length > 0 && (refs.length === 0 || !refs.every(({ site }) => exact.includes(site)))) return [];
  const home = sitesIn(island, 'home');
  // "Neck veins. They're distended": the word for the belly is said of them too.
  if (tagOf(island, 'finding') === 'distension' && areVeins(refs)) return refs;
  if (only.length > 0 && (refs.length === 0 || !refs.every(({ site }) => isInRegionOf(only, site))))
    return [];
  if (
    only.length === 0 &&
    spoken.length === 0 &&
    home.length > 0 &&
    !mind.some(({ site }) => isInRegionOf(home, site))
  )
    return home.map((site) => plainSite(site, side));
  return sided(refs, side);
}

const sided = (refs: readonly SiteRef[], side: Side | null): readonly SiteRef[] =>
  side === null
    ? refs
    : refs.map(({ sided, ...ref }) => ({
        ...ref,
        // "Lumbar region: tender on the right."
        ...(sided !== undefined && side !== 'midline' ? { site: sided } : {}),
        side,
        sideKnown: 'spoken',
      }));

// "Left ribs move the wrong way. That's paradoxical motion": of the side that is spoken of.
function ofMind(
  island: Island,
  at: readonly Site[],
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
): Side | null {
  const [ref, ...others] = mind;
  if (spoken.length > 0 || ref === undefined || others.length > 0) return null;
  if (tagOf(island, 'finding') !== 'paradoxical-motion' || !isInRegionOf(at, ref.site)) return null;
  return ref.side === 'left' || ref.side === 'right' ? ref.side : null;
}

function fixed(island: Island, at: readonly Site[], said: Side | null): readonly SiteRef[] {
  const own = tagOf(island, 'both') === null ? null : 'both';
  // "Trachea's going to the right" says the side in its own words.
  const side = said ?? (tagOf(island, 'side') as Side | null) ?? own;
  const inferred = own !== null && side === own;
  return at.map((site) => ({
    ...plainSite(site, side),
    ...(inferred ? { sideKnown: 'inferred' as const } : {}),
  }));
}

/** True where a finding is at its own home and not at a site in mind. */
export const isAtHome = (island: Island, refs: readonly SiteRef[], mind: readonly SiteRef[]): boolean => {
  const [at, home] = [sitesIn(island, 'at'), sitesIn(island, 'home')];
  return refs.every(
    ({ site }) => at.includes(site) || (home.includes(site) && !mind.some((one) => one.site === site)),
  );
};

const areVeins = (refs: readonly SiteRef[]): boolean =>
  refs.length > 0 && refs.every(({ site }) => site === 'neck-veins');

const areRibs = (spoken: readonly SiteRef[]): boolean =>
  spoken.length > 0 && spoken.every(({ site }) => site === 'ribs');

const FACE: ReadonlySet<Site> = new Set(['nose', 'face', 'jaw', 'mouth', 'teeth', 'eye', 'cheek']);

// Findings that there are at one place only.
const LOCATED: readonly string[] = [
  'jugular-distension',
  'tracheal-deviation',
  'loose-teeth',
  'missing-teeth',
  'priapism',
];

const isInRegionOf = (sites: readonly Site[], site: Site): boolean =>
  sites.some((one) => regionOf(one) === regionOf(site));

// With a side of its own a site in mind is named once, whatever sides of it are in mind.
const sideOfMind = (mind: readonly SiteRef[], side: Side | null): readonly SiteRef[] =>
  side === null ? mind : mind.filter(({ site }, i) => mind.findIndex((one) => one.site === site) === i);

// "Midline tenderness at L three" says the side in its own words.
const inMidline = (island: Island, refs: readonly SiteRef[]): readonly SiteRef[] =>
  tagOf(island, 'side') !== 'midline'
    ? refs
    : refs.map((ref) => (ref.side === null ? { ...ref, side: 'midline', sideKnown: 'spoken' } : ref));

const sitesIn = (island: Island, key: string): readonly Site[] =>
  (tagOf(island, key) ?? '').split('+').filter(isSite);
