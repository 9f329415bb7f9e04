// The body in parts that are large enough for a gloved finger; together they hold every site, in exam order.

import type { CoverageRow } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { type Region, regionOf, type Side } from '../../terms/index.ts';

export interface Zone {
  readonly id: string;
  readonly name: string;
  readonly regions: readonly Region[];
  /** the patient's side, or null for both and the middle */
  readonly side: Extract<Side, 'left' | 'right'> | null;
}

export const ZONES: readonly Zone[] = [
  { id: 'head', name: 'Head and neck', regions: ['head', 'neck'], side: null },
  { id: 'arm-right', name: 'RIGHT shoulder and arm', regions: ['shoulder', 'arm'], side: 'right' },
  { id: 'arm-left', name: 'LEFT shoulder and arm', regions: ['shoulder', 'arm'], side: 'left' },
  { id: 'chest', name: 'Chest', regions: ['chest'], side: null },
  { id: 'belly', name: 'Abdomen and pelvis', regions: ['abdomen', 'pelvis'], side: null },
  { id: 'leg-right', name: 'RIGHT leg', regions: ['leg'], side: 'right' },
  { id: 'leg-left', name: 'LEFT leg', regions: ['leg'], side: 'left' },
  { id: 'back', name: 'Back and spine', regions: ['back'], side: null },
];

/** True for a row, or an entry's place, that belongs to the zone; one whose side was not said belongs to both sides' zones. */
export const holds = (
  zone: Zone,
  { site, side }: Pick<CoverageRow, 'site'> & { side: Side | null },
): boolean =>
  zone.regions.includes(regionOf(site)) &&
  (zone.side === null || side === null || side === 'both' || side === zone.side);

/** The entries about the zone's sites that still stand. */
export const entriesAt = (zone: Zone, entries: readonly Entry[]): readonly Entry[] =>
  entries.filter(
    (entry) =>
      (entry.kind === 'finding' || entry.kind === 'csm') &&
      (entry.state === 'heard' || entry.state === 'confirmed') &&
      holds(zone, entry),
  );

/** Those of the entries that name this very place. */
export const entriesOn = (
  { site, side }: Pick<CoverageRow, 'site' | 'side'>,
  entries: readonly Entry[],
): readonly Entry[] =>
  entries.filter(
    (entry) =>
      'site' in entry &&
      entry.site === site &&
      ((entry.side ?? null) === side || (entry.side === 'both' && side !== null)),
  );

/** The coverage of a zone. */
export const rowsAt = (zone: Zone, rows: readonly CoverageRow[]): readonly CoverageRow[] =>
  rows.filter((row) => holds(zone, row));

/** `3 found, 4 denied, 2 not examined`: how the rows of a zone stand; nothing is called normal. */
export function tally(rows: readonly CoverageRow[]): string {
  const count = (state: CoverageRow['state']): number => rows.filter((row) => row.state === state).length;
  const parts = [
    [count('found'), 'with findings'],
    [count('clear'), 'only negatives'],
    [count('touched'), 'touched'],
    [count('not-examined'), 'not examined'],
  ] as const;
  return parts
    .filter(([many]) => many > 0)
    .map(([many, what]) => `${many} ${what}`)
    .join(', ');
}
