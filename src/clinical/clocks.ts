// Time since the injury, the tourniquet, the last vitals, the last intake and each medication; null where not said.

import type { Entry } from '../record/entry.ts';
import type { Topic } from '../terms/index.ts';
import { type Chart, timeOf } from './chart.ts';
import { type Reckoned, reckoned } from './evidence.ts';
import { placeText } from './place.ts';
import { COMMON_PRACTICE } from './source.ts';

export interface Clock extends Reckoned {
  readonly clock: 'injury' | 'tourniquet' | 'vitals' | 'intake' | 'medication';
  /** what it is of: `left thigh`, the medication, the food */
  readonly of: string;
  /** ISO 8601 with offset; null where the time was not said */
  readonly since: string | null;
  /** whole minutes to `now`; null where the time was not said */
  readonly minutes: number | null;
}

const clockOf = (
  clock: Clock['clock'],
  of: string,
  entry: Entry | undefined,
  now: number,
  missing: readonly string[] = [],
): Clock => {
  const known = entry !== undefined && missing.length === 0;
  return {
    clock,
    of,
    since: known ? entry.at : null,
    minutes: known ? Math.floor((now - timeOf(entry)) / 60_000) : null,
    ...reckoned(entry === undefined ? [] : [entry], COMMON_PRACTICE, missing),
  };
};

/** A told event is timed by a time that was spoken with it: without one, `at` is only when it was told. */
const timed = (entry: Entry): boolean => timeOf(entry) !== Date.parse(entry.heardAt);

const INJURY: readonly Topic[] = ['time', 'mechanism', 'onset', 'events'];

function injury(chart: Chart, now: number): Clock {
  const told = chart.history.filter((entry) => INJURY.includes(entry.topic));
  const known = told.find(timed);
  return clockOf(
    'injury',
    'injury',
    known ?? told[0],
    now,
    known === undefined ? ['time of the injury'] : [],
  );
}

/** One for each place: the earliest time it was said to be on, for a later word of it may only repeat it. */
function tourniquets(chart: Chart, now: number): readonly Clock[] {
  const first = new Map<string, Entry>();
  for (const entry of chart.care) {
    if (entry.care !== 'tourniquet') continue;
    const place = entry.site === undefined ? 'place not said' : placeText(entry.site, entry.side ?? null);
    if (!first.has(place)) first.set(place, entry);
  }
  return [...first].map(([place, entry]) => clockOf('tourniquet', place, entry, now));
}

function intake(chart: Chart, now: number): readonly Clock[] {
  const told = chart.history.findLast((entry) => entry.topic === 'last-intake');
  if (told === undefined) return [clockOf('intake', 'last intake', undefined, now, ['last intake'])];
  return [clockOf('intake', told.text, told, now, timed(told) ? [] : ['time of the last intake'])];
}

/** Every clock at `now`, in epoch ms. Injury, last vitals and intake are always there, with what they lack. */
export const clocksOf = (chart: Chart, now: number): readonly Clock[] => [
  injury(chart, now),
  ...tourniquets(chart, now),
  clockOf('vitals', 'last vitals', chart.vitals.at(-1), now, chart.vitals.length === 0 ? ['vitals'] : []),
  ...intake(chart, now),
  ...chart.care
    .filter((entry) => entry.care === 'medication')
    .map((entry) => clockOf('medication', entry.text ?? 'medication not named', entry, now)),
];
