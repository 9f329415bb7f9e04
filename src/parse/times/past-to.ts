// Times of day said from the nearest hour: "quarter past two", "half past two", "ten to three", "twenty past midnight".

import { readNumbers, readTwoDigits } from '../numbers/index.ts';
import { namedHour } from './clock.ts';
import type { ClockReading, MinuteOfHour } from './spoken-time.ts';
import { clock, isMeasured, pastOClock, withDayHalf } from './suffix.ts';

const PAST = new Set(['past', 'after']);
const TO = new Set(['to', 'till', 'til', 'before']);
const MINUTES = new Set(['minute', 'minutes', 'min', 'mins']);

/** The words that may stand between the minutes and the hour they are counted from. */
export const OFFSET_LINKS: readonly string[] = [...PAST, ...TO, ...MINUTES];

interface Offset {
  readonly end: number;
  readonly minutes: number;
}

// "four to five" is a range; only fives go without the word "minutes".
function offsetsAt(words: readonly string[], start: number): readonly Offset[] {
  const at = words[start] === 'a' ? start + 1 : start;
  if (words[at] === 'quarter') return [{ end: at + 1, minutes: 15 }];
  if (words[at] === 'half') return [{ end: at + 1, minutes: 30 }];
  return readTwoDigits(words, start).flatMap(({ end, value }) => {
    const named = MINUTES.has(words[end] ?? '');
    const fits = named ? value >= 1 && value <= 59 : value >= 5 && value <= 25 && value % 5 === 0;
    return fits ? [{ end: named ? end + 1 : end, minutes: value }] : [];
  });
}

// "ten to three fifty" and "five to ten minutes" are ranges.
const goesOn = (words: readonly string[], at: number): boolean =>
  isMeasured(words, at) || readNumbers(words, at).length > 0;

/** The hour that is counted from, on the hour: 1 to 12, or noon or midnight. */
function hourAt(words: readonly string[], start: number): readonly ClockReading[] {
  const named = namedHour(words, start);
  if (named !== null) return [named];
  return readTwoDigits(words, start).flatMap(({ end, value }) => {
    const time = value >= 1 && value <= 12 ? clock(value, 0, false) : null;
    const past = pastOClock(words, end);
    return time === null || (past === end && goesOn(words, end)) ? [] : [{ end: past, time }];
  });
}

function moved(from: ClockReading, minutes: number): ClockReading {
  const { hour, twentyFour } = from.time;
  if (minutes >= 0) return { end: from.end, time: { ...from.time, minute: minutes } };
  const before = twentyFour ? (hour + 23) % 24 : hour === 1 ? 12 : hour - 1;
  return { end: from.end, time: { ...from.time, hour: before, minute: 60 + minutes } };
}

// "ten to twelve in the morning": the half of the day belongs to the time meant, which is the one before the hour.
const finished = (words: readonly string[], reading: ClockReading): ClockReading =>
  reading.time.twentyFour ? reading : withDayHalf(words, reading);

/** True for words that can be nothing but a time of day: "twenty past nine", "ten to five"; "five to ten" may be a range. */
export function isPlainClock(words: readonly string[]): boolean {
  if (words.some((word) => PAST.has(word) || word === 'quarter')) return true;
  const at = words.indexOf('to');
  const [before, after] = [readNumbers(words.slice(0, at), 0)[0], readNumbers(words, at + 1)[0]];
  return at > 0 && before !== undefined && after !== undefined && before.value > after.value;
}

/** "Half three" is half past three. */
const halfTimes = (words: readonly string[], start: number): readonly ClockReading[] =>
  words[start] !== 'half' || namedHour(words, start + 1) !== null
    ? []
    : hourAt(words, start + 1).map((from) => finished(words, moved(from, 30)));

/** Every time of day said from an hour that begins at `start`. */
export const pastToTimes = (words: readonly string[], start: number): readonly ClockReading[] => [
  ...halfTimes(words, start),
  ...offsetsAt(words, start).flatMap(({ end, minutes }) => {
    const link = words[end] ?? '';
    const back = TO.has(link) && words[end - 1] !== 'half';
    if (!back && !PAST.has(link)) return [];
    return hourAt(words, end + 1).map((from) => finished(words, moved(from, back ? -minutes : minutes)));
  }),
];

/** "at ten past", "since quarter to": the minutes alone, where no hour follows them; "ten to" only at the end of a breath. */
export const minuteTimes = (
  words: readonly string[],
  start: number,
): readonly { readonly end: number; readonly time: MinuteOfHour }[] =>
  offsetsAt(words, start).flatMap(({ end, minutes }) => {
    const link = words[end] ?? '';
    const hour = words[end + 1] === 'the' && words[end + 2] === 'hour' ? end + 3 : end + 1;
    const back =
      link === 'to' && words[end - 1] !== 'half' && (hour === words.length || goesOnElse(words, hour));
    if (!back && (link !== 'past' || (hour === end + 1 && opens(words, hour)))) return [];
    return [{ end: hour, time: { kind: 'minute', minute: back ? 60 - minutes : minutes } }];
  });

// "At quarter to and a blanket over her".
const goesOnElse = (words: readonly string[], at: number): boolean =>
  /^(and|then|so|but|with|when|he|she|we|i|it)$/.test(words[at] ?? '');

// "At half past the gate" and "ten past nine" go on.
const opens = (words: readonly string[], at: number): boolean =>
  /^(the|a|an|his|her|my|this|that|noon|midday|midnight)$/.test(words[at] ?? '') ||
  readNumbers(words, at).length > 0;
