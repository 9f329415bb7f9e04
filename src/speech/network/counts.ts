// How often three words follow each other in talk of which the sentences are written.

/** Sorted keys, each once, and how often. */
export interface Counts {
  /** the three words' numbers, the first of the highest worth: see `MANY` */
  readonly keys: Float64Array;
  readonly values: Float32Array;
}

/** The number of each word; words of one numbering can be counted together. */
export type WordNumbers = ReadonlyMap<string, number>;

/** Before the first word and after the last one. */
export const EDGES = 0;
/** A word that was never said. */
export const UNKNOWN = 1;

/** The numbers of words are below this; more than there are, and three numbers are one whole number that is exact. */
export const MANY = 2 ** 16;

/** Talk of one kind; a sentence of it counts as much as its `worth`. Words are parted by spaces. */
export interface Counted {
  readonly sentences: Iterable<string>;
  readonly worth: number;
}

/** In their order, each given once; '' stands for no word. */
export const numbersOf = (words: readonly string[]): WordNumbers =>
  new Map([['', EDGES], ...words.map((word, at) => [word, UNKNOWN + 1 + at] as const)]);

/** Every word of these sentences, those that are said most often first: their numbers are written shortest. */
export function wordsIn(talk: readonly Counted[]): readonly string[] {
  const often = new Map<string, number>();
  for (const { sentences } of talk)
    for (const sentence of sentences)
      for (const word of sentence.split(' ')) often.set(word, (often.get(word) ?? 0) + 1);
  return [...often].toSorted(([, one], [, other]) => other - one).map(([word]) => word);
}

/** Words without a number are unknown ones. */
export function countsOf(talk: readonly Counted[], numbers: WordNumbers): Counts {
  const thirds = new Map<number, number>();
  for (const { sentences, worth } of talk)
    for (const sentence of sentences) {
      let [first, second] = [EDGES, EDGES];
      for (const number of [...sentence.split(' ').map((word) => numbers.get(word) ?? UNKNOWN), EDGES]) {
        const key = (first * MANY + second) * MANY + number;
        thirds.set(key, (thirds.get(key) ?? 0) + worth);
        [first, second] = [second, number];
      }
    }
  const keys = Float64Array.from(thirds.keys()).sort();
  return { keys, values: Float32Array.from(keys, (key) => thirds.get(key) ?? 0) };
}

/** Both together, of one numbering. */
export function bothCounts(one: Counts, other: Counts): Counts {
  const keys: number[] = [];
  const values: number[] = [];
  for (let [at, there] = [0, 0]; at < one.keys.length || there < other.keys.length; ) {
    const [own, theirs] = [one.keys[at] ?? Infinity, other.keys[there] ?? Infinity];
    keys.push(Math.min(own, theirs));
    values.push(
      (own <= theirs ? (one.values[at] ?? 0) : 0) + (theirs <= own ? (other.values[there] ?? 0) : 0),
    );
    if (own <= theirs) at += 1;
    if (theirs <= own) there += 1;
  }
  return { keys: Float64Array.from(keys), values: Float32Array.from(values) };
}

/** Indexes have room below a key of two words, in a whole number that is exact. */
const MOST_KEYS = 2 ** 20;

/**
 * Of each key without its first word the number of different first words that it has: a word is as likely as it is in many places.
 * `size` is what the rest of the key is below: `MANY` squared, or `MANY`.
 */
export function withoutFirst({ keys, values }: Counts, size: number): Counts {
  // Sorted as bare numbers with their places in the lowest digits: a map of so many takes ten times as long.
  const sorted = keys.map((key, at) => (key % size) * MOST_KEYS + at).sort();
  const out: number[] = [];
  const counts: number[] = [];
  for (const one of sorted) {
    const key = Math.floor(one / MOST_KEYS);
    const count = Math.min(1, values[one % MOST_KEYS] ?? 0);
    if (out.at(-1) === key) counts[counts.length - 1] = (counts.at(-1) ?? 0) + count;
    else {
      out.push(key);
      counts.push(count);
    }
  }
  return { keys: Float64Array.from(out), values: Float32Array.from(counts) };
}
