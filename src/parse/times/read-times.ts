// Every spoken time that begins at a given word, longest first, whatever form it takes.

import { standsAlone } from '../numbers/index.ts';
import { agoTimes, SPANS } from './ago.ts';
import { clockTimes, NAME_BEGINS } from './clock.ts';
import { minuteTimes, OFFSET_LINKS, pastToTimes } from './past-to.ts';
import type { SpokenTime, TimeReading } from './spoken-time.ts';
import { SUFFIX_BEGINS, saidAt } from './suffix.ts';

const ABOUT: readonly (readonly string[])[] = [
  ['just', 'over'],
  ['just', 'under'],
  ['more', 'than'],
  ['less', 'than'],
  ['about'],
  ['around'],
  ['roughly'],
  ['approximately'],
  ['maybe'],
  ['perhaps'],
  ['nearly'],
  ['almost'],
  ['over'],
  ['under'],
  ['some'],
];

const ABOUT_BEGINS: ReadonlySet<string> = new Set(ABOUT.map(([first = '']) => first));

// What may come after a number of one word that is a time, or part of one.
const FOLLOWING: ReadonlySet<string> = new Set([...NAME_BEGINS, ...SUFFIX_BEGINS, ...OFFSET_LINKS, ...SPANS]);

/** True for a number of one word after which nothing makes it a time: most numbers are. */
const isNumberOnly = (words: readonly string[], at: number): boolean =>
  standsAlone(words, at) && !FOLLOWING.has(words[at + 1] ?? '');

const roughly = (time: SpokenTime): SpokenTime => (time.kind === 'now' ? time : { ...time, about: true });

/**
 * Every time that begins at `start`, longest first; empty where none does. The caller has read "at" or "since" before it:
 * "one twenty" is a time here and a number in `readNumbers`, and only that word tells which.
 */
export function readTimes(words: readonly string[], start: number): readonly TimeReading[] {
  const about = ABOUT_BEGINS.has(words[start] ?? '')
    ? ABOUT.find((said) => saidAt(words, start, said))
    : undefined;
  const at = start + (about?.length ?? 0);
  if (isNumberOnly(words, at)) return [];
  const found: TimeReading[] = [
    ...clockTimes(words, at),
    ...pastToTimes(words, at),
    ...minuteTimes(words, at),
    ...agoTimes(words, at),
  ];
  const times = about === undefined ? found : found.map(({ end, time }) => ({ end, time: roughly(time) }));
  if (times.length < 2) return times;
  const ends = new Set<number>();
  return times
    .toSorted((a, b) => b.end - a.end)
    .filter(({ end }) => !ends.has(end) && ends.add(end) !== undefined);
}
