// What a hand does to the open record: confirm, strike, change; each gives a sentence where it could not be done.

import type { Change, Context } from '../../parse/index.ts';
import {
  confirmEntries,
  type Edited,
  editEntry,
  type HandoverStep,
  handOver,
  restoreEntries,
  retimeEntry,
  strikeEntries,
} from '../../record/index.ts';
import type { StatementKind } from '../../terms/index.ts';
import { type Desk, setRecord } from './desk.ts';
import { type OpenRecord, timeIn } from './open-record.ts';

/** Confirms those of the entries that stand. */
export function confirm(desk: Desk, ids: readonly string[]): void {
  const record = desk.record.value;
  if (record === null) return;
  setRecord(desk, { ...record, exam: confirmEntries(record.exam, ids, timeIn(record, desk.clock())) });
}

/** Strikes those of the entries that stand; they stay in the record as struck. `by`: the words, where no hand did it. */
export function strike(desk: Desk, ids: readonly string[], by?: string): void {
  const record = desk.record.value;
  if (record === null) return;
  setRecord(desk, { ...record, exam: strikeEntries(record.exam, ids, timeIn(record, desk.clock()), by) });
}

/** Lets those of the struck entries stand again; they wait to be confirmed anew. */
export function restore(desk: Desk, ids: readonly string[]): void {
  const record = desk.record.value;
  if (record === null) return;
  setRecord(desk, { ...record, exam: restoreEntries(record.exam, ids, timeIn(record, desk.clock())) });
}

/** Keeps what was sent, read back, asked or heard aside while the radio was in use. */
export function passOn(desk: Desk, step: HandoverStep): void {
  const record = desk.record.value;
  if (record === null) return;
  setRecord(desk, { ...record, exam: handOver(record.exam, step, timeIn(record, desk.clock())) });
}

export type Changed =
  /** `id` of the entry that took the place of the changed one */
  { readonly kind: 'changed'; readonly id: string } | { readonly kind: 'unchanged'; readonly why: string };

const unchanged = (why: string): Changed => ({ kind: 'unchanged', why });

/** Changes one entry; the new one waits to be confirmed. `heard` are its words and `at` its time where it was said anew. */
export function change(desk: Desk, id: string, wanted: Change, heard?: string, at?: number): Changed {
  return edit(desk, id, (exam, now) => editEntry(exam, id, wanted, now, heard, at));
}

/** Puts one entry at another time, in milliseconds since the epoch; the new one waits to be confirmed. */
export function retime(desk: Desk, id: string, at: number): Changed {
  return edit(desk, id, (exam, now) => retimeEntry(exam, id, at, now));
}

function edit(
  desk: Desk,
  id: string,
  make: (exam: OpenRecord['exam'], now: number) => Edited<Context>,
): Changed {
  const record = desk.record.value;
  if (record === null) return unchanged('no record is open');
  const edited = make(record.exam, timeIn(record, desk.clock()));
  if (edited.kind === 'refused') return unchanged(edited.why);
  if (edited.kind === 'same') return unchanged('the entry says so already');
  setRecord(desk, { ...record, exam: edited.exam });
  const next = edited.exam.state.entries.find((entry) => entry.id === id)?.replacedBy;
  return { kind: 'changed', id: next ?? id };
}

/** Says one entry anew in words, read by the grammar: "blood pressure 120 over 80". */
export function restate(desk: Desk, id: string, kind: StatementKind, words: string): Changed {
  const [record, reader] = [desk.record.value, desk.reader.value];
  if (record === null || reader === null) return unchanged('the reader is not there yet');
  const heardAt = timeIn(record, desk.clock());
  const utterance = { text: words, heardAt, zone: record.exam.zone };
  const frames = reader.read(utterance, reader.begin()).frames;
  const meant = frames.flatMap((frame) =>
    frame.frame === 'statement' && frame.statement.kind === kind ? [frame] : [],
  );
  const [first] = meant;
  if (first === undefined) return unchanged(`“${words}” could not be read as such an entry`);
  if (meant.length > 1) return unchanged(`“${words}” says more than one thing`);
  if (first.doubt.length > 0) return unchanged(first.doubt.join('; '));
  // A changed entry counts as spoken, so nothing in it may have been worked out, but for a sum of what was said.
  const unspoken = Object.keys(first.known).filter((slot) => slot !== 'total');
  if (unspoken.length > 0) return unchanged(`“${words}” does not say: ${unspoken.join(', ')}`);
  return change(desk, id, { change: 'statement', statement: first.statement }, words, first.at);
}
