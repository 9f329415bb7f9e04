// What is worked out of a list of entries alone is worked out once: lists are never changed, only replaced, and several views ask.

import type { Entry } from '../record/entry.ts';

type List = readonly Entry[];

/** `work`, done once for each list and remembered for as long as the list is. It must look at nothing but the list. */
export function perList<T extends object>(work: (entries: List) => T): (entries: List) => T {
  const known = new WeakMap<List, T>();
  return (entries) => {
    const before = known.get(entries);
    if (before !== undefined) return before;
    const made = work(entries);
    known.set(entries, made);
    return made;
  };
}
