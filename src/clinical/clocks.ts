// Time since the injury, the tourniquet, the last vitals, the last intake and each medication; null where not said.

import { type Entry, firstTold } from '../record/entry.ts';
import type { Topic } from '../terms/index.ts';
import { type Chart, clockText, type EntryOf, timeOf } from './chart.ts';
import { type Reckoned, reckoned } from './evidence.ts';
import { placeText } from './place.ts';
import { COMMON_PRACTICE } from './source.ts';
import { tellsFound } from './told/found.ts';
import { offOf, saidOffWords, tourniquetsOf } from './tourniquets/index.ts';

export interface Clock extends Reckoned {
  readonly clock: 'injury' | 'tourniquet' | 'vitals' | 'intake' | 'medication';
  /** what it is of: `left thigh`, the medication, the food */
  readonly of: string;
  /** ISO 8601 with offset; null where the time was not said */
  readonly since: string | null;
  /** whole minutes to `now`, or until it was said to be over; null where the time was not said */
  readonly minutes: number | null;
  /** what was said against its running, beside which alone it is to be shown; null where nothing was */
  readonly remark: string | null;
  /** false where it was said to be over */
  readonly running: boolean;
}

/** A clock before the moment it is read at. */
export interface Clocked extends Omit<Clock, 'minutes' | 'running'> {
  /** epoch ms; null where the time was not said */
  readonly from: number | null;
  /** epoch ms: when it was said to be over; null where it was not */
  readonly until: number | null;
}

/** The clock read at `now`, epoch ms. */
export function clockAt({ from, until, ...clocked }: Clocked, now: number): Clock {
  return {
    ...clocked,
    minutes: from === null ? null : Math.floor(((until ?? now) - from) / 60_000),
    running: until === null,
  };
}

const clockOf = (
  clock: Clock['clock'],
  of: string,
  entry: Entry | undefined,
  missing: readonly string[] = [],
): Clocked => {
  const known = entry !== undefined && missing.length === 0;
  return {
    clock,
    of,
    since: known ? entry.at : null,
    from: known ? timeOf(entry) : null,
    until: null,
    remark: null,
    ...reckoned(entry === undefined ? [] : [entry], COMMON_PRACTICE, missing),
  };
};

/** A told event is timed by a time that was spoken with it: without one, `at` is only when it was told. */
const timed = (entry: Entry): boolean => timeOf(entry) !== Date.parse(firstTold(entry));

const timesInjury = (entry: EntryOf<'history'>): boolean => timed(entry) && !tellsFound(entry.text);

/** What tells when it happened; a collapse or a fit may have come after the injury, and is asked only where no injury was told. */
const INJURY: readonly Topic[] = ['time', 'mechanism', 'onset'];

function injury(chart: Chart): Clocked {
  const mechanism = chart.told('mechanism');
  const told = chart.history.filter(
    ({ topic }) => INJURY.includes(topic) || (topic === 'events' && mechanism.length === 0),
  );
  const known = mechanism.find(timesInjury) ?? told.find(timesInjury);
  return clockOf('injury', 'injury', known ?? told[0], known === undefined ? ['time of the injury'] : []);
}

/** One for each: from the earliest time it was said to be on, for a later word of it may only repeat it. */
function tourniquets(chart: Chart): readonly Clocked[] {
  const notes = chart.words.filter((entry) => entry.kind === 'note');
  return tourniquetsOf(chart.care, notes).map((one) => {
    const [entry] = one.entries;
    const place = entry.site === undefined ? 'place not said' : placeText(entry.site, entry.side ?? null);
    const off = offOf(one);
    const base = clockOf('tourniquet', place, entry);
    if (one.saidOff.length === 0) return base;
    return {
      ...base,
      ...reckoned([entry, ...one.saidOff.map(({ note }) => note)], COMMON_PRACTICE),
      until: off === null ? null : timeOf(off),
      remark: one.saidOff.map((said) => saidOffWords(said, clockText(said.note))).join('; '),
    };
  });
}

function intake(chart: Chart): readonly Clocked[] {
  // "No alcohol" is no intake.
  const told = chart.history.findLast((entry) => entry.topic === 'last-intake' && entry.present !== false);
  if (told === undefined) return [clockOf('intake', 'last intake', undefined, ['last intake'])];
  return [clockOf('intake', told.text, told, timed(told) ? [] : ['time of the last intake'])];
}

/** Every clock. Injury, last vitals and intake are always there, with what they lack. */
export const clockedOf = (chart: Chart): readonly Clocked[] => [
  injury(chart),
  ...tourniquets(chart),
  clockOf('vitals', 'last vitals', chart.vitals.at(-1), chart.vitals.length === 0 ? ['vitals'] : []),
  ...intake(chart),
  ...chart.care
    .filter((entry) => entry.care === 'medication')
    .map((entry) => clockOf('medication', entry.text ?? 'medication not named', entry)),
];
