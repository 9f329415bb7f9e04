// Entries stand in the order in which they were so; where two were so at once, in the order spoken.

import type { Entry } from '../record/entry.ts';
import { perThing } from './per-thing.ts';

interface Placed {
  readonly entry: Entry;
  readonly at: number;
  readonly spoken: number;
}

export const atOf = perThing(({ at }: Entry) => Date.parse(at));
export const heardOf = perThing(({ heardAt }: Entry) => Date.parse(heardAt));

/** A record is mostly said in the order in which it was so; then nothing is sorted. */
const isSorted = (entries: readonly Entry[], when: (entry: Entry) => number): boolean =>
  entries.every((entry, index) => {
    const before = entries[index - 1];
    return before === undefined || when(before) <= when(entry);
  });

const sorted = (entries: readonly Entry[], when: (entry: Entry) => number): readonly Entry[] =>
  isSorted(entries, when)
    ? entries
    : entries
        .map((entry, spoken): Placed => ({ entry, at: when(entry), spoken }))
        .sort((one, other) => one.at - other.at || one.spoken - other.spoken)
        .map(({ entry }) => entry);

/** The entries by `at`, then by their place in the record; states are not looked at. */
export const inOrder = perThing((entries: readonly Entry[]) => sorted(entries, atOf));

/** The entries by `heardAt`, then by their place in the record. */
export const bySpokenOrder = perThing((entries: readonly Entry[]) => sorted(entries, heardOf));
