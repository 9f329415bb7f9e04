// The standing entries sorted by when they were so, so that no rule depends on the order in which they were handed in.

import { type Entry, type EntryFacts, stands } from '../record/entry.ts';
import type { Vital, VitalReading } from '../terms/index.ts';

export type EntryOf<K extends Entry['kind']> = Extract<Entry, { kind: K }>;

type ReadingOf<V extends Vital, R = VitalReading> = R extends { readonly vital: infer W }
  ? V extends W
    ? R
    : never
  : never;

export type VitalEntry<V extends Vital> = EntryFacts & { readonly kind: 'vital' } & ReadingOf<V>;

export interface Chart {
  /** standing entries by time, then by when said, then by id */
  readonly all: readonly Entry[];
  readonly findings: readonly EntryOf<'finding'>[];
  readonly csm: readonly EntryOf<'csm'>[];
  readonly vitals: readonly EntryOf<'vital'>[];
  readonly history: readonly EntryOf<'history'>[];
  readonly care: readonly EntryOf<'care'>[];
}

/** When the entry was so, in epoch milliseconds; when it was said, where the first cannot be read. */
export function timeOf(entry: EntryFacts): number {
  const at = Date.parse(entry.at);
  if (!Number.isNaN(at)) return at;
  const heard = Date.parse(entry.heardAt);
  return Number.isNaN(heard) ? 0 : heard;
}

/** The entry's clock time as it was recorded, `14:05`, in its own offset. */
export const clockText = (entry: EntryFacts): string => entry.at.slice(11, 16);

// Counted ids (`e2`, `e10`) come in the order they were made; others at least in an order that does not change.
const byId = (a: string, b: string): number => a.length - b.length || (a < b ? -1 : a > b ? 1 : 0);

/** Sorts the standing entries by kind and time. Struck and replaced entries are left out. */
export function chartOf(entries: readonly Entry[]): Chart {
  const timed = entries.filter(stands).map((entry) => ({
    entry,
    at: timeOf(entry),
    heard: Date.parse(entry.heardAt) || 0,
  }));
  timed.sort((a, b) => a.at - b.at || a.heard - b.heard || byId(a.entry.id, b.entry.id));
  const all = timed.map((each) => each.entry);
  const kind = <K extends Entry['kind']>(wanted: K): readonly EntryOf<K>[] =>
    all.filter((entry): entry is EntryOf<K> => entry.kind === wanted);
  return {
    all,
    findings: kind('finding'),
    csm: kind('csm'),
    vitals: kind('vital'),
    history: kind('history'),
    care: kind('care'),
  };
}

/** The readings of one vital, earliest first. */
export const vitalsOf = <V extends Vital>(chart: Chart, vital: V): readonly VitalEntry<V>[] =>
  chart.vitals.filter((entry) => entry.vital === vital) as unknown as readonly VitalEntry<V>[];
