// What was not examined is named, the widest words first: a whole region, one side of it, then single sites.

import { holdersOf, isPaired, REGIONS, type Region, regionOf, SITES } from '../../terms/index.ts';
import { siteName } from '../../timeline/index.ts';
import type { CoverageRow } from '../input.ts';
import { and } from './list.ts';
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

/** Exceptions that are named; a place with more of them is told by its parts instead. */
const EXCEPTIONS = 3;

/** The rows that lie within `holder` and are not in the list, the widest of them alone. */
function exceptions(holder: CoverageRow, rows: readonly CoverageRow[], hit: readonly CoverageRow[]) {
  const inside = rows.filter((row) => isWithin(row, holder));
  const open = inside.filter((row) => !hit.includes(row));
  return open.filter((row) => !open.some((wider) => isWithin(row, wider)));
}

/** The exceptions by their site: the left and the right of one are one exception. */
const bySite = (open: readonly CoverageRow[]): readonly (readonly CoverageRow[])[] =>
  [...new Set(open.map(({ site }) => site))].map((site) => open.filter((row) => row.site === site));

/** `left arm except the wrist`, `chest except both armpits`: an exception on the same side needs no side of its own. */
function exceptName(holder: CoverageRow, open: readonly CoverageRow[]): string {
  const names = bySite(open).flatMap((rows) =>
    rows.length === 2 && rows.every(({ side }) => side !== null)
      ? rows.slice(0, 1).map(({ site }) => placeName({ site, side: 'both' }))
      : rows.map((row) => (row.side === holder.side ? siteName(row.site) : placeName(row))),
  );
  const article = names[0]?.startsWith('both ') ? '' : 'the ';
  return `${placeName(holder)} except ${article}${and(names)}`;
}

interface Named {
  readonly row: CoverageRow;
  /** the name where the row alone is told */
  readonly name: string;
  /** true where the row with all that lies within it is in the list */
  readonly full: boolean;
}

/**
 * Single places. One that is in the list with all that lies within it stands for them all; one with few exceptions names
 * them; one with more is told by its parts.
 */
function single(rows: readonly CoverageRow[], hit: readonly CoverageRow[]): readonly string[] {
  const outOf = (row: CoverageRow): readonly CoverageRow[] => exceptions(row, rows, hit);
  const hasParts = (row: CoverageRow): boolean => rows.some((one) => isWithin(one, row));
  const told = hit.filter((row) => bySite(outOf(row)).length <= EXCEPTIONS);
  const named = told
    .filter((row) => !told.some((holder) => isWithin(row, holder)))
    .map((row): Named => {
      const open = outOf(row);
      const full = open.length === 0 || !hasParts(row);
      return { row, name: full ? placeName(row) : exceptName(row, open), full };
    });
  const sites = new Map<string, Named[]>();
  for (const one of named) {
    const key = one.full ? one.row.site : one.name;
    sites.set(key, [...(sites.get(key) ?? []), one]);
  }
  return [...sites.values()].flatMap((same) => {
    const [first] = same;
    const sides = same.map(({ row }) => row.side);
    return first?.full && sides.includes('left') && sides.includes('right')
      ? [placeName({ site: first.row.site, side: 'both' })]
      : same.map(({ name }) => name);
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

/** True where something was found or denied of the row's own place, or of what holds it or lies within it. */
const isKnown = (row: CoverageRow, all: readonly CoverageRow[]): boolean =>
  all.some(
    (other) =>
      (other.state === 'clear' || other.state === 'found') &&
      (isWithin(row, other) ||
        isWithin(other, row) ||
        (other.site === row.site && other.side === null && isPaired(row.site))),
  );

/** Places only looked at or felt, where nothing is known of anything around them either. */
export const untold = (coverage: readonly CoverageRow[]): readonly string[] =>
  placesIn(
    coverage.map((row) =>
      row.state === 'touched' && isKnown(row, coverage) ? { ...row, state: 'clear' as const } : row,
    ),
    'touched',
  );

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
  /** they were looked at or felt, and nothing was found or denied in them */
  readonly looked: readonly string[];
  /** something of them was not examined, and of something it is known how it is */
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

/** The regions that were left out, looked at only, or examined in part, for a report that must be short. */
export function regionGaps(coverage: readonly CoverageRow[]): RegionGaps {
  const gaps = REGIONS.map((region) => {
    const open = stretches(coverage, region).map(({ name, size, rows }) => ({
      name,
      size,
      missed: rows.filter(({ state }) => state === 'not-examined').length,
      known: rows.some(({ state }) => state === 'clear' || state === 'found'),
    }));
    const names = (is: (one: (typeof open)[number]) => boolean): readonly string[] =>
      both(
        region,
        open.filter(is).map(({ name }) => name),
      );
    return {
      none: names(({ missed, size }) => missed === size),
      looked: names(({ missed, size, known }) => !known && missed < size),
      part: names(({ missed, known }) => known && missed > 0),
    };
  });
  return {
    none: gaps.flatMap(({ none }) => none),
    looked: gaps.flatMap(({ looked }) => looked),
    part: gaps.flatMap(({ part }) => part),
  };
}
