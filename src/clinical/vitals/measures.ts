// The numbers that a vital's reading holds, each under one name and unit, for series and comparisons.

import type { EntryOf } from '../chart.ts';
import { type Chart, timeOf } from '../chart.ts';
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

function numbersIn(entry: EntryOf<'vital'>): readonly (readonly [Measure, number | null | undefined])[] {
  switch (entry.vital) {
    case 'pulse':
    case 'respirations':
      return [[entry.vital, entry.value.rate]];
    case 'blood-pressure':
      return [
        ['systolic', entry.value.systolic],
        ['diastolic', entry.value.diastolic],
      ];
    case 'oxygen-saturation':
      return [['oxygen-saturation', entry.value.percent]];
    case 'temperature':
      return [['temperature', entry.value.celsius]];
    case 'glucose':
      return [['glucose', entry.value.mgPerDl]];
    case 'pain-score':
      return [['pain-score', entry.value.score]];
    case 'capillary-refill':
      return [['capillary-refill', entry.value.seconds]];
    default:
      return [];
  }
}

/** Every number that was read, earliest first; a GCS counts where it has a sum. */
export function pointsOf(chart: Chart): readonly Point[] {
  const read = chart.vitals.flatMap((entry) =>
    numbersIn(entry).flatMap(([measure, value]) =>
      typeof value === 'number' ? [{ measure, value, at: timeOf(entry), entry }] : [],
    ),
  );
  const sums = gcsReadings(chart).flatMap((reading): Point[] => {
    const entry = reading.entries[0];
    return reading.total === null || entry === undefined
      ? []
      : [{ measure: 'gcs', value: reading.total, at: reading.at, entry }];
  });
  return [...read, ...sums].sort((a, b) => a.at - b.at);
}
