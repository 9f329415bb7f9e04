// Signs out of the ordinary in the few words of a short report: pupils, temperature, glucose, skin and refill.

import { type AbnormalSign, abnormalNow, isBeyond } from '../../clinical/index.ts';
import { type Entry, standing } from '../../record/entry.ts';
import type { Vital, VitalReading } from '../../terms/index.ts';
import {
  clock,
  type Day,
  minuteOf,
  readingText,
  type Series,
  series,
  vitalName,
} from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import type { Told } from '../sentences/told.ts';

/** Those that the report tells nowhere else; the worst to miss first. Common practice, no source. */
const SIGNS: readonly Vital[] = ['pupils', 'glucose', 'temperature', 'skin', 'capillary-refill'];

export interface AbnormalTold {
  readonly keep: 'grave-sign' | 'sign' | 'trend';
  readonly told: Told;
}

/** `right-sluggish` is two words when it is spoken. */
const wordsOf = (reading: VitalReading): string => readingText(reading).replace(/\b(left|right)-/g, '$1 ');

/**
 * `Pupils left 3 mm, right 6 mm, right NOT reactive`; readings of several minutes each with its time. What was said of the sign
 * since is told behind it, as it may be better: "both reacting" says nothing of their sizes.
 */
function nowTold(
  { vital, readings: all }: Series,
  { abnormality, readings }: AbnormalSign,
  day: Day,
): AbnormalTold {
  const last = all.at(-1);
  const since = last === undefined || readings.some(({ id }) => id === last.id) ? [] : [last];
  const told = [...readings, ...since];
  const isOne = new Set(told.map(({ at }) => minuteOf(at))).size === 1;
  const said = told.map(
    (reading) =>
      `${since.includes(reading) ? 'last ' : ''}${wordsOf(reading)}${isOne ? '' : ` at ${clock(reading.at, day)}`}`,
  );
  return {
    keep: abnormality === 'grave' ? 'grave-sign' : 'sign',
    told: { words: `${vitalName(vital)} ${said.join('; ')}`, entries: told },
  };
}

/** `Glucose 50 mg/dL at 09:12, last 110 mg/dL`: what was so and is no longer. */
function pastTold({ vital, readings }: Series, day: Day): readonly AbnormalTold[] {
  const last = readings.at(-1);
  const was = readings.findLast((reading) => abnormalNow([reading]) !== null);
  if (last === undefined || was === undefined) return [];
  const words = `${vitalName(vital)} ${wordsOf(was)} at ${clock(was.at, day)}, last ${wordsOf(last)}`;
  return [{ keep: 'trend', told: { words, entries: [was, last] } }];
}

/** Each sign that is out of the ordinary now, or was. */
export function abnormalTold(entries: readonly Entry[], day: Day): readonly AbnormalTold[] {
  const all = series(entries);
  return SIGNS.flatMap((vital) => all.filter((one) => one.vital === vital)).flatMap((one) => {
    const now = abnormalNow(one.readings);
    return now === null ? pastTold(one, day) : [nowTold(one, now, day)];
  });
}

/** The readings that say that a sign is out of the ordinary now. */
export const oddIds = ({ entries }: HandoffInput): readonly string[] =>
  series(entries)
    .flatMap(({ readings }) => abnormalNow(readings)?.readings ?? [])
    .map(({ id }) => id);

/**
 * True where a sign is or was out of the ordinary, or a patient not fully awake: the words that nothing was found must then
 * leave the signs out.
 */
export const isOutOfTheOrdinary = ({ entries }: HandoffInput): boolean =>
  standing(entries, 'vital').some((reading) => isBeyond(reading) || abnormalNow([reading]) !== null);
