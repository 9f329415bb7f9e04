// How often each state of a network is come to in one utterance.

export interface Way {
  readonly to: number;
  readonly chance: number;
}

/** By state. `ahead` has the ways on from each; an utterance is over after so many `steps`, and what is rarer than `least` goes no further. */
export function visitsOf(
  ahead: readonly (readonly Way[])[],
  { steps, least }: { readonly steps: number; readonly least: number },
): Float64Array {
  const visits = new Float64Array(ahead.length);
  let front = new Float64Array(ahead.length);
  front[0] = 1;
  for (let step = 0; step < steps; step += 1) {
    const next = new Float64Array(ahead.length);
    front.forEach((mass, at) => {
      visits[at] = (visits[at] ?? 0) + mass;
      if (mass < least) return;
      for (const { to, chance } of ahead[at] ?? []) next[to] = (next[to] ?? 0) + mass * chance;
    });
    front = next;
  }
  return visits;
}
