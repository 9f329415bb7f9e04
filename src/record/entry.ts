// An entry of the record: a statement with its times, the words it came from, and how far it can be relied on.

import type { Known, Statement } from '../terms/index.ts';

export type EntryState = 'heard' | 'confirmed' | 'replaced' | 'struck';

export interface EntryFacts {
  /** unique in the record */
  readonly id: string;
  /** ISO 8601 with offset: when it was so */
  readonly at: string;
  /** ISO 8601 with offset: when it was said */
  readonly heardAt: string;
  /** where it corrects another and keeps its time: when that was said, ISO 8601 with offset */
  readonly firstHeardAt?: string;
  /** the words it came from, as said */
  readonly heard: string;
  readonly state: EntryState;
  /** slots that were not spoken (`side`, `site`, `present`, `value` …) and how they came to be known instead */
  readonly known?: Readonly<Record<string, Exclude<Known, 'spoken'>>>;
  /** what a person must settle before this is relied on, in plain words */
  readonly doubt?: readonly string[];
  /** the entry that a correction put in this one's place */
  readonly replacedBy?: string;
}

export type Entry = EntryFacts & Statement;

/** True for an entry that still stands: heard or confirmed, neither replaced nor struck. */
export const stands = (entry: Entry): boolean => entry.state === 'heard' || entry.state === 'confirmed';

/**
 * When it was first told, ISO 8601 with offset. A time that differs from this was spoken; one that differs from `heardAt`
 * alone is only that of what a correction took the place of, and nobody said it.
 */
export const firstTold = ({ firstHeardAt, heardAt }: EntryFacts): string => firstHeardAt ?? heardAt;

/** The entries of one kind that still stand, in the order spoken. */
export const standing = <K extends Entry['kind']>(
  entries: readonly Entry[],
  kind: K,
): readonly Extract<Entry, { kind: K }>[] =>
  entries.filter((entry): entry is Extract<Entry, { kind: K }> => entry.kind === kind && stands(entry));
