// Times said by how long ago they were: "ten minutes ago", "about an hour and a half ago", "just now".

import { pastNumberWords, readNumbers } from '../numbers/index.ts';
import { UNIT_TABLE } from '../units.ts';
import type { TimeReading } from './spoken-time.ts';
import { saidAt } from './suffix.ts';

const DAY = 24 * UNIT_TABLE.hour.times;

const SECONDS: Readonly<Record<string, number>> = Object.fromEntries(
  (
    [
      ['second seconds sec secs', UNIT_TABLE.second.times],
      ['minute minutes min mins', UNIT_TABLE.minute.times],
      ['hour hours hr hrs', UNIT_TABLE.hour.times],
      ['day days', DAY],
      ['week weeks', 7 * DAY],
    ] as const
  ).flatMap(([said, seconds]) => said.split(' ').map((word) => [word, seconds])),
);

/** The words for a stretch of time, of which some may be "ago". */
export const SPANS: readonly string[] = Object.keys(SECONDS);

const NOW: readonly (readonly string[])[] = [
  ['just', 'now'],
  ['right', 'now'],
  ['a', 'moment', 'ago'],
  ['moments', 'ago'],
];

interface Span {
  readonly end: number;
  readonly seconds: number;
  /** the seconds of the unit it was said in */
  readonly unit: number;
  readonly about: boolean;
}

const unitAt = (words: readonly string[], at: number): number | null => {
  const word = words[at] ?? '';
  return Object.hasOwn(SECONDS, word) ? (SECONDS[word] ?? null) : null;
};

// A unit and "ago" around it leave no doubt that a number is meant, so homophones and "a" count here.
function spanAt(words: readonly string[], start: number): Span | null {
  // No unit is a word of a number, so it can only stand where those end; the reading itself costs more.
  if (unitAt(words, pastNumberWords(words, start)) === null) return null;
  for (const { end, value } of readNumbers(words, start, { loose: true })) {
    const unit = unitAt(words, end);
    if (unit === null) continue;
    const about = words.slice(start, end).includes('couple');
    return { end: end + 1, seconds: value * unit, unit, about };
  }
  return null;
}

/** "and a half", "and ten minutes", "ten minutes" after a first span of time; null where none of them follows. */
function restAt(words: readonly string[], first: Span): Span | null {
  const joined = words[first.end] === 'and';
  const at = joined ? first.end + 1 : first.end;
  const smaller = spanAt(words, at);
  if (smaller !== null) return smaller.unit < first.unit ? smaller : null;
  const part = joined
    ? readNumbers(words, at).find(({ value, kind }) => kind === 'fraction' && value < 1)
    : undefined;
  return part === undefined ? null : { ...first, end: part.end, seconds: part.value * first.unit };
}

function agoAt(words: readonly string[], start: number): TimeReading | null {
  const first = spanAt(words, start);
  if (first === null) return null;
  const rest = restAt(words, first);
  const end = (rest ?? first).end;
  const vague = saidAt(words, end, ['or', 'so']);
  const at = vague ? end + 2 : end;
  if (words[at] !== 'ago') return null;
  const seconds = Math.round(first.seconds + (rest?.seconds ?? 0));
  return {
    end: at + 1,
    time: { kind: 'ago', seconds, about: vague || first.about || (rest?.about ?? false) },
  };
}

/** Every time before now that begins at `start`. */
export function agoTimes(words: readonly string[], start: number): readonly TimeReading[] {
  const now = NOW.find((said) => saidAt(words, start, said));
  if (now !== undefined) return [{ end: start + now.length, time: { kind: 'now' } }];
  const ago = agoAt(words, start);
  return ago === null ? [] : [ago];
}
