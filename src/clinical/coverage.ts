// Which sites were examined, in the order an examination is taught; a site of which nothing was said is never clear.

import type { Entry } from '../record/entry.ts';
import { holdersOf, isPaired, regionOf, SITES, type Site } from '../terms/index.ts';
import { type Chart, chartOf, type Rule } from './chart.ts';
import { isImpaired } from './limb-end.ts';
import { type RowSide, rowSidesOf, sidesOf } from './side.ts';

export type CoverageState = 'not-examined' | 'touched' | 'clear' | 'found';

export interface CoverageRow {
  readonly site: Site;
  readonly side: RowSide;
  readonly state: CoverageState;
}

/** The wider sites of each site, looked up once. */
const HOLDERS = Object.fromEntries(SITES.map((site) => [site, holdersOf(site)])) as Readonly<
  Record<Site, readonly Site[]>
>;

/**
 * Places that clothes, the body's own folds or closed lips hide: who looks at the chest or feels the pelvis has not seen
 * them, and injuries there are missed for it. Each with the holders that do not reach it. Common practice, no source.
 */
const HIDDEN: Partial<Readonly<Record<Site, readonly Site[]>>> = {
  'behind-ear': ['head'],
  mouth: ['head', 'face'],
  teeth: ['head', 'face'],
  armpit: ['chest'],
  groin: ['pelvis'],
  genitals: ['pelvis'],
  buttock: ['pelvis'],
};

/**
 * The wider sites whose examination takes in the site: those of its own region, since "back" and "spine" are said of what
 * is felt at the back's turn and the neck has its own; and none that leaves it hidden.
 */
const REACHED_FROM: ReadonlyMap<Site, readonly Site[]> = new Map(
  SITES.map((site) => [
    site,
    HOLDERS[site].filter((holder) => regionOf(holder) === regionOf(site) && !HIDDEN[site]?.includes(holder)),
  ]),
);

const RANK: Readonly<Record<CoverageState, number>> = { 'not-examined': 0, touched: 1, clear: 2, found: 3 };

/** What one entry says of the very site it names. Care is no examination and is not asked. */
function stateSaid(entry: ReturnType<Chart['at']>[number]): CoverageState {
  switch (entry.kind) {
    case 'visit':
      return 'touched';
    case 'finding':
      return entry.present ? 'found' : 'clear';
    case 'csm':
      // Circulation, sensation or motion that is whole is a negative for the hand or foot it names, and nothing wider.
      return isImpaired(entry) ? 'found' : 'clear';
  }
}

/** The rows of one site: what was said of it, and what was said of the wider sites that hold it. */
function worked(chart: Chart, site: Site): readonly CoverageRow[] {
  const states = new Map<RowSide, CoverageState>();
  const paired = isPaired(site);
  const raise = (side: RowSide, state: CoverageState): void => {
    if (RANK[state] > RANK[states.get(side) ?? 'not-examined']) states.set(side, state);
  };
  for (const entry of chart.at(site)) {
    const state = stateSaid(entry);
    for (const side of sidesOf(site, entry.side)) {
      raise(side, state);
      if (!paired && side !== null) raise(null, state === 'found' ? 'found' : 'touched');
    }
  }
  for (const holder of REACHED_FROM.get(site) ?? [])
    for (const { side: said } of chart.at(holder))
      for (const side of sidesOf(holder, said)) {
        if (side !== null) raise(paired ? side : null, 'touched');
        // A paired site whose side was not said touches neither side's parts.
        else if (!isPaired(holder)) for (const each of rowSidesOf(site)) raise(each, 'touched');
      }
  return rowsOf(site, states);
}

function rowsOf(site: Site, states: ReadonlyMap<RowSide, CoverageState>): readonly CoverageRow[] {
  const sides: RowSide[] = [...rowSidesOf(site)];
  for (const extra of [null, 'left', 'right', 'midline'] as const)
    if (!sides.includes(extra) && states.has(extra)) sides.push(extra);
  const stateOf = (side: RowSide): CoverageState => states.get(side) ?? 'not-examined';
  const halvesClear = !isPaired(site) && stateOf('left') === 'clear' && stateOf('right') === 'clear';
  return sides.map((side) => {
    const state = stateOf(side);
    return { site, side, state: side === null && halvesClear && state === 'touched' ? 'clear' : state };
  });
}

const RULE_AT = Object.fromEntries(
  SITES.map((site) => [site, (chart: Chart) => worked(chart, site)]),
) as Readonly<Record<Site, Rule<readonly CoverageRow[]>>>;

/** A rule for each site, in exam order. */
export const COVERAGE_RULES: readonly Rule<readonly CoverageRow[]>[] = SITES.map((site) => RULE_AT[site]);

/** The rows of one site. */
export const coverageAt = (chart: Chart, site: Site): readonly CoverageRow[] => chart.ask(RULE_AT[site]);

/**
 * One row for each unpaired site, a left and a right one for each paired site, in exam order. `both` marks both rows.
 * What is said of a paired site without a side, or of one side of an unpaired site, has a row of its own: it marks
 * neither left nor right, and half a chest found clear leaves the chest `touched`.
 * A statement on a wider site ("left arm, no deformity") makes the narrower ones of its region that it does not leave
 * hidden `touched`, never `clear`; one on a narrower site says nothing of the wider.
 */
export function coverage(entries: readonly Entry[]): readonly CoverageRow[] {
  const chart = chartOf(entries);
  return COVERAGE_RULES.flatMap((rule) => rule(chart));
}

/** A site wholly unexamined: it and everything within it, on the row's side. */
const keyOf = (site: Site, side: RowSide): string => `${site} ${side ?? ''}`;

const PARTS_WITHIN: ReadonlyMap<string, readonly string[]> = new Map(
  SITES.flatMap((site) =>
    rowSidesOf(site).map((side) => [
      keyOf(site, side),
      SITES.filter((inner) => HOLDERS[inner].includes(site)).flatMap((inner) =>
        (side !== null && isPaired(inner) ? [side] : rowSidesOf(inner)).map((each) => keyOf(inner, each)),
      ),
    ]),
  ),
);

const HELD_BY: ReadonlyMap<string, readonly string[]> = new Map(
  SITES.flatMap((site) =>
    rowSidesOf(site).map((side) => [
      keyOf(site, side),
      HOLDERS[site].map((holder) => keyOf(holder, isPaired(holder) ? side : null)),
    ]),
  ),
);

/**
 * What is left to examine, in exam order: the rows that are `not-examined`. Where nothing of a wider site was
 * examined it stands for its parts ("left leg"); where some part was, the other parts are listed instead of it.
 */
export function remaining(rows: readonly CoverageRow[]): readonly CoverageRow[] {
  const open = rows.filter((row) => row.state === 'not-examined');
  const left = new Set(open.map((row) => keyOf(row.site, row.side)));
  const wholly = new Set([...left].filter((key) => PARTS_WITHIN.get(key)?.every((inner) => left.has(inner))));
  return open.filter((row) => {
    const key = keyOf(row.site, row.side);
    return wholly.has(key) && !HELD_BY.get(key)?.some((holder) => wholly.has(holder));
  });
}
