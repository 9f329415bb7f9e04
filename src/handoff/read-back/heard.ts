// What the other end said, cut at the names of values, so that each number is held against the value it was said of.

import { readNumbers } from '../../parse/numbers/index.ts';
import type { Side } from '../../terms/index.ts';
import type { CriticalName } from '../radio/critical.ts';

/** A stretch of what was heard, from the name of a value to the next name. */
export interface Stretch {
  readonly name: CriticalName;
  readonly words: readonly string[];
}

/** How each value is named on the air, longer names first. */
const NAMES: readonly (readonly [name: CriticalName, words: readonly string[]])[] = [
  ['lowest-pressure', ['lowest', 'blood', 'pressure']],
  ['lowest-pressure', ['lowest', 'pressure']],
  ['lowest-pressure', ['lowest', 'systolic']],
  ['lowest-gcs', ['lowest', 'gcs']],
  ['lowest-gcs', ['lowest', 'g', 'c', 's']],
  ['blood-pressure', ['blood', 'pressure']],
  ['blood-pressure', ['b', 'p']],
  ['blood-pressure', ['bp']],
  ['blood-pressure', ['pressure']],
  ['gcs', ['g', 'c', 's']],
  ['gcs', ['gcs']],
  ['gcs', ['glasgow']],
  ['gcs', ['coma']],
  ['pulse', ['heart', 'rate']],
  ['pulse', ['pulse']],
  ['tourniquet', ['tourniquet']],
  ['red-criterion', ['red', 'criterion']],
  ['red-criterion', ['red', 'criteria']],
];

/** Lower-case words without signs; a figure with a stroke or a colon is two: `122/74` is "122 over 74". */
export const wordsHeard = (heard: string): readonly string[] =>
  heard
    .toLowerCase()
    .replace(/(\d)\s*\/\s*(\d)/g, '$1 over $2')
    .replace(/(\d{1,2}):(\d{2})/g, '$1$2')
    .replace(/[^\p{L}\p{N}.\s]/gu, ' ')
    .replace(/\.(?!\d)/g, ' ')
    .split(/\s+/)
    .filter((word) => word !== '');

const nameAt = (words: readonly string[], at: number) =>
  NAMES.find(([, name]) => name.every((word, index) => words[at + index] === word));

/** The stretches of what was heard; words before the first name belong to none. */
export function stretches(words: readonly string[]): readonly Stretch[] {
  const found: { name: CriticalName; words: string[] }[] = [];
  for (let at = 0; at < words.length; ) {
    const named = nameAt(words, at);
    // Criteria name vitals themselves; what follows them is theirs until a number comes.
    const inCriteria = found.at(-1)?.name === 'red-criterion';
    const next = named === undefined ? at : at + named[1].length;
    const isValue = named !== undefined && (!inCriteria || readNumbers(words, next).length > 0);
    if (named !== undefined && isValue) {
      // "No pulse": the no is said of what follows it.
      const no = at > 0 && isNegated(words.slice(at - 1, at)) ? words.slice(at - 1, at) : [];
      if (no.length > 0) found.at(-1)?.words.pop();
      found.push({ name: named[0], words: [...no] });
    }
    const past = named === undefined ? at + 1 : next;
    found.at(-1)?.words.push(...words.slice(at, past));
    at = past;
  }
  return found;
}

interface SaidNumber {
  readonly value: number;
  /** its digits, zeros in front kept where they were said */
  readonly digits: string;
}

function readAll(words: readonly string[]): readonly SaidNumber[] {
  const numbers: SaidNumber[] = [];
  for (let at = 0; at < words.length; ) {
    const [reading] = readNumbers(words, at);
    if (reading === undefined) at += 1;
    else {
      numbers.push({ value: reading.value, digits: reading.digits ?? `${reading.value}` });
      at = reading.end;
    }
  }
  return numbers;
}

/** The numbers said, in order; the longest reading of each: "one one two" is 112. */
export const numbersIn = (words: readonly string[]): readonly number[] =>
  readAll(words).map(({ value }) => value);

/** The number that all the digits make, in whatever groups they were said: "thirteen fifty one" is 1351. */
export const allDigits = (words: readonly string[]): number =>
  Number(
    readAll(words)
      .map(({ digits }) => digits)
      .join(''),
  );

/** The side said, `both` where left and right were; null where none was. */
export function sideIn(words: readonly string[]): Side | null {
  const left = words.includes('left');
  const right = words.includes('right');
  if (words.includes('both') || (left && right)) return 'both';
  return left ? 'left' : right ? 'right' : null;
}

const NEGATIONS: readonly string[] = ['no', 'not', 'without', 'none', 'nil', 'negative', 'absent', 'denied'];

export const isNegated = (words: readonly string[]): boolean =>
  words.some((word) => NEGATIONS.includes(word));
