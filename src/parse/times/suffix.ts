// What may follow a clock time and belongs to it: "pm", "in the morning", "at night", "hours", "o'clock".

import type { Clock, ClockReading } from './spoken-time.ts';

type DayHalf = 'am' | 'pm' | 'night';

const HALVES: readonly (readonly [said: readonly string[], half: DayHalf])[] = [
  [['am'], 'am'],
  [['a', 'm'], 'am'],
  [['pm'], 'pm'],
  [['p', 'm'], 'pm'],
  [['in', 'the', 'morning'], 'am'],
  [['this', 'morning'], 'am'],
  [['in', 'the', 'afternoon'], 'pm'],
  [['this', 'afternoon'], 'pm'],
  [['in', 'the', 'evening'], 'pm'],
  [['this', 'evening'], 'pm'],
  [['at', 'night'], 'night'],
  [['in', 'the', 'night'], 'night'],
  [['tonight'], 'night'],
];

const HALF_BEGINS: ReadonlySet<string> = new Set(HALVES.map(([[first = '']]) => first));
const O_CLOCK: readonly string[] = ["o'clock", 'oclock'];
const HOURS: readonly string[] = ['hours', 'hrs'];

/** The words that what belongs to a time may begin with. */
export const SUFFIX_BEGINS: readonly string[] = [...HALF_BEGINS, ...O_CLOCK, 'o', ...HOURS];

// "one twenty over eighty", "five to ten minutes", "twenty thirty minutes ago": measurements, not times of day.
const MEASURES = new Set(
  `over percent point per beats degrees ago
   second seconds sec secs minute minutes min mins hour hours hr hrs day days week weeks
   unit units gram grams milligram milligrams mg microgram micrograms mcg ml mls litre litres liter liters`.split(
    /\s+/,
  ),
);

/** True where the words `said` stand at `at`. */
export function saidAt(words: readonly string[], at: number, said: readonly string[]): boolean {
  for (let i = 0; i < said.length; i++) if (words[at + i] !== said[i]) return false;
  return true;
}

/** True where the word at `at` makes the numbers before it a measurement and no time of day. */
export const isMeasured = (words: readonly string[], at: number): boolean => MEASURES.has(words[at] ?? '');

/** Index past "o'clock" however it was written, or `at` where it is not said. */
export function pastOClock(words: readonly string[], at: number): number {
  if (O_CLOCK.includes(words[at] ?? '')) return at + 1;
  return saidAt(words, at, ['o', 'clock']) ? at + 2 : at;
}

/** Index past "hours" ("fourteen hundred hours"), or `at`; "hours ago" is another matter. */
export const pastHours = (words: readonly string[], at: number): number =>
  HOURS.includes(words[at] ?? '') && words[at + 1] !== 'ago' ? at + 1 : at;

// "two at night" is after midnight, "nine at night" before it.
const nightHalf = (hour: number): 'am' | 'pm' => (hour === 12 || hour < 5 ? 'am' : 'pm');

/** The clock time with its half of the day, where that is said and can be true; the reading as it was otherwise. */
export function withDayHalf(words: readonly string[], reading: ClockReading): ClockReading {
  if (!HALF_BEGINS.has(words[reading.end] ?? '')) return reading;
  const found = HALVES.find(([said]) => saidAt(words, reading.end, said));
  if (found === undefined) return reading;
  const [said, named] = found;
  const { hour } = reading.time;
  const half = named === 'night' ? nightHalf(hour % 12 === 0 ? 12 : hour) : named;
  const end = reading.end + said.length;
  if (hour >= 1 && hour <= 12) return { end, time: { ...reading.time, half } };
  const fits = hour >= 13 ? named !== 'am' : half === 'am';
  return fits ? { end, time: reading.time } : reading;
}

/** A clock time of an hour that may be 24 (a military midnight), or null where the clock has no such time. */
export function clock(hour: number, minute: number, twentyFour: boolean): Clock | null {
  if (hour === 24 && minute === 0) return { kind: 'clock', hour: 0, minute: 0, twentyFour: true };
  if (hour > 23 || minute > 59) return null;
  return { kind: 'clock', hour, minute, twentyFour: twentyFour || hour === 0 || hour > 12 };
}
