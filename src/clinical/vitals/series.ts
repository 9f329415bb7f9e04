// Each measure as a series: its points in time, the first, the last, and which way it went.

import { clockText, type Rule } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { rounded } from '../score/score.ts';
import { COMMON_PRACTICE } from '../source.ts';
import { MEASURES, type Measure, type Point, pointsOf, UNIT } from './measures.ts';

export interface SeriesPoint {
  readonly value: number;
  /** ISO 8601 with offset */
  readonly at: string;
  readonly entry: string;
  readonly confirmed: boolean;
}

export interface Series extends Reckoned {
  readonly measure: Measure;
  readonly unit: string;
  readonly points: readonly SeriesPoint[];
  /** null with a single reading */
  readonly direction: 'up' | 'down' | 'level' | null;
  /** last less first */
  readonly change: number;
  readonly text: string;
}

function oneSeries(measure: Measure, points: readonly Point[]): readonly Series[] {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined) return [];
  const change = rounded(last.value - first.value, 1);
  const direction = points.length < 2 ? null : change > 0 ? 'up' : change < 0 ? 'down' : 'level';
  const unit = UNIT[measure];
  const name = measure.replaceAll('-', ' ');
  const spread =
    direction === null
      ? `${first.value} at ${clockText(first.entry)}`
      : `${first.value} at ${clockText(first.entry)} to ${last.value} at ${clockText(last.entry)}, ${direction}`;
  return [
    {
      measure,
      unit,
      points: points.map((point) => ({
        value: point.value,
        at: point.entry.at,
        entry: point.entry.id,
        confirmed: point.entry.state === 'confirmed',
      })),
      direction,
      change,
      text: `${name} ${spread}`,
      ...reckoned(
        points.map((point) => point.entry),
        COMMON_PRACTICE,
      ),
    },
  ];
}

/** A rule for each measure: its series, or none where it was never read. */
export const SERIES_RULES: readonly Rule<readonly Series[]>[] = MEASURES.map(
  (measure) => (chart) => oneSeries(measure, pointsOf(chart, measure)),
);
