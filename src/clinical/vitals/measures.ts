// The numbers that a vital's reading holds, each under one name and unit, for series and comparisons.

import { type Chart, type EntryOf, type Rule, timeOf, vitalsOf } from '../chart.ts';
import { gcsReadings } from '../score/gcs.ts';

export const MEASURES = [
  'pulse',
  'respirations',
  'systolic',
  'diastolic',
  'oxygen-saturation',
  'temperature',
  'glucose',
  'gcs',
  'pain-score',
  'capillary-refill',
] as const;
export type Measure = (typeof MEASURES)[number];

export const UNIT: Readonly<Record<Measure, string>> = {
  pulse: '/min',
  respirations: '/min',
  systolic: 'mmHg',
  diastolic: 'mmHg',
  'oxygen-saturation': '%',
  temperature: '°C',
  glucose: 'mg/dL',
  gcs: '',
  'pain-score': 'of 10',
  'capillary-refill': 's',
};

export interface Point {
  readonly measure: Measure;
  readonly value: number;
  /** epoch ms */
  readonly at: number;
  readonly entry: EntryOf<'vital'>;
}

function numberIn(entry: EntryOf<'vital'>, measure: Measure): number | null | undefined {
  switch (entry.vital) {
    case 'pulse':
    case 'respirations':
      return entry.value.rate;
    case 'blood-pressure':
      return measure === 'systolic' ? entry.value.systolic : entry.value.diastolic;
    case 'oxygen-saturation':
      return entry.value.percent;
    case 'temperature':
      return entry.value.celsius;
    case 'glucose':
      return entry.value.mgPerDl;
    case 'pain-score':
      return entry.value.score;
    case 'capillary-refill':
      return entry.value.seconds;
    default:
      return null;
  }
}

/** Every number that was read of a measure, earliest first; a GCS counts where it has a sum. */
export const pointsOf = (chart: Chart, measure: Measure): readonly Point[] => chart.ask(POINTS[measure]);

function pointsIn(chart: Chart, measure: Measure): readonly Point[] {
  if (measure === 'gcs')
    return chart.ask(gcsReadings).flatMap((reading): Point[] => {
      const entry = reading.entries[0];
      return reading.total === null || entry === undefined
        ? []
        : [{ measure, value: reading.total, at: reading.at, entry }];
    });
  const vital = measure === 'systolic' || measure === 'diastolic' ? 'blood-pressure' : measure;
  const read: readonly EntryOf<'vital'>[] = vitalsOf(chart, vital);
  return read.flatMap((entry) => {
    const value = numberIn(entry, measure);
    return typeof value === 'number' ? [{ measure, value, at: timeOf(entry), entry }] : [];
  });
}

/** A rule for each measure: its series, its jumps and its units are asked of the same points. */
const POINTS = Object.fromEntries(
  MEASURES.map((measure) => [measure, (chart: Chart) => pointsIn(chart, measure)]),
) as Readonly<Record<Measure, Rule<readonly Point[]>>>;
