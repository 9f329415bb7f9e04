// Vitals in prose: each reading with its time; the short form gives the first, the extremes and the last, and the count.

import { clock, type Day, readingText, type Series, vitalName } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { idsOf, markOf } from './trust.ts';

type Reading = Series['readings'][number];

/** The number a reading is compared by; null where it has none. No judgement of good or bad is made of it. */
export function numberOf(reading: Reading): number | null {
  switch (reading.vital) {
    case 'pulse':
    case 'respirations':
      return reading.value.rate ?? null;
    case 'blood-pressure':
      return reading.value.systolic;
    case 'oxygen-saturation':
      return reading.value.percent;
    case 'temperature':
      return reading.value.celsius;
    case 'glucose':
      return reading.value.mgPerDl;
    case 'gcs':
      return reading.value.total ?? null;
    case 'pain-score':
      return reading.value.score;
    case 'capillary-refill':
      return reading.value.seconds;
    default:
      return null;
  }
}

/** The reading with the lowest (`sign` 1) or highest (`sign` -1) number; the earliest of equals. */
export function extreme(readings: readonly Reading[], sign: 1 | -1): Reading | null {
  let best: { readonly reading: Reading; readonly value: number } | null = null;
  for (const reading of readings) {
    const value = numberOf(reading);
    if (value !== null && (best === null || sign * value < sign * best.value)) best = { reading, value };
  }
  return best?.reading ?? null;
}

export interface Point {
  readonly word: 'first' | 'lowest' | 'highest' | 'last' | null;
  readonly reading: Reading;
}

/** First, lowest and highest where they lie outside first and last, and last, in the order of time. */
export function trend(readings: readonly Reading[]): readonly Point[] {
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return [];
  if (first === last) return [{ word: null, reading: first }];
  const between = (['lowest', 'highest'] as const).flatMap((word): readonly Point[] => {
    const sign = word === 'lowest' ? 1 : -1;
    const found = extreme(readings, sign);
    return found === null || numberOf(found) === numberOf(first) || numberOf(found) === numberOf(last)
      ? []
      : [{ word, reading: found }];
  });
  const inTime = [...between].sort((a, b) => readings.indexOf(a.reading) - readings.indexOf(b.reading));
  return [{ word: 'first', reading: first }, ...inTime, { word: 'last', reading: last }];
}

/** Marks each reading where some are confirmed and some are not; else one mark stands at the end. */
function said(points: readonly Point[], all: readonly Reading[], day: Day): string {
  const mixed = new Set(all.map(({ state }) => state)).size > 1;
  return points
    .map(
      ({ word, reading }) =>
        `${word === null ? '' : `${word} `}${readingText(reading)} at ${clock(reading.at, day)}${mixed ? markOf([reading]) : ''}`,
    )
    .join('; ')
    .concat(mixed ? '' : all.length > 1 ? markOf(all).replace('(', '(all ') : markOf(all));
}

/** `Pulse: 92 at 14:10; 112 at 14:30 (unconfirmed).` Every reading. */
export const fullSeries = ({ vital, readings }: Series, day: Day): Sentence => ({
  text: `${vitalName(vital)}: ${said(
    readings.map((reading) => ({ word: null, reading })),
    readings,
    day,
  )}.`,
  entries: idsOf(readings),
});

/** `Pulse, 4 readings: first 92 at 14:10; highest 124 at 14:20; last 112 at 14:30.` */
export const shortSeries = ({ vital, readings }: Series, day: Day): Sentence => {
  const points = trend(readings);
  const count = readings.length > points.length ? `, ${readings.length} readings` : '';
  return {
    text: `${vitalName(vital)}${count}: ${said(points, readings, day)}.`,
    entries: idsOf(readings),
  };
};
