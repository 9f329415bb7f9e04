// Makes a graph in which one word leads from a state to one state only, as small as it can be.

import type { Arc, OpenGraph, WordGraph } from './word-graph.ts';

/** The smallest one-way graph in which the same can be said. It may be far larger than the open one where much loops. */
export const oneWay = (open: OpenGraph): WordGraph => smallest(determined(open));

/** States of the open graph that may be held at once become one state (the subset construction). */
function determined(open: OpenGraph): WordGraph {
  const leaving = byState(open.arcs, ({ from }) => from);
  const numbers = new Map<string, number>();
  const sets: (readonly number[])[] = [];
  const arcs: Arc[] = [];
  const numberOf = (states: Iterable<number>): number => {
    const closed = [...withSilent(open, states)]
      .filter((state) => state === open.end || leaving.has(state))
      .toSorted((a, b) => a - b);
    const key = closed.join(' ');
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, sets.length);
    return sets.push(closed) - 1;
  };
  numberOf([open.start]);
  for (let from = 0; from < sets.length; from++) {
    const next = new Map<string, Set<number>>();
    for (const arc of (sets[from] ?? []).flatMap((state) => leaving.get(state) ?? [])) {
      const targets = next.get(arc.word) ?? new Set<number>();
      next.set(arc.word, targets.add(arc.to));
    }
    for (const [word, targets] of next) arcs.push({ from, to: numberOf(targets), word });
  }
  const ends = sets.flatMap((states, number) => (states.includes(open.end) ? [number] : []));
  return { states: sets.length, arcs, ends };
}

/** The states and all that are entered with them. */
function withSilent({ silent }: OpenGraph, states: Iterable<number>): ReadonlySet<number> {
  const all = new Set(states);
  for (const state of all) for (const { to } of silent[state] ?? []) all.add(to);
  return all;
}

/** Parts the states by what can be said from them, more finely until nothing changes (E. F. Moore, 1956). */
function smallest(graph: WordGraph): WordGraph {
  const live = alive(graph);
  const arcs = graph.arcs.filter(({ from, to }) => live.has(from) && live.has(to));
  const leaving = byState(arcs, ({ from }) => from);
  const ends = new Set(graph.ends);
  const states = [...live].toSorted((a, b) => a - b);
  let parts = new Map(states.map((state) => [state, ends.has(state) ? 1 : 0]));
  for (let count = 0; ; ) {
    const numbers = new Map<string, number>();
    const finer = new Map<number, number>();
    for (const state of states) {
      const ways = (leaving.get(state) ?? []).map(({ word, to }) => `${word} ${parts.get(to)}`).toSorted();
      const key = `${parts.get(state)}|${ways.join('|')}`;
      const number = numbers.get(key) ?? numbers.size;
      numbers.set(key, number);
      finer.set(state, number);
    }
    parts = finer;
    if (numbers.size === count) break;
    count = numbers.size;
  }
  const part = (state: number): number => parts.get(state) ?? 0;
  const joined = new Map<string, Arc>();
  for (const { from, to, word } of arcs)
    joined.set(`${part(from)} ${word}`, { from: part(from), to: part(to), word });
  // The first state is the first that is numbered, so it stays 0.
  return {
    states: new Set(parts.values()).size,
    arcs: [...joined.values()],
    ends: [...new Set(graph.ends.filter((end) => live.has(end)).map(part))].toSorted((a, b) => a - b),
  };
}

/** The first state, and every state from which an end can be reached. */
function alive({ arcs, ends }: WordGraph): ReadonlySet<number> {
  const entering = byState(arcs, ({ to }) => to);
  const live = new Set(ends);
  for (const state of live) for (const { from } of entering.get(state) ?? []) live.add(from);
  return live.add(0);
}

/** By state, those whose state it is. */
export function byState<Kind>(
  arcs: readonly Kind[],
  stateOf: (arc: Kind) => number,
): ReadonlyMap<number, readonly Kind[]> {
  const groups = new Map<number, Kind[]>();
  for (const arc of arcs) {
    const group = groups.get(stateOf(arc));
    if (group === undefined) groups.set(stateOf(arc), [arc]);
    else group.push(arc);
  }
  return groups;
}
