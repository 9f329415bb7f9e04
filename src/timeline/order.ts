// Entries stand in the order in which they were so; where two were so at once, in the order spoken.

import type { Entry } from '../record/entry.ts';
import { perEntry } from './per-entry.ts';

interface Placed {
  readonly entry: Entry;
  readonly at: number;
  readonly spoken: number;
}

const atOf = perEntry(({ at }) => Date.parse(at));
const heardOf = perEntry(({ heardAt }) => Date.parse(heardAt));

/** The entries by `at`, then by their place in the record; states are not looked at. */
export const inOrder = (entries: readonly Entry[]): readonly Entry[] =>
  entries
    .map((entry, spoken): Placed => ({ entry, at: atOf(entry), spoken }))
    .sort((one, other) => one.at - other.at || one.spoken - other.spoken)
    .map(({ entry }) => entry);

/** The entries by `heardAt`, then by their place in the record. */
export const bySpokenOrder = (entries: readonly Entry[]): readonly Entry[] =>
  entries
    .map((entry, spoken): Placed => ({ entry, at: heardOf(entry), spoken }))
    .sort((one, other) => one.at - other.at || one.spoken - other.spoken)
    .map(({ entry }) => entry);
