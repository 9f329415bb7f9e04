// What is worked out of an entry alone is worked out once: an entry never changes, and a long exam has thousands of them.

import type { Entry } from '../record/entry.ts';

/** `work`, done once for each entry and remembered for as long as the entry is. It must look at nothing but the entry. */
export function perEntry<T>(work: (entry: Entry) => T): (entry: Entry) => T {
  const known = new WeakMap<Entry, { readonly of: T }>();
  return (entry) => {
    const before = known.get(entry);
    if (before !== undefined) return before.of;
    const of = work(entry);
    known.set(entry, { of });
    return of;
  };
}
