// What the other end read back, held against the critical values one by one: every number, side and negation.

import type { CriticalValue } from '../radio/critical.ts';
import { speak } from '../radio/speak.ts';
import { capital } from '../sentences/list.ts';
import { allDigits, isNegated, numbersIn, type Stretch, sideIn, stretches, wordsHeard } from './heard.ts';

export interface ReadBackRow {
  readonly kind: 'matched' | 'differs' | 'missing';
  readonly value: CriticalValue;
  /** what it is, to be read aloud as it stands */
  readonly sentence: string;
}

/** Words that make no difference to a criterion. */
const SMALL: readonly string[] = [
  'a',
  'an',
  'the',
  'of',
  'or',
  'and',
  'is',
  'was',
  'to',
  'for',
  'on',
  'in',
  'with',
];

/** Names of what was said, in the record's own words. */
const SAME: Readonly<Record<string, string>> = {
  pulse: 'rate',
  heart: 'rate',
  over: 'above',
  more: 'above',
  higher: 'above',
  exceeds: 'above',
  pressure: 'systolic',
  packed: 'packing',
};

const keysOf = (words: readonly string[]): ReadonlySet<string> =>
  new Set(words.filter((word) => !SMALL.includes(word)).map((word) => SAME[word] ?? word));

const row = (kind: ReadBackRow['kind'], value: CriticalValue, sentence: string): ReadBackRow => ({
  kind,
  value,
  sentence: `${capital(sentence)}.`,
});

const matched = (value: CriticalValue): ReadBackRow =>
  row('matched', value, `${value.spoken} was read back right`);

const missing = (value: CriticalValue, part?: string): ReadBackRow =>
  row(
    'missing',
    value,
    part === undefined
      ? `they did not read back ${value.spoken}`
      : `they did not read back ${part}, the record says ${value.spoken}`,
  );

/** `they said pulse one one zero, the record says one one two`: the name of the value is said once. */
function differs(value: CriticalValue, said: Stretch): ReadBackRow {
  const theirs = speak(said.words.join(' '));
  const name = /^(?:lowest )?\S+ /.exec(value.spoken)?.[0] ?? '';
  const ours =
    value.name !== 'red-criterion' && theirs.startsWith(name.toLowerCase())
      ? value.spoken.slice(name.length)
      : value.spoken;
  return row('differs', value, `they said ${theirs}, the record says ${ours}`);
}

/** The numbers as one would write them. */
const written = (numbers: readonly number[]): string => numbers.join(' ');

/** The words without "not testable" and "no total", which are of the GCS's parts and turn nothing. */
const withoutUntested = (words: readonly string[]): readonly string[] =>
  words
    .join(' ')
    .replace(/\bnot testable\b|\bno total\b/g, '')
    .split(' ');

/** Clock times in a row, as their digits make one number: `911` and `915` are `09110915`. */
const clockDigits = (times: readonly number[]): string =>
  times.map((time) => `${time}`.padStart(4, '0')).join('');

/** The time it was on alone, where it was also said when it came off. */
const lacksOff = (value: CriticalValue, { words }: Stretch): boolean =>
  value.name === 'tourniquet' && value.numbers.length > 1 && allDigits(words) === value.numbers[0];

function sameNumbers(value: CriticalValue, { words }: Stretch): boolean {
  const numbers = numbersIn(words);
  if (value.name === 'tourniquet') return allDigits(words) === Number(clockDigits(value.numbers));
  if (!value.name.endsWith('gcs') || value.numbers.length > 1)
    return written(numbers) === written(value.numbers);
  // Of the GCS the parts may be said besides the sum: after it, or before the word "total".
  const total = words.indexOf('total');
  const [sum] = total < 0 ? numbers : numbersIn(words.slice(total));
  return sum === value.numbers[0];
}

function compareStretch(value: CriticalValue, said: Stretch): ReadBackRow {
  if (isNegated(withoutUntested(said.words))) return differs(value, said);
  const side = sideIn(said.words);
  if (side !== null && side !== value.side) return differs(value, said);
  if (lacksOff(value, said)) return missing(value, 'when the tourniquet was said off');
  if (numbersIn(said.words).length > 0 && !sameNumbers(value, said)) return differs(value, said);
  if (value.numbers.length > 0 && numbersIn(said.words).length === 0)
    return missing(value, value.name === 'tourniquet' ? 'the time of the tourniquet' : 'the number');
  if (value.side !== null && side === null)
    return missing(value, `the side of the ${value.name.replace('-', ' ')}`);
  return matched(value);
}

/** A criterion is read back where each of its words was, after the word "red criteria"; a "no" among them turns it. */
function compareCriterion(value: CriticalValue, all: readonly Stretch[]): ReadBackRow {
  const wanted = [...keysOf(wordsHeard(value.spoken))];
  const own = new Set(wordsHeard(value.spoken));
  const said = all.find(({ words }) => {
    const keys = keysOf(words);
    return wanted.every((key) => keys.has(key));
  });
  if (said === undefined) return missing(value);
  const negated = isNegated(said.words.filter((word) => !own.has(word)));
  return negated ? differs(value, said) : matched(value);
}

/**
 * Each critical value with what became of it in `heard`, the words of the other end as said or as recognised. A value
 * whose name was said twice is held against the last of them. Never throws; what cannot be told is `missing`.
 */
export function compareReadBack(critical: readonly CriticalValue[], heard: string): readonly ReadBackRow[] {
  const all = stretches(wordsHeard(heard));
  const sided = critical.filter(({ name }) => name === 'tourniquet');
  return critical.map((value) => {
    if (value.name === 'red-criterion')
      return compareCriterion(
        value,
        all.filter(({ name }) => name === 'red-criterion'),
      );
    const named = all.filter(({ name }) => name === value.name);
    if (value.name === 'tourniquet' && sided.length > 1) {
      const fits = named.find((said) => compareStretch(value, said).kind === 'matched');
      const own = fits ?? named.find((said) => sideIn(said.words) === value.side);
      return own === undefined ? missing(value) : compareStretch(value, own);
    }
    // A lowest value may be read back by its bare name after the last one.
    const said = named.at(-1);
    return said === undefined ? missing(value) : compareStretch(value, said);
  });
}
