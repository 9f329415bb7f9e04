// Which hands and feet a check of a limb means: those said, those of a named pulse, or those of the limb in mind.

import { DIGITS, type Digit, regionOf, type Side, type Site } from '../../../terms/index.ts';
import type { LimbEnd, SiteRef } from '../../context.ts';
import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { unique } from '../../unique.ts';

const end = (site: 'hand' | 'foot', side: Side): LimbEnd => ({ site, side, sideKnown: 'spoken' });

/** Both hands and both feet. */
export const ALL_FOUR: readonly LimbEnd[] = [
  end('hand', 'left'),
  end('hand', 'right'),
  end('foot', 'left'),
  end('foot', 'right'),
];

const FOOT_PULSES: ReadonlySet<string> = new Set(['femoral', 'posterior-tibial', 'dorsalis-pedis']);

/** The limb's end that a site of that limb means, or null for a site of no limb. */
export function endOf(site: Site): 'hand' | 'foot' | null {
  const region = regionOf(site);
  if (region === 'arm' || region === 'shoulder') return 'hand';
  return region === 'leg' || site === 'hip' ? 'foot' : null;
}

/** The limbs' ends that sites mean, each once; `side` is that of a site whose own was not spoken. */
export const endsOfSites = (refs: readonly SiteRef[], side: Side | null): readonly LimbEnd[] =>
  unique(refs.flatMap((ref) => toEnd(ref, side)));

/** The limb's end that a site means, with its digit; none for a site of no limb. */
export function toEnd(ref: SiteRef, side: Side | null): readonly LimbEnd[] {
  const site = endOf(ref.site);
  if (site === null) return [];
  const digit = isDigit(ref.site) ? { digit: ref.site } : {};
  const given = side !== null && ref.sideKnown !== 'spoken';
  return [{ site, side: given ? side : ref.side, sideKnown: given ? 'spoken' : ref.sideKnown, ...digit }];
}

/** The same ends on another side, each once; a digit stays that digit. */
export const endsOnSide = (ends: readonly LimbEnd[], side: Side): readonly LimbEnd[] =>
  unique(ends.map((one) => ({ ...one, side, sideKnown: 'spoken' as const })));

const isDigit = (site: Site): site is Site & Digit => (DIGITS as readonly string[]).includes(site);

/** The ends of a check, and whether its own words name them. */
export function endsOf(
  island: Island,
  spoken: readonly SiteRef[],
  mind: readonly SiteRef[],
  side: Side | null,
): { readonly ends: readonly LimbEnd[]; readonly endSpoken: boolean } {
  const said = endsOfSites(spoken, side);
  const site = namedEnd(island);
  // "Radials strong, pedals present, moves all fingers and toes": no radial pulse is a foot's.
  const fitting = said.filter((one) => site === null || one.site === site);
  if (said.length > 0) return { ends: fitting.length > 0 ? fitting : said, endSpoken: true };
  const inMind = endsOfSites(mind, null);
  if (site !== null) {
    const carried = inMind.find((one) => one.site === site)?.side ?? null;
    return {
      ends: [namedOn(site, side, hasTag(island, 'plural') || comparesTwo(island), carried)],
      endSpoken: true,
    };
  }
  const ends = inMind.map(
    (one): LimbEnd =>
      side === null
        ? { ...one, sideKnown: one.side === null ? null : 'carried' }
        : { ...one, side, sideKnown: 'spoken' },
  );
  return { ends: unique(ends), endSpoken: false };
}

// "Grip equal": one is as strong as the other, whichever was in mind.
const comparesTwo = (island: Island): boolean =>
  hasTag(island, 'strength', 'equal') || hasTag(island, 'strength', 'unequal');

function namedEnd(island: Island): 'hand' | 'foot' | null {
  const named = tagOf(island, 'end') as 'hand' | 'foot' | null;
  const pulse = tagOf(island, 'pulse');
  return named ?? (pulse === null ? null : FOOT_PULSES.has(pulse) ? 'foot' : 'hand');
}

// "Radials strong" are both; "radial strong" is that of the arm in mind.
function namedOn(site: 'hand' | 'foot', side: Side | null, plural: boolean, carried: Side | null): LimbEnd {
  if (side !== null) return { site, side, sideKnown: 'spoken' };
  if (plural) return { site, side: 'both', sideKnown: 'inferred' };
  return { site, side: carried, sideKnown: carried === null ? null : 'carried' };
}
