// Which sites were examined, in the order an examination is taught; a site of which nothing was said is never clear.

import { type Entry, stands } from '../record/entry.ts';
import { holdersOf, isPaired, SITES, type Side, type Site } from '../terms/index.ts';
import { type RowSide, rowSidesOf, sidesOf } from './side.ts';

export type CoverageState = 'not-examined' | 'touched' | 'clear' | 'found';

export interface CoverageRow {
  readonly site: Site;
  readonly side: RowSide;
  readonly state: CoverageState;
}

const RANK: Readonly<Record<CoverageState, number>> = { 'not-examined': 0, touched: 1, clear: 2, found: 3 };

/** The sites within each site, at any depth. */
const WITHIN: ReadonlyMap<Site, readonly Site[]> = new Map(
  SITES.map((site) => [site, SITES.filter((inner) => holdersOf(inner).includes(site))]),
);

const keyOf = (site: Site, side: RowSide): string => `${site} ${side ?? ''}`;

/** What one entry says of the site it names; null where it says nothing of an examination (care is none). */
function stateSaid(entry: Entry): { site: Site; side: Side | null; state: CoverageState } | null {
  if (entry.kind === 'visit') return { site: entry.site, side: entry.side, state: 'touched' };
  if (entry.kind === 'finding')
    return { site: entry.site, side: entry.side, state: entry.present ? 'found' : 'clear' };
  // Intact circulation, sensation or motion is a negative for the hand or foot it names, and for nothing wider.
  if (entry.kind === 'csm')
    return { site: entry.site, side: entry.side, state: entry.present ? 'clear' : 'found' };
  return null;
}

/**
 * One row for each unpaired site, a left and a right one for each paired site, in exam order. `both` marks both rows.
 * What is said of a paired site without a side, or of one side of an unpaired site, has a row of its own: it marks
 * neither left nor right, and half a chest found clear leaves the chest `touched`.
 * A statement on a wider site ("left arm, no deformity") makes the narrower ones `touched`, never `clear`; one on a
 * narrower site says nothing of the wider.
 */
export function coverage(entries: readonly Entry[]): readonly CoverageRow[] {
  const states = new Map<string, CoverageState>();
  const raise = (site: Site, side: RowSide, state: CoverageState): void => {
    const key = keyOf(site, side);
    if (RANK[state] > RANK[states.get(key) ?? 'not-examined']) states.set(key, state);
  };
  for (const entry of entries) {
    const said = stands(entry) ? stateSaid(entry) : null;
    if (said === null) continue;
    for (const side of sidesOf(said.site, said.side)) {
      raise(said.site, side, said.state);
      if (!isPaired(said.site) && side !== null)
        raise(said.site, null, said.state === 'found' ? 'found' : 'touched');
      for (const inner of WITHIN.get(said.site) ?? []) touchInner(inner, side, said.site, raise);
    }
  }
  return SITES.flatMap((site) => rowsOf(site, states));
}

function touchInner(
  inner: Site,
  side: RowSide,
  outer: Site,
  raise: (site: Site, side: RowSide, state: CoverageState) => void,
): void {
  if (side !== null) raise(inner, isPaired(inner) ? side : null, 'touched');
  // A paired site whose side was not said touches neither side's parts.
  else if (!isPaired(outer)) for (const each of rowSidesOf(inner)) raise(inner, each, 'touched');
}

function rowsOf(site: Site, states: ReadonlyMap<string, CoverageState>): readonly CoverageRow[] {
  const sides: RowSide[] = [...rowSidesOf(site)];
  for (const extra of [null, 'left', 'right', 'midline'] as const)
    if (!sides.includes(extra) && states.has(keyOf(site, extra))) sides.push(extra);
  const stateOf = (side: RowSide): CoverageState => states.get(keyOf(site, side)) ?? 'not-examined';
  const halvesClear = !isPaired(site) && stateOf('left') === 'clear' && stateOf('right') === 'clear';
  return sides.map((side) => {
    const state = stateOf(side);
    return { site, side, state: side === null && halvesClear && state === 'touched' ? 'clear' : state };
  });
}

/**
 * What is left to examine, in exam order: the rows that are `not-examined`. Where nothing of a wider site was
 * examined it stands for its parts ("left leg"); where some part was, the other parts are listed instead of it.
 */
export function remaining(rows: readonly CoverageRow[]): readonly CoverageRow[] {
  const left = new Set(
    rows.filter((row) => row.state === 'not-examined').map((row) => keyOf(row.site, row.side)),
  );
  const wholly = (site: Site, side: RowSide): boolean =>
    left.has(keyOf(site, side)) &&
    (WITHIN.get(site) ?? []).every((inner) =>
      (side !== null && isPaired(inner) ? [side] : rowSidesOf(inner)).every((each) =>
        left.has(keyOf(inner, each)),
      ),
    );
  return rows.filter((row) => {
    const side = row.side;
    if (row.state !== 'not-examined' || !wholly(row.site, side)) return false;
    return !holdersOf(row.site).some((holder) => wholly(holder, isPaired(holder) ? side : null));
  });
}
