// Whether a network lets a sentence be said, by walking it.

import type { Network } from '../../src/speech/network/network.ts';

export interface Walk {
  /** whether the words are a way through */
  readonly ends: boolean;
  /** words from the beginning that may be said one after another */
  readonly words: number;
}

/** Walks the network along the words of sentences. Silent steps are taken singly, as the recogniser does. */
export function walker({ arcs, silent, end }: Network): (sentence: string) => Walk {
  const ahead = new Map<number, number[]>();
  for (const { from, to } of silent) ahead.set(from, [...(ahead.get(from) ?? []), to]);
  const leaving = new Map<string, number[]>();
  for (const { from, to, word } of arcs) {
    const key = `${from} ${word}`;
    const ways = leaving.get(key);
    if (ways === undefined) leaving.set(key, [to]);
    else ways.push(to);
  }
  const step = (states: Iterable<number>): ReadonlySet<number> => {
    const all = [...states];
    return new Set([...all, ...all.flatMap((state) => ahead.get(state) ?? [])]);
  };
  return (sentence) => {
    let at = step([0]);
    let words = 0;
    for (const said of sentence.split(' ')) {
      at = step([...at].flatMap((state) => leaving.get(`${state} ${said}`) ?? []));
      if (at.size === 0) return { ends: false, words };
      words += 1;
    }
    return { ends: at.has(end), words };
  };
}

const walkers = new WeakMap<Network, (sentence: string) => Walk>();

/** True where some way through the network is these words. */
export function says(network: Network, sentence: string): boolean {
  const walk = walkers.get(network) ?? walker(network);
  walkers.set(network, walk);
  return walk(sentence).ends;
}
