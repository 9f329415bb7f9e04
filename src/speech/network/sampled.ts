// Sentences that a network lets be said, at random and each time the same, as often as they are likely.

import type { Network } from './network.ts';
import { byState } from './one-way.ts';
import { randomFrom } from './random.ts';

/** Words after which a sentence that does not end is left out. */
const LONGEST = 60;
/** Any number: the same sentences come each time. */
const SEED = 20_261_130;

/** So many sentences, or less where some do not end; words are parted by spaces. */
export function sampled({ end, arcs, silent }: Network, count: number): readonly string[] {
  const leaving = byState([...arcs, ...silent.map((step) => ({ ...step, word: null }))], ({ from }) => from);
  const random = randomFrom(SEED);
  return Array.from({ length: count }, () => {
    const words: string[] = [];
    let at = 0;
    for (let step = 0; at !== end && step < 2 * LONGEST; step++) {
      const ways = leaving.get(at) ?? [];
      const way = pick(ways, random());
      if (way === undefined) break;
      if (way.word !== null) words.push(way.word);
      at = way.to;
    }
    return at === end && words.length <= LONGEST ? words.join(' ') : '';
  }).filter((sentence) => sentence !== '');
}

/** One of these, as often as it is likely; `at` is 0 to 1. */
function pick<Way extends { readonly chance: number }>(ways: readonly Way[], at: number): Way | undefined {
  let left = at * ways.reduce((sum, { chance }) => sum + chance, 0);
  for (const way of ways) {
    left -= way.chance;
    if (left <= 0) return way;
  }
  return ways.at(-1);
}
