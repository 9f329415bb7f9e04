// Times of day said by hour and minute: "fourteen thirty two", "oh six hundred", "14:32", "1432", "two fifteen pm".

import { isDigit, isFigure, type NumberReading, readNumbers, readTwoDigits } from '../numbers/index.ts';
import type { Clock, ClockReading } from './spoken-time.ts';
import { clock, isMeasured, pastHours, pastOClock, saidAt, withDayHalf } from './suffix.ts';

const SHORT = /^(\d)([0-5]\d)$/;
const COLON = /^([01]?\d|2[0-4]):([0-5]\d)(?::[0-5]\d)?$/;

const NAMED: readonly (readonly [said: readonly string[], hour: number])[] = [
  [['noon'], 12],
  [['midday'], 12],
  [['mid', 'day'], 12],
  [['midnight'], 0],
  [['mid', 'night'], 0],
];

/** The words that a named hour may begin with. */
export const NAME_BEGINS: ReadonlySet<string> = new Set(NAMED.map(([[first = '']]) => first));

/** "noon", "midday", "midnight", with a "twelve" before them or without; null where none stands at `start`. */
export function namedHour(words: readonly string[], start: number): ClockReading | null {
  const at = words[start] === 'twelve' || words[start] === '12' ? start + 1 : start;
  if (!NAME_BEGINS.has(words[at] ?? '')) return null;
  const found = NAMED.find(([said]) => saidAt(words, at, said));
  if (found === undefined) return null;
  return { end: at + found[0].length, time: { kind: 'clock', hour: found[1], minute: 0, twentyFour: true } };
}

/** Two digits with a zero in front: "oh six", "zero five", "05". */
const leadingZero = ({ digits }: NumberReading): boolean => digits?.length === 2 && digits[0] === '0';

/** A number said as one, or two digits with a zero in front; "one four" amid other digits is neither. */
const asOne = (readings: readonly NumberReading[], start: number): readonly NumberReading[] =>
  readings.filter(
    (reading) => leadingZero(reading) || reading.digits === undefined || reading.end === start + 1,
  );

const minutes = (words: readonly string[], start: number): readonly NumberReading[] =>
  asOne(readTwoDigits(words, start), start).filter((reading) => leadingZero(reading) || reading.value >= 10);

interface Candidate {
  readonly end: number;
  readonly time: Clock | null;
}

/** "14:32" and "2:15"; the seconds that a figure may carry are dropped. */
function colon(words: readonly string[], start: number): readonly Candidate[] {
  if (!isFigure(words[start] ?? '')) return [];
  const [, hour = '', minute = ''] = COLON.exec(words[start] ?? '') ?? [];
  if (hour === '') return [];
  return [{ end: start + 1, time: clock(Number(hour), Number(minute), /^0\d/.test(hour)) }];
}

/** True where four digits may stand: one figure of four, or four words. */
const isDigits = (words: readonly string[], start: number): boolean =>
  words[start]?.length === 4 && isFigure(words[start] ?? '')
    ? true
    : [0, 1, 2, 3].every((k) => isDigit(words, start + k));

/** "1432", "zero six one five": four digits on the twenty-four hour clock; five digits in a row are no time. */
function fourDigits(words: readonly string[], start: number): readonly Candidate[] {
  if (!isDigits(words, start)) return [];
  const [longest] = readNumbers(words, start);
  const digits = longest?.digits ?? '';
  if (longest === undefined || digits.length !== 4) return [];
  return [{ end: longest.end, time: clock(Number(digits.slice(0, 2)), Number(digits.slice(2)), true) }];
}

/** "fourteen thirty two", "oh six fifteen", "two oh five". */
const hourAndMinute = (words: readonly string[], hours: readonly NumberReading[]): readonly Candidate[] =>
  hours.flatMap((hour) =>
    minutes(words, hour.end).map((minute) => ({
      end: minute.end,
      time: clock(hour.value, minute.value, leadingZero(hour)),
    })),
  );

/** "fourteen hundred", "oh six hundred (hours)"; "two hundred" needs its "hours" to be a time. */
const onTheHundred = (words: readonly string[], hours: readonly NumberReading[]): readonly Candidate[] =>
  hours
    .filter(({ end }) => words[end] === 'hundred' && words[end + 1] !== 'and')
    .filter((hour) => {
      const saysHours = pastHours(words, hour.end + 1) > hour.end + 1;
      return saysHours || leadingZero(hour) || hour.value === 0 || hour.value >= 10;
    })
    .map((hour) => ({ end: hour.end + 1, time: clock(hour.value, 0, true) }));

/** "nine o'clock". */
const onTheHour = (words: readonly string[], two: readonly NumberReading[]): readonly Candidate[] =>
  two
    .filter(({ end, value }) => value >= 1 && value <= 12 && pastOClock(words, end) > end)
    .map((hour) => ({ end: pastOClock(words, hour.end), time: clock(hour.value, 0, false) }));

/** A bare hour, and figures such as "215", are times only by the half of the day that follows. */
function byDayHalf(
  words: readonly string[],
  start: number,
  two: readonly NumberReading[],
): readonly ClockReading[] {
  const bare = two.map(({ end, value }) => ({ end, time: clock(value, 0, false) }));
  const [, hour, minute] = isFigure(words[start] ?? '') ? (SHORT.exec(words[start] ?? '') ?? []) : [];
  const short =
    hour === undefined ? [] : [{ end: start + 1, time: clock(Number(hour), Number(minute), false) }];
  return [...bare, ...short].flatMap(({ end, time }) => {
    if (time === null || time.hour < 1 || time.hour > 12) return [];
    const reading = withDayHalf(words, { end, time });
    return reading.end > end ? [reading] : [];
  });
}

function finished(words: readonly string[], { end, time }: Candidate): readonly ClockReading[] {
  if (time === null) return [];
  const past = pastHours(words, end);
  if (past > end) return [{ end: past, time: { ...time, twentyFour: true } }];
  const reading = withDayHalf(words, { end, time });
  return reading.end === end && isMeasured(words, end) ? [] : [reading];
}

/** Every time of day by hour and minute that begins at `start`, in no order. */
export function clockTimes(words: readonly string[], start: number): readonly ClockReading[] {
  const named = namedHour(words, start);
  const two = readTwoDigits(words, start);
  const hours = asOne(two, start);
  const candidates = [
    ...colon(words, start),
    ...fourDigits(words, start),
    ...hourAndMinute(words, hours),
    ...onTheHundred(words, hours),
    ...onTheHour(words, two),
  ];
  return [
    ...(named === null ? [] : [named]),
    ...candidates.flatMap((candidate) => finished(words, candidate)),
    ...byDayHalf(words, start, two),
  ];
}
