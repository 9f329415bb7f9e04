// The Revised Trauma Score, coded (0 to 12) and weighted (0 to 7.8408), from the latest GCS sum, systolic and breathing.

import { type Chart, vitalsOf } from '../chart.ts';
import type { Source } from '../source.ts';
import { gcsReadings } from './gcs.ts';
import { rounded, type Score, scoreOf } from './score.ts';

export const RTS_SOURCE: Source = {
  cite: 'Revised Trauma Score: Champion HR et al. J Trauma 1989;29:623-629',
  mark: 'read',
  note: 'bands and weights as given in trauma.org and SJTREM Utstein 2008 table 7',
};

/** Lowest value of each band and its code, highest code first. */
const GCS_BANDS = [
  [13, 4],
  [9, 3],
  [6, 2],
  [4, 1],
] as const;
const SYSTOLIC_BANDS = [
  [90, 4],
  [76, 3],
  [50, 2],
  [1, 1],
] as const;
// More than 29 breaths is code 3: the bands of breathing do not fall in order.
const BREATH_BANDS = [
  [30, 3],
  [10, 4],
  [6, 2],
  [1, 1],
] as const;

const WEIGHT = { gcs: 0.9368, systolic: 0.7326, breaths: 0.2908 } as const;

const code = (value: number, bands: readonly (readonly [number, number])[]): number =>
  bands.find(([lowest]) => value >= lowest)?.[1] ?? 0;

/** Codes 0 to 4 for a GCS sum of 3 to 15, a systolic in mmHg and breaths a minute. */
export const rtsCodes = (
  gcs: number,
  systolic: number,
  breaths: number,
): { readonly gcs: number; readonly systolic: number; readonly breaths: number } => ({
  gcs: code(gcs, GCS_BANDS),
  systolic: code(systolic, SYSTOLIC_BANDS),
  breaths: code(breaths, BREATH_BANDS),
});

/** The unweighted sum, 0 to 12. */
export function codedRts(gcs: number, systolic: number, breaths: number): number {
  const codes = rtsCodes(gcs, systolic, breaths);
  return codes.gcs + codes.systolic + codes.breaths;
}

/** The weighted score, 0 to 7.8408, to four decimals. */
export function weightedRts(gcs: number, systolic: number, breaths: number): number {
  const codes = rtsCodes(gcs, systolic, breaths);
  return rounded(
    codes.gcs * WEIGHT.gcs + codes.systolic * WEIGHT.systolic + codes.breaths * WEIGHT.breaths,
    4,
  );
}

/** `value` is the coded sum; the weighted one is in the text. */
export function revisedTraumaScore(chart: Chart): Score {
  const name = 'revised-trauma-score';
  const gcs = chart.ask(gcsReadings).at(-1);
  const pressure = vitalsOf(chart, 'blood-pressure').at(-1);
  const breathing = vitalsOf(chart, 'respirations').findLast((entry) => entry.value.rate !== undefined);
  const [total, systolic, breaths] = [gcs?.total, pressure?.value.systolic, breathing?.value.rate];
  const entries = [...(gcs?.entries ?? []), pressure, breathing].filter((entry) => entry !== undefined);
  if (typeof total !== 'number' || systolic === undefined || breaths === undefined) {
    const missing = [
      ...(typeof total === 'number' ? [] : ['GCS total']),
      ...(systolic === undefined ? ['systolic pressure'] : []),
      ...(breaths === undefined ? ['breaths a minute'] : []),
    ];
    return scoreOf(name, null, 'Revised Trauma Score not known', entries, RTS_SOURCE, missing);
  }
  const codes = rtsCodes(total, systolic, breaths);
  const coded = codedRts(total, systolic, breaths);
  const text =
    `Revised Trauma Score: GCS ${codes.gcs} + systolic ${codes.systolic} + breathing ${codes.breaths} = ${coded}; ` +
    `weighted ${weightedRts(total, systolic, breaths).toFixed(4)}`;
  return scoreOf(name, coded, text, entries, RTS_SOURCE);
}
