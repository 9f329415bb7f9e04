// The record as it stands after some events: entries in the order spoken, and what was said as one.

import type { SaidProblemChange } from '../terms/index.ts';
import type { Entry } from './entry.ts';
import type { LoggedUtterance, Unheard } from './event.ts';
import { type Filing, UNFILED } from './filing.ts';
import type { KeptStep } from './handover.ts';

/** Entries that were said as one; a correction without a target means the last of these. */
export interface Group {
  readonly id: string;
  /** the utterance they were said in, or null where a hand entered them */
  readonly utterance: string | null;
  readonly entries: readonly string[];
}

export interface RecordState {
  /** ISO 8601 with offset, or null before the `started` event */
  readonly startedAt: string | null;
  readonly zone: string | null;
  /** in the order spoken, replaced and struck ones included */
  readonly entries: readonly Entry[];
  /** in the order spoken */
  readonly groups: readonly Group[];
  readonly utterances: readonly (LoggedUtterance & { readonly id: string })[];
  /** stretches in which nothing could be heard, in the order they were noticed */
  readonly unheard: readonly Unheard[];
  /** corrections that fitted nothing said before; their words stand as notes among the entries too */
  readonly unmatched: readonly { readonly heard: string; readonly why: string }[];
  /** what the responder did to the problem list, in the order said */
  readonly problemChanges: readonly SaidProblemChange[];
  /** what was passed on and what came back, in the order of the log */
  readonly handover: readonly KeptStep[];
  /** the entries of the latest strike that was not taken back */
  readonly lastStruck: readonly string[];
  /** which patient of which incident, and what the record is called */
  readonly filing: Filing;
  /** the last number that each device gave to an event */
  readonly lastSeq: Readonly<Record<string, number>>;
}

/** A record of which nothing is known yet. */
export const EMPTY: RecordState = {
  startedAt: null,
  zone: null,
  entries: [],
  groups: [],
  utterances: [],
  unheard: [],
  unmatched: [],
  problemChanges: [],
  handover: [],
  lastStruck: [],
  filing: UNFILED,
  lastSeq: {},
};
