// Published ranges of pulse and breathing for children by age, and where a reading lies in each of them.

import type { Entry } from '../../record/entry.ts';
import { ageOf } from '../age.ts';
import { type Chart, vitalsOf } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import type { Source } from '../source.ts';

export const CHILD_RANGES_SOURCE: Source = {
  cite: 'Fleming S et al. Lancet 2011;377:1011-1018, web box 1 (ranges quoted there from APLS, PALS, EPLS, ATLS)',
  mark: 'read',
  note: 'read in a flattened extract; the age columns are to be checked against the page',
};

/** Lowest and highest of a range; ATLS gives an upper bound only, itself outside the range. */
type Range = readonly [low: number, high: number] | readonly [below: number];

interface Row {
  /** whole or part years from which the row holds, up to the next row */
  readonly from: number;
  readonly apls: Range;
  readonly pals: Range;
  readonly epls: Range;
  readonly atls: Range;
}

const row = (from: number, apls: Range, pals: Range, epls: Range, atls: Range): Row => ({
  from,
  apls,
  pals,
  epls,
  atls,
});

/** Breaths a minute. The neonatal column has the same ranges as the first year. */
export const CHILD_BREATHS: readonly Row[] = [
  row(0, [30, 40], [30, 60], [30, 40], [60]),
  row(1, [25, 35], [24, 40], [26, 34], [40]),
  row(2, [25, 30], [24, 40], [24, 30], [40]),
  row(3, [25, 30], [24, 40], [24, 30], [35]),
  row(4, [25, 30], [22, 34], [24, 30], [35]),
  row(5, [20, 25], [22, 34], [20, 24], [35]),
  row(6, [20, 25], [18, 30], [20, 24], [30]),
  row(12, [15, 20], [18, 30], [12, 20], [30]),
  row(13, [15, 20], [12, 16], [12, 20], [30]),
];

/** Beats a minute, awake. In the first year PALS and EPLS differ before and after 3 months: the wider span is held. */
export const CHILD_PULSE: readonly Row[] = [
  row(0, [110, 160], [85, 205], [85, 205], [160]),
  row(0.25, [110, 160], [100, 190], [100, 180], [160]),
  row(1, [100, 150], [100, 190], [100, 180], [150]),
  row(2, [95, 140], [60, 140], [60, 140], [150]),
  row(3, [95, 140], [60, 140], [60, 140], [140]),
  row(5, [80, 120], [60, 140], [60, 140], [140]),
  row(6, [80, 120], [60, 140], [60, 140], [120]),
  row(10, [80, 120], [60, 100], [60, 100], [120]),
  row(12, [60, 100], [60, 100], [60, 100], [100]),
];

const ADULT_FROM = 18;

export type Standing = 'below' | 'inside' | 'above';

const standingIn = (value: number, range: Range): Standing => {
  const [low, high] = range;
  if (high === undefined) return value < low ? 'inside' : 'above';
  return value < low ? 'below' : value > high ? 'above' : 'inside';
};

const rangeText = (range: Range): string =>
  range[1] === undefined ? `<${range[0]}` : `${range[0]}-${range[1]}`;

/** The row for an age in years; null from 18 on. */
export const childRow = (rows: readonly Row[], years: number): Row | null =>
  years < 0 || years >= ADULT_FROM ? null : (rows.findLast((each) => years >= each.from) ?? null);

export interface ChildRange extends Reckoned {
  readonly measure: 'pulse' | 'respirations';
  readonly value: number;
  /** each published range and where the reading lies in it; they do not agree with each other */
  readonly against: readonly { readonly name: string; readonly range: string; readonly standing: Standing }[];
  readonly text: string;
}

function compare(
  measure: ChildRange['measure'],
  value: number,
  years: number,
  entries: readonly Entry[],
): ChildRange[] {
  const ages = childRow(measure === 'pulse' ? CHILD_PULSE : CHILD_BREATHS, years);
  if (ages === null) return [];
  const against = (['apls', 'pals', 'epls', 'atls'] as const).map((name) => ({
    name: name.toUpperCase(),
    range: rangeText(ages[name]),
    standing: standingIn(value, ages[name]),
  }));
  const words = against.map((each) => `${each.standing} ${each.name} ${each.range}`).join(', ');
  const text = `${measure} ${value} at ${years} years: ${words}`;
  return [{ measure, value, against, text, ...reckoned(entries, CHILD_RANGES_SOURCE) }];
}

/** The latest pulse and breathing of a child against each published range; empty for adults or without an age. */
export function childRanges(chart: Chart): readonly ChildRange[] {
  const { years, entries } = chart.ask(ageOf);
  if (years === null) return [];
  return (['pulse', 'respirations'] as const).flatMap((measure) => {
    const latest = vitalsOf(chart, measure).findLast((entry) => entry.value.rate !== undefined);
    const rate = latest?.value.rate;
    return latest === undefined || rate === undefined
      ? []
      : compare(measure, rate, years, [latest, ...entries]);
  });
}
