// The network that the recogniser searches: words between states, and silent steps that need no second one after them.

import { buildGraph } from './build-graph.ts';
import { byState } from './one-way.ts';
import type { LikelyArc, Listening, OpenGraph } from './word-graph.ts';

/** States are the numbers below `states`; what is said begins in state 0 and ends in state `end`. */
export interface Network {
  readonly states: number;
  readonly end: number;
  readonly arcs: readonly LikelyArc[];
  readonly silent: readonly LikelyStep[];
}

export interface LikelyStep {
  readonly from: number;
  readonly to: number;
  /** how likely it is to be taken, above 0 to 1, as the weights and the shape of the grammar have it */
  readonly chance: number;
}

/** The network of a rule, named in full and of the set (else it throws). */
export const networkOf = (listening: Listening, rule: string): Network => closed(buildGraph(listening, rule));

/** Every word of a network, in order of the alphabet. */
export const wordsOf = ({ arcs }: Network): readonly string[] =>
  [...new Set(arcs.map(({ word }) => word))].toSorted();

// The recogniser takes one silent step between two words and no more, so each step here leads all the way.
function closed(open: OpenGraph): Network {
  const useful = reachingEnd(open);
  const leaving = byState(
    open.arcs.filter(({ to }) => useful.has(to)),
    ({ from }) => from,
  );
  const numbers = new Map<number, number>();
  const numberOf = (state: number): number => {
    const number = numbers.get(state) ?? numbers.size;
    numbers.set(state, number);
    return number;
  };
  const silent: LikelyStep[] = [];
  const entered = new Set([open.start]);
  const left = new Set<number>();
  numberOf(open.start);
  for (const at of entered)
    for (const [state, chance] of ahead(open, at)) {
      if (state !== open.end && !leaving.has(state)) continue;
      if (state !== at) silent.push({ from: numberOf(at), to: numberOf(state), chance });
      if (left.has(state)) continue;
      left.add(state);
      for (const { to } of leaving.get(state) ?? []) entered.add(to);
    }
  const arcs = [...left].flatMap((state) => {
    const ways = leaving.get(state) ?? [];
    const all = ways.reduce((sum, { chance }) => sum + chance, 0);
    return ways.map(({ to, word, chance }) => ({
      from: numberOf(state),
      to: numberOf(to),
      word,
      chance: chance / all,
    }));
  });
  return { end: numberOf(open.end), states: numbers.size, arcs, silent };
}

/** Ways less likely than this are as good as none; the bound also ends a loop in which nothing is said. */
const LEAST_CHANCE = 1e-7;

/** The states in which a word (or the end) may come next, with how likely it is to go on from there. */
function ahead({ silent }: OpenGraph, from: number): ReadonlyMap<number, number> {
  const reached = new Map<number, number>();
  const open = [{ to: from, chance: 1 }];
  for (let way = open.pop(); way !== undefined; way = open.pop()) {
    const { to, chance } = way;
    const ways = silent[to] ?? [];
    if (ways.length === 0) reached.set(to, (reached.get(to) ?? 0) + chance);
    else
      for (const next of ways)
        if (chance * next.chance > LEAST_CHANCE) open.push({ to: next.to, chance: chance * next.chance });
  }
  return reached;
}

/** The states from which the end can be reached. */
function reachingEnd({ arcs, silent, end }: OpenGraph): ReadonlySet<number> {
  const before = new Map<number, number[]>();
  const note = (from: number, to: number) => {
    const known = before.get(to);
    if (known === undefined) before.set(to, [from]);
    else known.push(from);
  };
  for (const { from, to } of arcs) note(from, to);
  silent.forEach((ways, from) => {
    for (const { to } of ways) note(from, to);
  });
  const reaching = new Set([end]);
  for (const state of reaching) for (const earlier of before.get(state) ?? []) reaching.add(earlier);
  return reaching;
}
