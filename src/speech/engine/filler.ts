// The network of anything that can be said: any string of phones, against which the grammar's own fit is measured.

import type { Network } from '../network/network.ts';

/** The words that can be heard, each as likely as the others, over and over. */
export function fillerNetwork(words: readonly string[]): Network {
  const chance = 1 / words.length;
  return {
    states: 2,
    end: 1,
    arcs: words.map((word) => ({ from: 0, to: 1, word, chance })),
    silent: [{ from: 1, to: 0, chance: 1 }],
  };
}
