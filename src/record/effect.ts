// What a correction makes happen, in order; what it leaves of an entry that was said of both sides is kept.

import type { Statement } from '../terms/index.ts';
import type { Entry } from './entry.ts';
import type { EntryDraft } from './stamp.ts';
import type { RecordState } from './state.ts';

/** What is to happen for a correction, in order. */
export type Effect =
  | { readonly effect: 'strike'; readonly targets: readonly string[] }
  | {
      readonly effect: 'replace';
      readonly targets: readonly string[];
      readonly replacements: readonly EntryDraft[];
    }
  | { readonly effect: 'enter'; readonly draft: EntryDraft }
  | { readonly effect: 'keep'; readonly why: string };

/** Where and when the correction was said, for the entries it makes. */
export interface Said {
  readonly utterance: string | null;
  readonly group: string;
  /** ISO 8601 with offset */
  readonly heardAt: string;
  /** ISO 8601 with offset, where the correction itself gave a time */
  readonly at?: string;
}

/** A correction that fitted nothing: its words are kept, and why. */
export const NO_FIT: readonly Effect[] = [{ effect: 'keep', why: 'nothing earlier fits this correction' }];

/** The untouched side keeps its words, times and doubts; only its side is now worked out and not spoken. */
export function leftOver(state: RecordState, entry: Entry, statement: Statement): EntryDraft {
  const group = state.groups.find(({ entries }) => entries.includes(entry.id));
  return {
    statement,
    at: entry.at,
    heardAt: entry.heardAt,
    heard: entry.heard,
    known: 'side' in entry ? { ...entry.known, side: 'inferred' } : (entry.known ?? {}),
    doubt: entry.doubt ?? [],
    // It stays with what it was said with, so that "strike that" does not take it for the last thing said.
    utterance: group?.utterance ?? null,
    group: group?.id ?? entry.id,
  };
}
