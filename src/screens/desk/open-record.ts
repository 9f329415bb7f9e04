// A record as the page holds it: its examination, what kind of record it is, and by which clock it runs.

import type { Context } from '../../parse/index.ts';
import type { Exam } from '../../record/index.ts';
import type { RecordFacts, RecordKind } from '../../record/store/index.ts';

export type { RecordFacts, RecordKind };

export interface OpenRecord {
  readonly facts: RecordFacts;
  readonly exam: Exam<Context>;
  /** milliseconds from the wall clock to the record's own; 0 for a live one */
  readonly ahead: number;
}

/** When the last thing was said, or when it began; epoch ms. */
export function lastHeardAt({ exam }: OpenRecord): number {
  const last = exam.state.utterances.at(-1)?.heardAt ?? exam.state.startedAt;
  return last === null ? 0 : Date.parse(last);
}

/** The record's own time at wall-clock time `wall`, both epoch ms. */
export const timeIn = (record: OpenRecord, wall: number): number => wall + record.ahead;

/** Minutes of silence after which an examination counts as over for an update of the page; our choice, no source. */
const QUIET_MINUTES = 60;

/** True while a patient is being examined: nothing may interrupt then. */
export function isUnderWay(record: OpenRecord | null, wall: number): boolean {
  if (record === null || record.facts.kind !== 'live') return false;
  if (record.exam.state.utterances.length === 0) return false;
  return timeIn(record, wall) - lastHeardAt(record) < QUIET_MINUTES * 60_000;
}
