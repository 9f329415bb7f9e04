// What was not examined is named, the widest words first: a whole region, one side of it, then single sites.

import { holdersOf, isPaired, REGIONS, type Region, regionOf, SITES } from '../../terms/index.ts';
import type { CoverageRow } from '../input.ts';
import { placeName } from './place.ts';

type State = CoverageRow['state'];

const PAIRED_REGIONS: readonly Region[] = ['shoulder', 'arm', 'leg'];

const wholeRegion = (region: Region): string =>
  PAIRED_REGIONS.includes(region) ? `both ${region}s` : region;

/** A row of the site as the body has it: left and right of a paired one, the whole of any other. */
const counts = ({ site, side }: CoverageRow): boolean =>
  isPaired(site) ? side === 'left' || side === 'right' : side === null;

const rowsIn = (region: Region): number =>
  SITES.filter((site) => regionOf(site) === region).reduce((sum, site) => sum + (isPaired(site) ? 2 : 1), 0);

/** True where `row` lies within `holder`, on its side and in its region's turn. */
const isWithin = (row: CoverageRow, holder: CoverageRow): boolean =>
  holdersOf(row.site).includes(holder.site) &&
  regionOf(row.site) === regionOf(holder.site) &&
  (holder.side === null || holder.side === row.side);

/**
 * Single places. One that is left out with all that lies within it stands for them all; one of which some part was
 * examined is left out "as a whole".
 */
function single(rows: readonly CoverageRow[], hit: readonly CoverageRow[]): readonly string[] {
  const isFull = (row: CoverageRow): boolean => rows.every((one) => !isWithin(one, row) || hit.includes(one));
  const named = hit.filter((row) => !hit.some((holder) => isWithin(row, holder) && isFull(holder)));
  const sites = new Map<string, CoverageRow[]>();
  for (const row of named) {
    const key = `${row.site}|${isFull(row)}`;
    sites.set(key, [...(sites.get(key) ?? []), row]);
  }
  return [...sites.values()].flatMap((same) => {
    const tail = same.every(isFull) ? '' : ' as a whole';
    const sides = same.map(({ side }) => side);
    const [first] = same;
    return first !== undefined && sides.includes('left') && sides.includes('right')
      ? [`${placeName({ site: first.site, side: 'both' })}${tail}`]
      : same.map((row) => `${placeName(row)}${tail}`);
  });
}

function sided(region: Region, rows: readonly CoverageRow[], hit: readonly CoverageRow[]): readonly string[] {
  if (!PAIRED_REGIONS.includes(region) || rows.length < rowsIn(region)) return single(rows, hit);
  for (const side of ['left', 'right'] as const) {
    const all = rows.filter((row) => row.side === side);
    if (all.length > 0 && all.every((row) => hit.includes(row)))
      return [
        `${side} ${region}`,
        ...single(
          rows,
          hit.filter((row) => row.side !== side),
        ),
      ];
  }
  return single(rows, hit);
}

/** The places in one of these states, head to toe: `neck`, `left arm`, `both knees`. */
export function placesIn(coverage: readonly CoverageRow[], state: State): readonly string[] {
  return REGIONS.flatMap((region) => {
    const rows = coverage.filter((row) => counts(row) && regionOf(row.site) === region);
    const hit = rows.filter((row) => row.state === state);
    // Half a chest, or a wrist whose side was not said, has a row only because something was said of it.
    const besides = coverage.filter(
      (row) =>
        !counts(row) && row.state === state && state !== 'not-examined' && regionOf(row.site) === region,
    );
    const whole = hit.length > 0 && hit.length === rowsIn(region);
    return [...(whole ? [wholeRegion(region)] : sided(region, rows, hit)), ...besides.map(placeName)];
  });
}

export interface RegionGaps {
  /** nothing of them was examined */
  readonly none: readonly string[];
  /** something of them was not examined, and something was or is not listed */
  readonly part: readonly string[];
}

/** Of one region (or one side of it): its name, how many rows it should have, and the rows there are. */
interface Stretch {
  readonly name: string;
  readonly size: number;
  readonly rows: readonly CoverageRow[];
}

function stretches(coverage: readonly CoverageRow[], region: Region): readonly Stretch[] {
  const rows = coverage.filter((row) => regionOf(row.site) === region && counts(row));
  if (!PAIRED_REGIONS.includes(region)) return [{ name: region, size: rowsIn(region), rows }];
  return (['left', 'right'] as const).map((side) => ({
    name: `${side} ${region}`,
    size: rowsIn(region) / 2,
    rows: rows.filter((row) => row.side === side),
  }));
}

const both = (region: Region, names: readonly string[]): readonly string[] =>
  names.length === 2 ? [wholeRegion(region)] : names;

/** The regions that were not examined at all, and those examined in part, for a report that must be short. */
export function regionGaps(coverage: readonly CoverageRow[]): RegionGaps {
  const gaps = REGIONS.map((region) => {
    const open = stretches(coverage, region).map((one) => ({
      ...one,
      missed: one.rows.filter(({ state }) => state === 'not-examined').length,
    }));
    const none = open.filter(({ missed, size }) => missed === size);
    const part = open.filter(({ missed, size }) => missed > 0 && missed < size);
    return {
      none: both(
        region,
        none.map(({ name }) => name),
      ),
      part: both(
        region,
        part.map(({ name }) => name),
      ),
    };
  });
  return { none: gaps.flatMap(({ none }) => none), part: gaps.flatMap(({ part }) => part) };
}
