// How likely each word is in a one-way graph, so that it is as near as can be to the open graph's weights.

import { byState } from './one-way.ts';
import type { OpenGraph, WordGraph } from './word-graph.ts';

export interface LikelyWord {
  readonly from: number;
  readonly to: number;
  readonly word: string;
  /** how likely it is in its state; with the chance to end there, all add up to 1 */
  readonly chance: number;
}

export interface LikelyGraph {
  readonly states: number;
  readonly words: readonly LikelyWord[];
  /** by state: how likely it is that all ends in it, above 0 to 1 */
  readonly ends: ReadonlyMap<number, number>;
}

/** What is less likely than this on the whole is as good as never said; the bound also ends loops. */
const LEAST = 1e-9;
/** Nothing that can be said is quite impossible. */
const FLOOR = 1e-4;

/**
 * The graph with chances: what is said by the open graph's weights is led through it word for word, and what passes is
 * counted. Of all chances that such a graph can have these fit best (least Kullback-Leibler divergence).
 */
export function withChances(open: OpenGraph, graph: WordGraph): LikelyGraph {
  const ways = byState(open.arcs, ({ from }) => from);
  const next = new Map(graph.arcs.map(({ from, word, to }) => [`${from} ${word}`, to]));
  const passed = new Map<string, number>();
  const ended = new Map<number, number>();
  const through = new Map<number, number>();
  const add = <Key>(counts: Map<Key, number>, key: Key, value: number): void => {
    counts.set(key, (counts.get(key) ?? 0) + value);
  };
  let front = new Map<string, Place>([['', { open: open.start, at: 0, mass: 1 }]]);
  while (front.size > 0) {
    const after = new Map<string, Place>();
    for (const place of front.values())
      for (const { open: state, mass } of silently(open, place)) {
        if (mass < LEAST) continue;
        if (state === open.end) {
          add(ended, place.at, mass);
          add(through, place.at, mass);
          continue;
        }
        const arcs = ways.get(state) ?? [];
        for (const { word, to } of arcs) {
          const [key, target] = [`${place.at} ${word}`, next.get(`${place.at} ${word}`)];
          // What leads nowhere is not in the smallest graph.
          if (target === undefined) continue;
          const share = mass / arcs.length;
          add(passed, key, share);
          add(through, place.at, share);
          const name = `${to} ${target}`;
          const known = after.get(name);
          after.set(name, { open: to, at: target, mass: (known?.mass ?? 0) + share });
        }
      }
    front = after;
  }
  const chance = (count: number | undefined, at: number): number =>
    Math.max(FLOOR, (count ?? 0) / (through.get(at) || 1));
  const words = graph.arcs.map((arc) => ({
    ...arc,
    chance: chance(passed.get(`${arc.from} ${arc.word}`), arc.from),
  }));
  return {
    states: graph.states,
    words,
    ends: new Map(graph.ends.map((at) => [at, chance(ended.get(at), at)])),
  };
}

interface Place {
  /** a state of the open graph, and the one of the other in which the same was said */
  readonly open: number;
  readonly at: number;
  readonly mass: number;
}

/** The states entered without a word, each with its share; a loop in which nothing is said runs out. */
function silently({ silent }: OpenGraph, from: Place): readonly Place[] {
  const reached: Place[] = [];
  const left = [from];
  for (let place = left.pop(); place !== undefined; place = left.pop()) {
    const { open, at, mass } = place;
    const ways = silent[open] ?? [];
    if (ways.length === 0) reached.push(place);
    else
      for (const way of ways)
        if (mass * way.chance >= LEAST) left.push({ open: way.to, at, mass: mass * way.chance });
  }
  return reached;
}
