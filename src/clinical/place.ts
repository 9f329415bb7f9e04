// A place on the body (a site and one side of it), what lies within what, and how it is named in plain words.

import { holdersOf, isPaired, SITES, type Side, type Site } from '../terms/index.ts';
import { type RowSide, sidesOf } from './side.ts';

export interface Place {
  readonly site: Site;
  readonly side: RowSide;
}

/** `left upper arm`, `cervical spine`; a paired site whose side was not said is named so. */
export function placeText(site: Site, side: Side | null): string {
  const name = site.replaceAll('-', ' ');
  if (side === 'both') return `both sides, ${name}`;
  if (side !== null) return `${side} ${name}`;
  return isPaired(site) ? `${name} (side not said)` : name;
}

/** The left and the right place of a paired site. */
export const bothOf = (site: Site): readonly Place[] => [
  { site, side: 'left' },
  { site, side: 'right' },
];

export const wholeOf = (site: Site): Place => ({ site, side: null });

/** True where a statement on `site`, `side` speaks of this place itself. */
export const speaksOf = (place: Place, site: Site, side: Side | null): boolean =>
  place.site === site && sidesOf(site, side).includes(place.side);

/** The wider sites of each site, looked up once: every rule asks for them. */
const HOLDERS = new Map(SITES.map((site) => [site, new Set(holdersOf(site))]));

/** A site with the wider sites that hold it, nearest first. */
export const SELF_AND_HOLDERS = Object.fromEntries(
  SITES.map((site) => [site, [site, ...holdersOf(site)]]),
) as unknown as Readonly<Record<Site, readonly Site[]>>;

const isHeldBy = (site: Site, outer: Site): boolean => HOLDERS.get(site)?.has(outer) === true;

/** True where a statement on `site`, `side` takes in all of this place: it names it, or a wider site that holds it. */
export function takesIn(place: Place, site: Site, side: Side | null): boolean {
  if (speaksOf(place, site, side)) return true;
  if (!isHeldBy(place.site, site)) return false;
  const covered = sidesOf(site, side);
  return covered.includes(place.side) || (!isPaired(site) && covered.includes(null));
}

/** True where `site` is `outer` or lies within it. */
export const isWithin = (site: Site, outer: Site): boolean => site === outer || isHeldBy(site, outer);
