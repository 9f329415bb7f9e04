// What a chart of a vital sign shows: its numbers at their times, and nothing drawn between that was not measured.

import type { Vital } from '../../terms/index.ts';
import { clock, dayOf, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { numberOf } from '../sentences/vitals.ts';
import { signName } from './signs.ts';

export interface ChartPoint {
  /** milliseconds since the epoch */
  readonly at: number;
  /** as a clock shows it */
  readonly time: string;
  readonly value: number;
  /** the lower of two that belong together, as a diastolic pressure */
  readonly low?: number;
  readonly confirmed: boolean;
}

export interface VitalChart {
  readonly vital: Vital;
  readonly name: string;
  readonly points: readonly ChartPoint[];
  /** what the chart spans */
  readonly least: number;
  readonly most: number;
}

/**
 * Each charted sign with the range that its chart spans, wider only where a number lies outside: a small change must not
 * fill the paper. GCS and pain span their scales; the others are our choice, no source.
 */
const CHARTED: readonly (readonly [Vital, readonly [least: number, most: number]])[] = [
  ['pulse', [40, 160]],
  ['blood-pressure', [40, 200]],
  ['respirations', [0, 40]],
  ['oxygen-saturation', [70, 100]],
  ['gcs', [3, 15]],
  ['temperature', [28, 42]],
  ['pain-score', [0, 10]],
];

/** A chart for each sign with at least two numbers; one number is no course. */
export function vitalCharts({ entries, startedAt }: HandoffInput): readonly VitalChart[] {
  const day = dayOf(startedAt);
  const all = series(entries);
  return CHARTED.flatMap(([vital, [from, to]]) => {
    const points = (all.find((one) => one.vital === vital)?.readings ?? []).flatMap(
      (reading): ChartPoint[] => {
        const value = numberOf(reading);
        if (value === null) return [];
        const low = reading.vital === 'blood-pressure' ? reading.value.diastolic : null;
        return [
          {
            at: Date.parse(reading.at),
            time: clock(reading.at, day),
            value,
            confirmed: reading.state === 'confirmed',
            ...(low === null ? {} : { low }),
          },
        ];
      },
    );
    const values = points.flatMap(({ value, low }) => (low === undefined ? [value] : [value, low]));
    const [least, most] = [Math.min(from, ...values), Math.max(to, ...values)];
    return points.length < 2 ? [] : [{ vital, name: signName(vital), points, least, most }];
  });
}
