// The same network without what is hardly ever said: two thirds of its steps are taken for one word in a hundred, and each costs
// memory. What was said so is still heard in the network of words of any order.

import type { Network } from './network.ts';
import { byState } from './one-way.ts';
import { visitsOf } from './visits.ts';

/** Steps after which an utterance is over: loops end. */
const LONGEST = 120;

/** Leaves out each step that is taken less often than `least` an utterance; what then leads nowhere goes too. States keep their numbers. */
export function withoutRare(network: Network, least: number): Network {
  const leaving = byState([...network.arcs, ...network.silent], ({ from }) => from);
  const all = Array.from({ length: network.states }, (_, at) => leaving.get(at) ?? []);
  const visits = visitsOf(all, { steps: LONGEST, least: 0 });
  const isKept = ({ from, chance }: { readonly from: number; readonly chance: number }): boolean =>
    (visits[from] ?? 0) * chance >= least;
  const arcs = network.arcs.filter(isKept);
  const silent = network.silent.filter(isKept);
  const ahead = byState([...arcs, ...silent], ({ from }) => from);
  const back = byState([...arcs, ...silent], ({ to }) => to);
  const reached = reachedFrom(0, (at) => (ahead.get(at) ?? []).map(({ to }) => to));
  const ending = reachedFrom(network.end, (at) => (back.get(at) ?? []).map(({ from }) => from));
  const leads = ({ from, to }: { readonly from: number; readonly to: number }): boolean =>
    reached.has(from) && ending.has(to);
  return { ...network, arcs: arcs.filter(leads), silent: silent.filter(leads) };
}

function reachedFrom(start: number, next: (at: number) => readonly number[]): ReadonlySet<number> {
  const reached = new Set([start]);
  for (const at of reached) for (const to of next(at)) reached.add(to);
  return reached;
}
