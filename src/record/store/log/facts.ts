// What a record is called, as the store keeps it; the summary lets a list be shown without reading every log.

import type { Head } from '../../chain/index.ts';

/** `live`: of a patient; `invented`: a made-up examination; `opened`: read from a talk file. */
export type RecordKind = 'live' | 'invented' | 'opened';

export interface RecordFacts {
  /** unique on this device */
  readonly id: string;
  readonly kind: RecordKind;
  /** how a list names it, such as the file it was read from; empty for a live one */
  readonly title: string;
  /** ISO 8601 with offset */
  readonly startedAt: string;
}

/** The sealed row of a record beside its log. */
export interface RecordRow {
  /** version of what a record is kept as */
  readonly version: 1;
  readonly facts: RecordFacts;
  readonly head: Head;
  /** what a list shows and searches, as the page worked it out from the log */
  readonly summary: Readonly<Record<string, unknown>>;
}

/** The row, or null for what is none of this version. */
export function readRecordRow(value: unknown): RecordRow | null {
  if (typeof value !== 'object' || value === null) return null;
  const { version, facts, head, summary } = value as Partial<RecordRow>;
  if (version !== 1 || typeof facts?.id !== 'string' || typeof facts.startedAt !== 'string') return null;
  if (typeof head?.count !== 'number' || typeof head.hash !== 'string') return null;
  return { version, facts, head, summary: summary ?? {} };
}
