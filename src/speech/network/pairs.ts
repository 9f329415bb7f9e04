// How often one word follows another in what a network lets be said.

import type { Network } from './network.ts';
import { byState } from './one-way.ts';
import { visitsOf, type Way } from './visits.ts';

/** By a word and the one after it, how often the two are said in one utterance; '' stands before the first and after the last. */
export type Pairs = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** Before the first word and after the last one. */
export const EDGE = '';

/** Steps after which an utterance is over: none is longer by much, and loops end. */
const LONGEST = 40;
/** What is rarer than this is never said. */
const LEAST = 1e-7;

/** The expected counts, by the network's own chances. */
export function pairsOf(network: Network): Pairs {
  const { states, end, arcs } = network;
  // Numbers in the place of words: there are some hundred thousand sums.
  const words = [EDGE, ...new Set(arcs.map(({ word }) => word))];
  const numbers = new Map(words.map((word, index) => [word, index]));
  const leaving = byState(
    arcs.map((arc) => ({ ...arc, word: numbers.get(arc.word) ?? 0 })),
    ({ from }) => from,
  );
  const places = placesOf(network, leaving);
  // By state: to where a word leads from it, through what is silent before the word.
  const ahead = places.map((before) =>
    before.flatMap(({ to: place, chance: share }) =>
      (leaving.get(place) ?? []).map(({ to, chance }) => ({ to, chance: share * chance })),
    ),
  );
  const visits = visitsOf(ahead, { steps: LONGEST, least: LEAST });
  // By state: the words that led there, each with how often.
  const entered = Array.from({ length: states }, () => new Map<number, number>());
  entered[0]?.set(0, 1);
  visits.forEach((mass, at) => {
    if (mass < LEAST) return;
    for (const { to: place, chance: share } of places[at] ?? [])
      for (const { to, word, chance } of leaving.get(place) ?? [])
        if (mass * share * chance > LEAST) grow(entered[to], word, mass * share * chance);
  });
  const counts = words.map(() => new Map<number, number>());
  entered.forEach((before, at) => {
    if (before.size === 0) return;
    const after = new Map<number, number>();
    for (const { to, chance: share } of places[at] ?? []) {
      if (to === end) grow(after, 0, share);
      for (const { word, chance } of leaving.get(to) ?? []) grow(after, word, share * chance);
    }
    for (const [word, mass] of before)
      for (const [next, chance] of after) if (mass * chance > LEAST) grow(counts[word], next, mass * chance);
  });
  return new Map(
    counts.flatMap((row, word) =>
      row.size === 0
        ? []
        : [[words[word] ?? EDGE, new Map([...row].map(([next, count]) => [words[next] ?? EDGE, count]))]],
    ),
  );
}

/** By state: where its next word is said from, with chances that add up to 1. */
function placesOf(
  { states, silent }: Network,
  leaving: ReadonlyMap<number, unknown>,
): readonly (readonly Way[])[] {
  const ahead = byState(silent, ({ from }) => from);
  return Array.from({ length: states }, (_, at) => {
    const ways = ahead.get(at) ?? [];
    const own = 1 - ways.reduce((sum, { chance }) => sum + chance, 0);
    return ways.length === 0 || (leaving.has(at) && own > 0) ? [...ways, { to: at, chance: own }] : ways;
  });
}

function grow<Key>(counts: Map<Key, number> | undefined, key: Key, value: number): void {
  counts?.set(key, (counts.get(key) ?? 0) + value);
}

/** How often in all; a sentence of each counts as much as its `worth`. */
export function sumOf(counted: readonly { readonly pairs: Pairs; readonly worth: number }[]): Pairs {
  const sum = new Map<string, Map<string, number>>();
  for (const { pairs, worth } of counted)
    for (const [word, row] of pairs) {
      const all = sum.get(word) ?? new Map<string, number>();
      sum.set(word, all);
      for (const [next, count] of row) grow(all, next, count * worth);
    }
  return sum;
}

/** The pairs of written sentences, each word by itself; words are parted by spaces. */
export function pairsIn(sentences: readonly string[]): Pairs {
  const pairs = new Map<string, Map<string, number>>();
  for (const sentence of sentences) {
    const words = [EDGE, ...sentence.split(' '), EDGE];
    for (const [at, word] of words.slice(0, -1).entries()) {
      const row = pairs.get(word) ?? new Map<string, number>();
      pairs.set(word, row);
      grow(row, words[at + 1] ?? EDGE, 1);
    }
  }
  return pairs;
}
