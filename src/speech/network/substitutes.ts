// Which words could stand in the place of another: of a way through a network, those with which it is a way through still.

import type { Network } from './network.ts';

/** Of the words of a way through, whether `word` could be said in the place of the one at `index`. */
export type CanStand = (index: number, word: string) => boolean;

/** Given a network, and then words; where these are no way through it, any word can stand. */
export function substitutesIn({ arcs, silent, end }: Network): (words: readonly string[]) => CanStand {
  const ahead = new Map<number, number[]>();
  for (const { from, to } of silent) ahead.set(from, [...(ahead.get(from) ?? []), to]);
  const leaving = new Map<number, Map<string, number[]>>();
  for (const { from, to, word } of arcs) {
    const ways = leaving.get(from) ?? new Map<string, number[]>();
    leaving.set(from, ways.set(word, [...(ways.get(word) ?? []), to]));
  }
  // One silent step leads all the way: the network is closed.
  const settled = (state: number): readonly number[] => [state, ...(ahead.get(state) ?? [])];
  const after = (states: ReadonlySet<number>, word: string): ReadonlySet<number> =>
    new Set([...states].flatMap((state) => leaving.get(state)?.get(word) ?? []).flatMap(settled));

  return (words) => {
    const before: ReadonlySet<number>[] = [new Set(settled(0))];
    for (const word of words) before.push(after(before.at(-1) ?? new Set(), word));
    if (before.at(-1)?.has(end) !== true) return () => true;
    // By index and state: whether the words from that index on lead to the end.
    const known = words.map(() => new Map<number, boolean>());
    const leads = (state: number, index: number): boolean => {
      const word = words[index];
      if (word === undefined) return settled(state).includes(end);
      const found =
        known[index]?.get(state) ??
        settled(state).some((from) =>
          leaving
            .get(from)
            ?.get(word)
            ?.some((to) => leads(to, index + 1)),
        );
      known[index]?.set(state, found);
      return found;
    };
    return (index, word) =>
      [...(before[index] ?? [])].some((from) =>
        leaving
          .get(from)
          ?.get(word)
          ?.some((to) => leads(to, index + 1)),
      );
  };
}
