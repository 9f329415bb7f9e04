// What is worked out of a handoff's input alone is worked out once: an input is never changed, only replaced.

import type { HandoffInput } from '../input.ts';

/** `work`, done once for each input and remembered for as long as the input is. It must look at nothing else. */
export function perInput<T extends object>(work: (input: HandoffInput) => T): (input: HandoffInput) => T {
  const known = new WeakMap<HandoffInput, T>();
  return (input) => {
    const before = known.get(input);
    if (before !== undefined) return before;
    const made = work(input);
    known.set(input, made);
    return made;
  };
}
