// Stored events become an open record again; what cannot be read stays stored, is counted, and is said.

import { fold, migrate, type RecordEvent } from '../../record/index.ts';
import {
  type Desk,
  lastHeardAt,
  type OpenRecord,
  type RecordFacts,
  type TalkReader,
  trouble,
} from '../desk/index.ts';

export interface Restored {
  readonly record: OpenRecord;
  /** stored events that this version cannot read */
  readonly refused: number;
}

/** The record that the stored events make, on this page's own device name. */
export function restored(
  desk: Desk,
  reader: TalkReader,
  facts: RecordFacts,
  stored: readonly unknown[],
): Restored {
  const read = stored.map((event) => migrate(event));
  const events = read.flatMap((one): readonly RecordEvent[] => (one.kind === 'event' ? [one.event] : []));
  const state = fold(events);
  const exam = {
    device: desk.device,
    zone: state.zone ?? desk.zone,
    events,
    state,
    context: reader.begin(),
  };
  const record = { facts, exam, ahead: 0 };
  const ahead = facts.kind === 'live' ? 0 : lastHeardAt(record) - desk.clock();
  return { record: { ...record, ahead }, refused: stored.length - events.length };
}

/** Opens one kept record; a sentence tells where that was not possible in full. */
export async function openKept(desk: Desk, reader: TalkReader, facts: RecordFacts): Promise<void> {
  try {
    const { record, refused } = restored(desk, reader, facts, await desk.keeper.events(facts.id));
    desk.record.value = record;
    desk.keeper.keep(record);
    if (refused > 0)
      desk.notice.value = trouble(
        `${refused} stored events could not be read; they stay as they are stored.`,
      );
  } catch {
    desk.notice.value = trouble('The kept record could not be read from this device.');
  }
}

/** Opens the record that was open last, where there is one. */
export async function openLast(desk: Desk, reader: TalkReader): Promise<void> {
  try {
    const id = await desk.keeper.lastOpen();
    const facts = id === null ? undefined : (await desk.keeper.list()).find((one) => one.id === id);
    if (facts !== undefined) await openKept(desk, reader, facts);
  } catch {
    desk.notice.value = trouble('Records cannot be kept in this browser: a reload loses what was said.');
  }
}
