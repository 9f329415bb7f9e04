// Whether a network lets a sentence be said, by walking it.

import type { Network } from '../../src/speech/network/network.ts';

/** True where some way through the network is these words. Silent steps are taken singly, as the recogniser does. */
export function says({ arcs, silent, end }: Network, sentence: string): boolean {
  const step = (states: ReadonlySet<number>): ReadonlySet<number> =>
    new Set([...states, ...silent.filter(({ from }) => states.has(from)).map(({ to }) => to)]);
  let at = step(new Set([0]));
  for (const said of sentence.split(' '))
    at = step(new Set(arcs.filter(({ from, word }) => word === said && at.has(from)).map(({ to }) => to)));
  return at.has(end);
}
