// What the partner's hand does to the record: confirm, strike, edit. No words are needed, and the log keeps who did it.

import type { Change } from '../parse/frame.ts';
import { formatIso } from '../parse/times/index.ts';
import { applyChange } from './change/change.ts';
import { type Entry, stands } from './entry.ts';
import { append, type Exam } from './exam.ts';
import { newDoubts, newKnown } from './provenance.ts';
import type { EntryDraft } from './stamp.ts';
import { statementOf } from './statement-of.ts';

/** Marks in the log what a hand did, where a spoken change gives its words. */
export const BY_HAND = 'by hand';

/** The examination with those of the entries confirmed that stand; `time` in milliseconds since the epoch. */
export function confirmEntries<C>(exam: Exam<C>, ids: readonly string[], time: number): Exam<C> {
  const entries = standingIds(exam, ids);
  if (entries.length === 0) return exam;
  return append(exam, formatIso(time, exam.zone), () => ({
    kind: 'confirmed',
    payload: { entries, by: BY_HAND },
  }));
}

/** The examination with those of the entries struck that stand; `time` in milliseconds since the epoch, `by` the words that did it. */
export function strikeEntries<C>(exam: Exam<C>, ids: readonly string[], time: number, by = BY_HAND): Exam<C> {
  const entries = standingIds(exam, ids);
  if (entries.length === 0) return exam;
  return append(exam, formatIso(time, exam.zone), () => ({
    kind: 'struck',
    payload: { entries, by },
  }));
}

/** The examination with those of the struck entries standing again, to be confirmed anew; `time` as above. */
export function restoreEntries<C>(exam: Exam<C>, ids: readonly string[], time: number): Exam<C> {
  const entries = exam.state.entries
    .filter((entry) => ids.includes(entry.id) && entry.state === 'struck')
    .map(({ id }) => id);
  if (entries.length === 0) return exam;
  return append(exam, formatIso(time, exam.zone), () => ({
    kind: 'restored',
    payload: { entries, by: BY_HAND },
  }));
}

export type Edited<C> =
  | { readonly kind: 'edited'; readonly exam: Exam<C> }
  /** the entry already says so */
  | { readonly kind: 'same' }
  | { readonly kind: 'refused'; readonly why: string };

/**
 * The examination with one entry changed by hand; `time` in milliseconds since the epoch. The new entry keeps the words
 * and times of the old one and still waits to be confirmed; a number is taken in the record's own unit. `heard` gives the
 * words where the whole statement was said anew, `at` the time that was said with them, in milliseconds since the epoch.
 */
export function editEntry<C>(
  exam: Exam<C>,
  id: string,
  change: Change,
  time: number,
  heard?: string,
  at?: number,
): Edited<C> {
  const entry = exam.state.entries.find((one) => one.id === id);
  if (entry === undefined || !stands(entry)) return { kind: 'refused', why: 'the entry no longer stands' };
  if (change.change === 'strike') return { kind: 'edited', exam: strikeEntries(exam, [id], time) };
  if (change.change === 'statement') {
    const words = heard ?? entry.heard;
    const was = edited(entry);
    const when = at === undefined ? was.at : formatIso(at, exam.zone);
    const draft = { ...was, at: when, heard: words, statement: change.statement, known: {}, doubt: [] };
    return { kind: 'edited', exam: replace(exam, entry, draft, time) };
  }
  const outcome = applyChange(entry, change, '');
  if (outcome.kind === 'same') return { kind: 'same' };
  if (outcome.kind === 'senseless') return { kind: 'refused', why: 'the entry has nothing of that kind' };
  if (outcome.kind === 'impossible') return { kind: 'refused', why: outcome.why };
  const draft = {
    ...edited(entry),
    statement: outcome.statement,
    known: newKnown(entry, outcome, {}),
    doubt: newDoubts(entry, outcome, []),
  };
  return { kind: 'edited', exam: replace(exam, entry, draft, time) };
}

/** The examination with one entry put at another time, `at`, which cannot lie ahead; the new one waits to be confirmed. */
export function retimeEntry<C>(exam: Exam<C>, id: string, at: number, time: number): Edited<C> {
  const entry = exam.state.entries.find((one) => one.id === id);
  if (entry === undefined || !stands(entry)) return { kind: 'refused', why: 'the entry no longer stands' };
  if (at > time) return { kind: 'refused', why: 'that time is yet to come' };
  if (at === Date.parse(entry.at)) return { kind: 'same' };
  const { known = {}, doubt = [] } = entry;
  const draft = {
    ...edited(entry),
    at: formatIso(at, exam.zone),
    statement: statementOf(entry),
    known,
    doubt,
  };
  return { kind: 'edited', exam: replace(exam, entry, draft, time) };
}

function edited(entry: Entry): Omit<EntryDraft, 'group' | 'known' | 'doubt'> {
  const { at, heardAt, heard } = entry;
  return { statement: statementOf(entry), at, heardAt, heard, utterance: null };
}

function replace<C>(exam: Exam<C>, entry: Entry, draft: Omit<EntryDraft, 'group'>, time: number): Exam<C> {
  return append(exam, formatIso(time, exam.zone), (event) => ({
    kind: 'corrected',
    payload: { targets: [entry.id], replacements: [{ id: event, ...draft, group: event }] },
  }));
}

function standingIds<C>(exam: Exam<C>, ids: readonly string[]): readonly string[] {
  return exam.state.entries.filter((entry) => ids.includes(entry.id) && stands(entry)).map(({ id }) => id);
}
