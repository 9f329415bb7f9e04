// What is left of the examination, region by region in its order; what was only touched is told apart from it.

import type { CoverageRow } from '../../clinical/index.ts';
import { isPaired, REGIONS, type Region, regionOf } from '../../terms/index.ts';
import { siteName } from '../../timeline/index.ts';

export interface LeftRegion {
  readonly region: Region;
  readonly places: readonly string[];
}

/** `LEFT thigh`, `sternum`, `thigh, side not said` */
export function rowName({ site, side }: Pick<CoverageRow, 'site' | 'side'>): string {
  if (side !== null) return `${side.toUpperCase()} ${siteName(site)}`;
  return isPaired(site) ? `${siteName(site)}, side not said` : siteName(site);
}

/** The rows as places, by region; regions with none are left out. */
export const byRegion = (rows: readonly CoverageRow[]): readonly LeftRegion[] =>
  REGIONS.map((region) => ({
    region,
    places: rows.filter((row) => regionOf(row.site) === region).map(rowName),
  })).filter(({ places }) => places.length > 0);

/** Sites that were looked at or felt and of which nothing was found or denied. */
export const touchedOnly = (rows: readonly CoverageRow[]): readonly CoverageRow[] =>
  rows.filter(({ state }) => state === 'touched');
