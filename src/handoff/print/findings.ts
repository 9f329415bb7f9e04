// Findings on paper: a table for each region, a row for each place, the patient's left and right beside each other, and
// what was not examined said in the cell where the finding would stand.

import { isImpaired } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import { REGIONS, type Region, regionOf, SITES, type Side, type Site } from '../../terms/index.ts';
import { clock, type Day, inOrder, siteName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { type CsmFact, csmFacts } from '../sentences/csm-fact.ts';
import { type Fact, type FindingEntry, factsOf } from '../sentences/fact.ts';
import { capital, or } from '../sentences/list.ts';
import { findingPhrase } from '../sentences/phrase.ts';
import { unspokenOfFact } from '../sentences/trust.ts';

/** One statement of a cell. */
export interface Cell {
  readonly text: string;
  /** ids of the entries it tells; empty for what was not examined */
  readonly entries: readonly string[];
  /** `present` findings are printed heavier than denials */
  readonly weight: 'present' | 'denied' | 'none';
}

export interface PrintedTable {
  readonly title: string;
  readonly columns: readonly string[];
  /** a row's cells, each with its statements */
  readonly rows: readonly (readonly (readonly Cell[])[])[];
}

export const COLUMNS = ['Place', 'Left', 'Right', 'Middle, or side not said'] as const;
const SIDES = ['left', 'right', null] as const;
type Column = (typeof SIDES)[number];

const REGION_NAMES: Readonly<Record<Region, string>> = {
  head: 'Head',
  neck: 'Neck',
  shoulder: 'Shoulders',
  arm: 'Arms and hands',
  chest: 'Chest',
  abdomen: 'Abdomen',
  pelvis: 'Pelvis',
  leg: 'Legs and feet',
  back: 'Back',
};

/** Stands for "unconfirmed", which has no room in a table; the foot of each page and the first page tell it. */
export const UNCONFIRMED_SIGN = '†';

/** ` † (side carried)`, of all that said one fact. */
function mark(entries: readonly Entry[]): string {
  const unspoken = unspokenOfFact(entries);
  const sign = entries.every((entry) => entry.state === 'heard') ? ` ${UNCONFIRMED_SIGN}` : '';
  return unspoken.length === 0 ? sign : `${sign} (${unspoken.join('; ')})`;
}

const timeOf = ({ latest, when }: Fact, day: Day): string =>
  when === 'never' ? '' : `${when === 'last at' ? ', last at' : ','} ${clock(latest.at, day)}`;

/** `distal swelling`, `NO tenderness`, `tenderness at C5`, with time and mark. */
function findingCell(fact: Fact, day: Day): Cell {
  const { latest, entries } = fact;
  const { side, part, level, present } = latest;
  const words = [
    side === 'midline' ? 'midline:' : undefined,
    present ? undefined : 'NO',
    ...(part ?? []),
    findingPhrase(latest),
    level === undefined ? undefined : `at ${level.replace('-', ' ')}`,
  ].filter((word) => word !== undefined);
  return {
    text: `${words.join(' ')}${timeOf(fact, day)}${mark(entries)}`,
    entries: entries.map(({ id }) => id),
    weight: present ? 'present' : 'denied',
  };
}

/** True for a bare "no": it has no words of its own that would be lost or turned in a list. */
const isBareDenial = ({ latest, when }: Fact): boolean =>
  !latest.present &&
  when === 'never' &&
  latest.side !== 'midline' &&
  latest.part === undefined &&
  latest.level === undefined &&
  findingPhrase(latest) === findingPhrase({ finding: latest.finding });

/** Findings first, then denials; bare ones that are known alike are gathered: `NO deformity, swelling or tenderness`. */
function findingCells(facts: readonly Fact[], day: Day): readonly Cell[] {
  const own = facts
    .filter((fact) => !isBareDenial(fact))
    .sort((a, b) => Number(b.latest.present) - Number(a.latest.present));
  const sets = new Map<string, Fact[]>();
  for (const fact of facts.filter(isBareDenial)) {
    const key = mark(fact.entries);
    sets.set(key, [...(sets.get(key) ?? []), fact]);
  }
  return [
    ...own.map((fact) => findingCell(fact, day)),
    ...[...sets].map(
      ([marks, some]): Cell => ({
        text: `NO ${or(some.map(({ latest }) => findingPhrase(latest)))}${marks}`,
        entries: some.flatMap(({ entries }) => entries.map(({ id }) => id)),
        weight: 'denied',
      }),
    ),
  ];
}

/** What is there and weak or decreased is neither intact nor gone. */
const limbState = (entry: CsmFact['latest']): string =>
  !entry.present ? 'NOT intact' : isImpaired(entry) ? 'present' : 'intact';

/** `circulation intact (warm)`, `motion NOT intact`, with the digit where one was named. */
function limbCell({ entries, latest, details, timed }: CsmFact, day: Day): Cell {
  const digit = latest.digit === undefined ? '' : `${latest.digit.replace('-', ' ')}: `;
  const told = details.length === 0 ? '' : `: ${details.join(', ')}`;
  const time = timed ? `, ${clock(latest.at, day)}` : '';
  return {
    text: `${digit}${latest.aspect} ${limbState(latest)}${told}${time}${mark(entries)}`,
    entries: entries.map(({ id }) => id),
    weight: latest.present ? 'denied' : 'present',
  };
}

const isIn = (column: Column, side: Side | null): boolean =>
  column === null ? side === null || side === 'midline' : side === column || side === 'both';

const STATES = {
  'not-examined': 'not examined',
  touched: 'looked at or felt, nothing told of it',
  clear: null,
  found: null,
} as const;

/** What coverage says of a cell in which nothing stands. */
function emptyCell({ coverage }: HandoffInput, site: Site, column: Column): readonly Cell[] {
  const row = coverage.find((one) => one.site === site && one.side === column);
  const text = row === undefined ? null : STATES[row.state];
  return text === null ? [] : [{ text, entries: [], weight: 'none' }];
}

/** The tables of the regions of which something was told, head to toe. */
export function printedTables(input: HandoffInput, day: Day): readonly PrintedTable[] {
  const findings = standing(inOrder(input.entries), 'finding') as readonly FindingEntry[];
  const facts = factsOf(findings);
  const limbs = csmFacts(input.entries);
  const told = (site: Site, column: Column): readonly Cell[] => [
    ...findingCells(
      facts.filter(({ latest }) => latest.site === site && isIn(column, latest.side)),
      day,
    ),
    ...limbs
      .filter(({ latest }) => latest.site === site && isIn(column, latest.side))
      .map((fact) => limbCell(fact, day)),
  ];
  const rowOf = (site: Site): PrintedTable['rows'][number] | null => {
    const cells = SIDES.map((column) => told(site, column));
    if (cells.every((cell) => cell.length === 0)) return null;
    const place: Cell = { text: capital(siteName(site)), entries: [], weight: 'none' };
    const filled = SIDES.map((column, index) => {
      const said = cells[index] ?? [];
      return said.length > 0 ? said : emptyCell(input, site, column);
    });
    return [[place], ...filled];
  };
  return REGIONS.flatMap((region) => {
    const rows = SITES.filter((site) => regionOf(site) === region).flatMap((site) => {
      const row = rowOf(site);
      return row === null ? [] : [row];
    });
    return rows.length === 0 ? [] : [{ title: REGION_NAMES[region], columns: COLUMNS, rows }];
  });
}
