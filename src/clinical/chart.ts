// The standing entries as rules ask for them, always in one order; what a rule asks for can be noted.

import type { Entry, EntryFacts } from '../record/entry.ts';
import type { Finding, Site, Topic, Vital, VitalReading } from '../terms/index.ts';
import { cutAfter, type SliceName, type Slices } from './slice.ts';

export { timeOf } from './order.ts';

export type EntryOf<K extends Entry['kind']> = Extract<Entry, { kind: K }>;

type ReadingOf<V extends Vital, R = VitalReading> = R extends { readonly vital: infer W }
  ? V extends W
    ? R
    : never
  : never;

export type VitalEntry<V extends Vital> = EntryFacts & { readonly kind: 'vital' } & ReadingOf<V>;

/** Every list holds standing entries by time, then by when said, then by id. */
export interface Chart {
  readonly all: readonly Entry[];
  readonly findings: readonly EntryOf<'finding'>[];
  readonly csm: readonly EntryOf<'csm'>[];
  readonly vitals: readonly EntryOf<'vital'>[];
  readonly history: readonly EntryOf<'history'>[];
  readonly care: readonly EntryOf<'care'>[];
  /** words that may be anyone's: notes and marks */
  readonly words: readonly (EntryOf<'note'> | EntryOf<'mark'>)[];
  /** present findings, of one kind or of all */
  found(finding?: Finding): readonly EntryOf<'finding'>[];
  /** denials that rule one kind of finding out for the whole of the site they name */
  denied(finding: Finding): readonly EntryOf<'finding'>[];
  /** findings, visits and limb checks that name this very site */
  at(site: Site): readonly (EntryOf<'finding'> | EntryOf<'csm'> | EntryOf<'visit'>)[];
  /** present findings that name this very site */
  foundAt(site: Site): readonly EntryOf<'finding'>[];
  reading<V extends Vital>(vital: V): readonly VitalEntry<V>[];
  told(topic: Topic): readonly EntryOf<'history'>[];
  /** what another rule answers to this chart: several rules that ask the same need it worked out once */
  ask<T>(rule: Rule<T>): T;
}

/** A question put to the chart and to nothing else: the same chart gives the same answer. */
export type Rule<T> = (chart: Chart) => T;

const NONE: readonly never[] = [];

interface Listener {
  /** told the name of each slice that is looked at */
  readonly noted: (name: SliceName) => void;
  readonly ask: Chart['ask'];
}

/** The chart of the slices. */
export function chartOfSlices(slices: Slices, { noted, ask }: Listener): Chart {
  // A slice's name says what its entries are: it is by that name that they were put there.
  const look = <E extends Entry>(name: SliceName): readonly E[] => {
    noted(name);
    return (slices.get(name) ?? NONE) as unknown as readonly E[];
  };
  return {
    get all() {
      return look('all');
    },
    get findings() {
      return look<EntryOf<'finding'>>('finding');
    },
    get csm() {
      return look<EntryOf<'csm'>>('csm');
    },
    get vitals() {
      return look<EntryOf<'vital'>>('vital');
    },
    get history() {
      return look<EntryOf<'history'>>('history');
    },
    get care() {
      return look<EntryOf<'care'>>('care');
    },
    get words() {
      return [...look<EntryOf<'note'>>('note'), ...look<EntryOf<'mark'>>('mark')];
    },
    found: (finding) => look(finding === undefined ? 'found' : `found ${finding}`),
    denied: (finding) => look(`denied ${finding}`),
    at: (site) => look(`at ${site}`),
    foundAt: (site) => look(`found at ${site}`),
    reading: (vital) => look<never>(`vital ${vital}`),
    told: (topic) => look(`history ${topic}`),
    ask,
  };
}

/** The entry's clock time as it was recorded, `14:05`, in its own offset. */
export const clockText = (entry: EntryFacts): string => entry.at.slice(11, 16);

/** The chart of the entries that stand. Struck and replaced entries are left out. */
export function chartOf(entries: readonly Entry[]): Chart {
  const chart: Chart = chartOfSlices(cutAfter(null, entries).slices, {
    noted: () => {},
    ask: (rule) => rule(chart),
  });
  return chart;
}

/** The readings of one vital, earliest first. */
export const vitalsOf = <V extends Vital>(chart: Chart, vital: V): readonly VitalEntry<V>[] =>
  chart.reading(vital);
