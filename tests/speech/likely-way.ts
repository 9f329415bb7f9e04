// How likely a network makes words that are a way through it: of each word, the logarithm of the chance that it came next.

import type { Network } from '../../src/speech/network/network.ts';

/** Of each word the natural logarithm of its chance, on the likeliest way; null where the words begin no way. */
export type LikelyWay = (words: readonly string[]) => readonly number[] | null;

/** A state reached, how likely, and by which way. */
interface Reached {
  readonly sum: number;
  readonly step: number;
  readonly before: Reached | null;
}

/** Given a network, and then words. The way out after the last word is not counted. */
export function likelyWayIn({ arcs, silent }: Network): LikelyWay {
  const ahead = new Map<number, { readonly to: number; readonly cost: number }[]>();
  for (const { from, to, chance } of silent) push(ahead, from, { to, cost: Math.log(chance) });
  const leaving = new Map<string, { readonly to: number; readonly cost: number }[]>();
  for (const { from, to, word, chance } of arcs)
    push(leaving, `${from} ${word}`, { to, cost: Math.log(chance) });

  return (words) => {
    let front = new Map<number, Reached>([[0, { sum: 0, step: 0, before: null }]]);
    for (const word of words) {
      const next = new Map<number, Reached>();
      const reach = (from: number, before: Reached, cost: number): void => {
        for (const way of leaving.get(`${from} ${word}`) ?? []) {
          const step = cost + way.cost;
          const sum = before.sum + step;
          if (sum > (next.get(way.to)?.sum ?? Number.NEGATIVE_INFINITY))
            next.set(way.to, { sum, step, before });
        }
      };
      // One silent step leads all the way: the network is closed.
      for (const [state, before] of front) {
        reach(state, before, 0);
        for (const { to, cost } of ahead.get(state) ?? []) reach(to, before, cost);
      }
      if (next.size === 0) return null;
      front = next;
    }
    let best: Reached | null = null;
    for (const reached of front.values()) if (best === null || reached.sum > best.sum) best = reached;
    const steps: number[] = [];
    for (let at = best; at !== null && at.before !== null; at = at.before) steps.push(at.step);
    return steps.toReversed();
  };
}

function push<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const known = map.get(key);
  if (known === undefined) map.set(key, [value]);
  else known.push(value);
}
