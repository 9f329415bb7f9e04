// How likely each word is after the two before it, in talk of which the sentences are written: what a network of pairs cannot tell.

import {
  type Counted,
  type Counts,
  countsOf,
  MANY,
  numbersOf,
  UNKNOWN,
  type WordNumbers,
  withoutFirst,
  wordsIn,
} from './counts.ts';

/** Words as numbers, since a sound is searched in tens of thousands of steps. */
export interface Triples {
  /** the number of a word; words that were never said share one */
  numberOf(word: string): number;
  /** the natural logarithm of the chance of a word after two others, all by their numbers; `EDGES` stands for none and for the end */
  chanceOf(first: number, second: number, word: number): number;
}

/**
 * What is taken from each count for what was never said (absolute discounting), as in Kneser and Ney's smoothing: Chen and Goodman,
 * An empirical study of smoothing techniques for language modeling, 1998 (from memory).
 */
const DISCOUNT = 0.75;

/** `words` is how many different words can be heard at all. */
export function triplesOf(talk: readonly Counted[], words: number): Triples {
  const numbers = numbersOf(wordsIn(talk));
  return triplesIn(countsOf(talk, numbers), numbers, words);
}

/** The same of what was counted. */
export function triplesIn(thirds: Counts, numbers: WordNumbers, words: number): Triples {
  const seconds = withoutFirst(thirds, MANY * MANY);
  const [third, second, alone] = [tableOf(thirds), tableOf(seconds), tableOf(withoutFirst(seconds, MANY))];
  // One more for the end.
  const unseen = 1 / (words + 1);
  return {
    numberOf: (word) => numbers.get(word) ?? UNKNOWN,
    chanceOf: (first, before, word) => {
      const pair = before * MANY + word;
      const single = alone(0, word, unseen);
      return Math.log(third(first * MANY + before, first * MANY * MANY + pair, second(before, pair, single)));
    },
  };
}

/** The chance of a key's last word after its others, which are `history`; `lower` is its chance after fewer of them. */
type Chance = (history: number, key: number, lower: number) => number;

// Sorted numbers and no map: there are a hundred thousand of them, on a phone too.
function tableOf({ keys, values }: Counts): Chance {
  const histories: number[] = [];
  const [sums, taken]: [number[], number[]] = [[], []];
  for (const [at, key] of keys.entries()) {
    const history = Math.floor(key / MANY);
    if (histories.at(-1) !== history) {
      histories.push(history);
      sums.push(0);
      taken.push(0);
    }
    const count = values[at] ?? 0;
    sums[sums.length - 1] = (sums.at(-1) ?? 0) + count;
    taken[taken.length - 1] = (taken.at(-1) ?? 0) + Math.min(DISCOUNT, count);
  }
  const starts = Float64Array.from(histories);
  return (history, key, lower) => {
    const at = placeIn(starts, history);
    if (at < 0) return lower;
    const count = values[placeIn(keys, key)] ?? 0;
    return (Math.max(0, count - DISCOUNT) + (taken[at] ?? 0) * lower) / (sums[at] ?? 1);
  };
}

/** Where a number stands in sorted ones; -1 where it does not. */
function placeIn(sorted: Float64Array, number: number): number {
  let [from, to] = [0, sorted.length - 1];
  while (from <= to) {
    const middle = (from + to) >> 1;
    const here = sorted[middle] ?? 0;
    if (here === number) return middle;
    if (here < number) from = middle + 1;
    else to = middle - 1;
  }
  return -1;
}
