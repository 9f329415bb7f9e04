// How likely each word is after the two before it, in talk of which the sentences are written: what a network of pairs cannot tell.

/** Words as numbers, since a sound is searched in tens of thousands of steps. */
export interface Triples {
  /** the number of a word; words that were never said share one */
  numberOf(word: string): number;
  /** the natural logarithm of the chance of a word after two others, all by their numbers; `EDGES` stands for none and for the end */
  chanceOf(first: number, second: number, word: number): number;
}

/** Before the first word and after the last one. */
export const EDGES = 0;
/** A word that was never said. */
const UNKNOWN = 1;

/** Talk of one kind; a sentence of it counts as much as its `worth`. */
export interface Counted {
  readonly sentences: Iterable<string>;
  readonly worth: number;
}

/** The numbers of words are below this; more than there are, and three numbers are one whole number that is exact. */
export const MANY = 2 ** 16;

/**
 * What is taken from each count for what was never said (absolute discounting), as in Kneser and Ney's smoothing: Chen and Goodman,
 * An empirical study of smoothing techniques for language modeling, 1998 (from memory).
 */
const DISCOUNT = 0.75;

/** `words` is how many different words can be heard at all. */
export function triplesOf(talk: readonly Counted[], words: number): Triples {
  const numbers = new Map<string, number>([
    ['', EDGES],
    [' ', UNKNOWN],
  ]);
  const thirds = new Map<number, number>();
  for (const { sentences, worth } of talk)
    for (const sentence of sentences) {
      let [first, second] = [EDGES, EDGES];
      for (const word of [...sentence.split(' '), '']) {
        const number = numbers.get(word) ?? numbers.size;
        numbers.set(word, number);
        const key = (first * MANY + second) * MANY + number;
        thirds.set(key, (thirds.get(key) ?? 0) + worth);
        [first, second] = [second, number];
      }
    }
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

/** Of each key without its first word the number of different first words that it has: a word is as likely as it is in many places. */
function withoutFirst(counts: ReadonlyMap<number, number>, size: number): ReadonlyMap<number, number> {
  const out = new Map<number, number>();
  for (const [key, count] of counts) out.set(key % size, (out.get(key % size) ?? 0) + Math.min(1, count));
  return out;
}

/** The chance of a key's last word after its others, which are `history`; `lower` is its chance after fewer of them. */
type Chance = (history: number, key: number, lower: number) => number;

// Sorted numbers and no map: there are a hundred thousand of them, on a phone too.
function tableOf(counts: ReadonlyMap<number, number>): Chance {
  const keys = Float64Array.from(counts.keys()).sort();
  const values = Float32Array.from(keys, (key) => counts.get(key) ?? 0);
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
