// One order of entries that never depends on how they were handed in: by when they were so, when said, then by id.

import type { Entry, EntryFacts } from '../record/entry.ts';

/** When the entry was so, in epoch milliseconds; when it was said, where the first cannot be read. */
export function timeOf(entry: EntryFacts): number {
  const at = Date.parse(entry.at);
  if (!Number.isNaN(at)) return at;
  const heard = Date.parse(entry.heardAt);
  return Number.isNaN(heard) ? 0 : heard;
}

// Counted ids (`e2`, `e10`) come in the order they were made; others at least in an order that does not change.
const byId = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : a > b ? 1 : 0);

interface Timed {
  readonly entry: Entry;
  readonly at: number;
  readonly heard: number;
}

const timed = (entry: Entry): Timed => ({
  entry,
  at: timeOf(entry),
  heard: Date.parse(entry.heardAt) || 0,
});

const compare = (a: Timed, b: Timed): number =>
  a.at - b.at || a.heard - b.heard || byId(a.entry.id, b.entry.id);

/** The entries in order. */
export const inOrder = (entries: readonly Entry[]): readonly Entry[] =>
  entries
    .map(timed)
    .sort(compare)
    .map(({ entry }) => entry);

/** An ordered list with one more entry in its place: found by halving, since a date is slow to read. */
export function withEntry(ordered: readonly Entry[], entry: Entry): readonly Entry[] {
  const fresh = timed(entry);
  const last = ordered.at(-1);
  if (last === undefined || compare(timed(last), fresh) <= 0) return [...ordered, entry];
  let [from, to] = [0, ordered.length - 1];
  while (from < to) {
    const half = (from + to) >> 1;
    const there = ordered[half];
    if (there !== undefined && compare(timed(there), fresh) <= 0) from = half + 1;
    else to = half;
  }
  return ordered.toSpliced(from, 0, entry);
}
