// Vitals in prose: each reading with its time; the short form gives the first, the extremes and the last, and the count;
// of what has no number, each change.

import { clock, type Day, minuteOf, readingText, type Series, vitalName } from '../../timeline/index.ts';
import type { Sentence } from '../text.ts';
import { lowestGcs } from './gcs-lowest.ts';
import { type Told, written } from './told.ts';
import { markOf, trustIn } from './trust.ts';

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

const isGcs = (reading: Reading): reading is Extract<Reading, { vital: 'gcs' }> => reading.vital === 'gcs';

/** The lowest reading; `sure` is false where another, of which a part could not be tested, may have been lower. */
export function lowestOf(
  readings: readonly Reading[],
): { readonly reading: Reading; readonly sure: boolean } | null {
  const gcs = readings.filter(isGcs);
  if (gcs.length > 0) return lowestGcs(gcs);
  const reading = extreme(readings, 1);
  return reading === null ? null : { reading, sure: true };
}

/** Two readings with one number, or one reading. */
export const isAlike = (one: Reading, other: Reading): boolean =>
  one === other || (numberOf(one) !== null && numberOf(one) === numberOf(other));

/** The reading with the lowest (`sign` 1) or highest (`sign` -1) number; the earliest of equals. */
function extreme(readings: readonly Reading[], sign: 1 | -1): Reading | null {
  let best: { readonly reading: Reading; readonly value: number } | null = null;
  for (const reading of readings) {
    const value = numberOf(reading);
    if (value !== null && (best === null || sign * value < sign * best.value)) best = { reading, value };
  }
  return best?.reading ?? null;
}

export interface Point {
  readonly word: 'first' | 'lowest' | 'lowest total' | 'highest' | 'then' | 'last' | null;
  readonly reading: Reading;
}

/** Readings between that no number compares: each that says another thing than the one before it, since any may be the worst. */
const changes = (readings: readonly Reading[]): readonly Point[] =>
  readings.slice(1, -1).flatMap((reading, index): readonly Point[] => {
    const before = readings[index];
    return numberOf(reading) !== null ||
      (before !== undefined && readingText(before) === readingText(reading))
      ? []
      : [{ word: 'then', reading }];
  });

/**
 * First, lowest and highest where they lie outside first and last, and last, in the order of time; pupils, skin,
 * responsiveness and whatever else has no number by each change.
 */
export function trend(readings: readonly Reading[]): readonly Point[] {
  const first = readings[0];
  const last = readings.at(-1);
  if (first === undefined || last === undefined) return [];
  if (first === last) return [{ word: null, reading: first }];
  const between = (['lowest', 'highest'] as const).flatMap((word): readonly Point[] => {
    const lowest = word === 'lowest' ? lowestOf(readings) : null;
    const found = word === 'lowest' ? (lowest?.reading ?? null) : extreme(readings, -1);
    return found === null || isAlike(found, first) || isAlike(found, last)
      ? []
      : [{ word: lowest?.sure === false ? ('lowest total' as const) : word, reading: found }];
  });
  const inTime = [...between, ...changes(readings)].sort(
    (a, b) => readings.indexOf(a.reading) - readings.indexOf(b.reading),
  );
  return [{ word: 'first', reading: first }, ...inTime, { word: 'last', reading: last }];
}

const single = (vital: Series['vital'], reading: Reading, day: Day): Told => ({
  words: `${vitalName(vital)}: ${readingText(reading)} at ${clock(reading.at, day)}`,
  entries: [reading],
});

/** Marks each reading where some are confirmed and some are not; else one mark stands at the end. */
function said(series: Series, points: readonly Point[], count: string, day: Day): Told {
  const { vital, readings } = series;
  // Where only readings that are not told are unconfirmed, the sentence as a whole says "in part".
  const mixed = trustIn(readings) === 'in part' && points.some(({ reading }) => reading.state === 'heard');
  const words = points.map(
    ({ word, reading }) =>
      `${word === null ? '' : `${word} `}${readingText(reading)} at ${clock(reading.at, day)}${mixed ? markOf([reading]) : ''}`,
  );
  return {
    words: `${vitalName(vital)}${count}: ${words.join('; ')}`,
    entries: readings,
    ...(mixed ? { state: 'inside' as const } : {}),
    ...(points.length < 2
      ? {}
      : { clauses: apart(series).map(({ reading }) => single(vital, reading, day)) }),
  };
}

/** One for each reading; the same value within one minute is one reading, said again. */
const apart = ({ readings }: Series): readonly Point[] =>
  readings
    .filter((reading, index) => {
      const before = readings[index - 1];
      return (
        before === undefined ||
        minuteOf(before.at) !== minuteOf(reading.at) ||
        before.state !== reading.state ||
        readingText(before) !== readingText(reading)
      );
    })
    .map((reading) => ({ word: null, reading }));

/** More readings than these are told by their trend; each of them is in the timeline's series. */
const MOST_READINGS = 4;

export const fullTold = (series: Series, day: Day): Told => said(series, apart(series), '', day);

/** First, lowest and highest where they lie outside, and last, with the count of readings. */
export function shortTold(series: Series, day: Day): Told {
  const points = trend(apart(series).map(({ reading }) => reading));
  const { length } = apart(series);
  return said(series, points, length > points.length ? `, ${length} readings` : '', day);
}

/** Every reading where there are few, else the trend. */
export const seriesTold = (series: Series, day: Day): Told =>
  apart(series).length > MOST_READINGS ? shortTold(series, day) : fullTold(series, day);

/** `Pulse: 92 at 14:10; 112 at 14:30 (unconfirmed).` Every reading. */
export const fullSeries = (series: Series, day: Day): Sentence => allMarked(series, fullTold(series, day));

/** `Pulse, 4 readings: first 92 at 14:10; highest 124 at 14:20; last 112 at 14:30.` */
export const shortSeries = (series: Series, day: Day): Sentence => allMarked(series, shortTold(series, day));

/** Every reading of a short series, the trend of a long one. */
export const seriesSentence = (series: Series, day: Day): Sentence =>
  allMarked(series, seriesTold(series, day));

/** One mark at the end of several readings is of them all, and says so. */
function allMarked(series: Series, told: Told): Sentence {
  const sentence = written(told);
  const several = told.state !== 'inside' && apart(series).length > 1;
  return several
    ? { ...sentence, text: sentence.text.replace(/ \((unconfirmed[^()]*)\)\.$/, ' (all $1).') }
    : sentence;
}
