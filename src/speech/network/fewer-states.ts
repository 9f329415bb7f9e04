// The same network with fewer states. In every frame the recogniser looks at each state, for each sound that the word before
// it may end in, and that was three quarters of its work.

import type { LikelyStep, Network } from './network.ts';
import { byState } from './one-way.ts';
import type { LikelyArc } from './word-graph.ts';

/** A state that is come to in silence alone goes into those before it where this adds no more words than so many. */
const MOST_ADDED = 40;
/** Chances are held to be the same within this factor. */
const ALIKE = 2;

/** What can be said stays the same, and so do its chances but for a factor; a state may now have both words and silent steps. */
export const withFewerStates = (network: Network): Network =>
  withStatesNumbered(withoutSilentStates(merged(network)));

/** States from which the same can be said, as likely, become one (E. F. Moore, 1956). */
function merged(network: Network): Network {
  const leaving = byState(network.arcs, ({ from }) => from);
  const ahead = byState(network.silent, ({ from }) => from);
  let parts: readonly number[] = Array.from({ length: network.states }, (_, at) => +(at === network.end));
  const part = (at: number): number => parts[at] ?? 0;
  for (let count = 0, numbers = new Map<string, number>(); ; numbers = new Map()) {
    parts = parts.map((own, at) => {
      const words = (leaving.get(at) ?? []).map(
        ({ word, to, chance }) => `${word} ${part(to)} ${size(chance)}`,
      );
      const steps = (ahead.get(at) ?? []).map(({ to, chance }) => `${part(to)} ${size(chance)}`);
      const key = [own, ...words.toSorted(), '', ...steps.toSorted()].join('|');
      const number = numbers.get(key) ?? numbers.size;
      numbers.set(key, number);
      return number;
    });
    if (numbers.size === count) break;
    count = numbers.size;
  }
  const first = new Map(parts.map((_, at) => parts.length - 1 - at).map((at) => [part(at), at]));
  const into = (at: number): number => first.get(part(at)) ?? at;
  const joined = <Kind extends LikelyStep>(ways: readonly Kind[]): readonly Kind[] =>
    ways.filter(({ from }) => into(from) === from).map((way) => ({ ...way, to: into(way.to) }));
  const { states, end, arcs, silent } = network;
  return { states, end: into(end), arcs: joined(arcs), silent: joined(silent) };
}

const size = (chance: number): number => Math.round(Math.log(chance) / Math.log(ALIKE));

function withoutSilentStates(network: Network): Network {
  const comeTo = new Set([0, network.end, ...network.arcs.map(({ to }) => to)]);
  const goesOn = new Set(network.silent.map(({ from }) => from));
  const leaving = byState(network.arcs, ({ from }) => from);
  const gone = new Set(
    [...byState(network.silent, ({ to }) => to)].flatMap(([at, before]) => {
      const added = (before.length - 1) * (leaving.get(at)?.length ?? 0);
      return comeTo.has(at) || goesOn.has(at) || added > MOST_ADDED ? [] : [at];
    }),
  );
  const moved = network.silent
    .filter(({ to }) => gone.has(to))
    .flatMap(({ from, to, chance }) =>
      (leaving.get(to) ?? []).map((arc) => ({ ...arc, from, chance: arc.chance * chance })),
    );
  return {
    ...network,
    arcs: [...network.arcs.filter(({ from }) => !gone.has(from)), ...moved],
    silent: network.silent.filter(({ to }) => !gone.has(to)),
  };
}

/** Without the states that nothing leads to any more, and their numbers. */
export function withStatesNumbered({ end, arcs, silent }: Network): Network {
  const numbers = new Map([[0, 0]]);
  const numberOf = (at: number): number => {
    const number = numbers.get(at) ?? numbers.size;
    numbers.set(at, number);
    return number;
  };
  const renamed = <Kind extends LikelyStep | LikelyArc>(way: Kind): Kind => ({
    ...way,
    from: numberOf(way.from),
    to: numberOf(way.to),
  });
  const [words, steps] = [arcs.map(renamed), silent.map(renamed)];
  return { end: numberOf(end), states: numbers.size, arcs: words, silent: steps };
}
