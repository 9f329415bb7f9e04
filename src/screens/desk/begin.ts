// A record begins with its first words, or with a talk that is opened; the one before it stays kept.

import { formatIso } from '../../parse/times/index.ts';
import { beginExam } from '../../record/index.ts';
import type { Desk } from './desk.ts';
import type { OpenRecord, RecordKind } from './open-record.ts';
import type { TalkReader } from './reader.ts';

export interface NewRecord {
  readonly kind: RecordKind;
  readonly title: string;
  /** epoch ms */
  readonly startedAt: number;
  readonly zone: string;
}

/** A record in which nothing was said yet; it is not opened by this. */
export function beginRecord(
  desk: Desk,
  reader: TalkReader,
  { kind, title, startedAt, zone }: NewRecord,
): OpenRecord {
  return {
    facts: { id: desk.newId(), kind, title, startedAt: formatIso(startedAt, zone) },
    exam: beginExam(reader, { device: desk.device, startedAt, zone }),
    ahead: kind === 'live' ? 0 : startedAt - desk.clock(),
  };
}

/** The open record, or a live one begun now. */
export const recordToUse = (desk: Desk, reader: TalkReader, startedAt: number): OpenRecord =>
  desk.record.value ?? beginRecord(desk, reader, { kind: 'live', title: '', startedAt, zone: desk.zone });
