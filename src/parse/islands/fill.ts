// The numbers and times of an utterance, each read once however many phrases ask for it at the same word.

import { isFigure, mayBeLoose, readNumbers } from '../numbers/index.ts';
import { readTimes } from '../times/index.ts';
import type { Token } from '../token.ts';
import type { FilledSlot } from './island.ts';

export const NUMBER_SLOT = 'numbers.number';
export const TIME_SLOT = 'times.time';
export const SLOTS: ReadonlySet<string> = new Set([NUMBER_SLOT, TIME_SLOT]);

/** What was read so far in one utterance. */
export interface Fills {
  readonly tokens: readonly Token[];
  readonly words: readonly string[];
  /** by the place of the word, what each slot found there */
  readonly read: Map<string, readonly FilledSlot[]>[];
  /** the words up to each pause, by its place: no number and no time runs over one */
  readonly breaths: Map<number, readonly string[]>;
}

export const fillsOf = (tokens: readonly Token[], words: readonly string[]): Fills => ({
  tokens,
  words,
  read: [],
  breaths: new Map(),
});

// Reading a number or a time costs more than looking whether one can begin here.
const FIRST: ReadonlySet<string> = new Set(
  `zero o oh nought naught one two three four fower five fife six seven eight nine niner ten eleven twelve thirteen fourteen
   fifteen sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy eighty ninety ninty hundred half
   quarter third a an couple point dozen noon midday midnight just about now some nearly almost around approximately`.split(
    /\s+/,
  ),
);
const LOOSE: ReadonlySet<string> = new Set(['won', 'to', 'too', 'for', 'tree', 'ate', 'oh']);

/** False where no number and no time can begin with this word; `expected` where a phrase leads to one. */
export const mayBeFilled = (word: string, expected: boolean): boolean =>
  FIRST.has(word) || isFigure(word) || (expected && LOOSE.has(word));

/** What fills the slot from the word at `at` on, likely first; a phrase that leads to it takes homophones too. */
export function fillAt(fills: Fills, slot: string, at: number, expected: boolean): readonly FilledSlot[] {
  let here = fills.read[at];
  if (here === undefined) {
    here = new Map();
    fills.read[at] = here;
  }
  const key = expected && slot === NUMBER_SLOT ? EXPECTED : slot;
  const known = here.get(key);
  if (known !== undefined) return known;
  const words = breathOf(fills, at);
  const filled = slot === TIME_SLOT ? timesAt(words, at) : numbersAt(words, at, expected);
  here.set(key, filled);
  return filled;
}

const EXPECTED = `${NUMBER_SLOT} expected`;

/** The words of the utterance up to the first pause after `at`: "at sixteen twenty, one unit of blood" is twenty past four. */
function breathOf({ tokens, words, breaths }: Fills, at: number): readonly string[] {
  let end = at;
  while (end < tokens.length && tokens[end]?.pause === '') end++;
  const known = breaths.get(end);
  if (known !== undefined) return known;
  const breath = end >= tokens.length ? words : words.slice(0, end + 1);
  breaths.set(end, breath);
  return breath;
}

const timesAt = (words: readonly string[], at: number): readonly FilledSlot[] =>
  readTimes(words, at).map(({ end, time }) => ({
    rule: TIME_SLOT,
    from: at,
    to: end,
    value: 0,
    time,
    loose: false,
  }));

function numbersAt(words: readonly string[], at: number, expected: boolean): readonly FilledSlot[] {
  const strict = readNumbers(words, at);
  const loose =
    expected && mayBeLoose(words, at)
      ? readNumbers(words, at, { loose: true }).filter((reading) => reading.loose)
      : [];
  // A homophone counts only where it makes the number longer ("ninety ate") or there is no other number.
  const longest = strict[0]?.end ?? at;
  const readings = [...loose.filter((reading) => reading.end > longest), ...strict];
  return readings.map(({ end, value, loose }) => ({
    rule: NUMBER_SLOT,
    from: at,
    to: end,
    value,
    time: null,
    loose,
  }));
}
