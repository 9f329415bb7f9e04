// Stored events become an open record again; what cannot be read stays stored, is counted, and is said.

import { fold, migrate, type RecordEvent } from '../../record/index.ts';
import type { ReadLog, RecordFacts } from '../../record/store/index.ts';
import {
  type Desk,
  lastHeardAt,
  type OpenRecord,
  setRecord,
  type TalkReader,
  trouble,
} from '../desk/index.ts';
import { faultsInWords } from './faults.ts';
import { whyNot } from './words.ts';

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

/** A record whose name cannot be read is still opened by what its log says. */
function factsOf(id: string, { record, events }: ReadLog): RecordFacts {
  if (record !== null) return record.facts;
  const first = events.map((event) => migrate(event)).find((one) => one.kind === 'event');
  const startedAt = first?.kind === 'event' ? first.event.time : new Date(0).toISOString();
  return { id, kind: 'live', title: 'name not readable', startedAt };
}

/** Opens one kept record; a sentence tells where that was not possible in full. */
export async function openKept(desk: Desk, reader: TalkReader, id: string): Promise<void> {
  try {
    await desk.keeper.settled();
    const unkept = desk.keeper.unkept(id);
    if (unkept !== null) {
      setRecord(desk, unkept);
      return;
    }
    const log = await desk.keeper.read(id);
    const { record, refused } = restored(desk, reader, factsOf(id, log), log.events);
    desk.record.value = record;
    desk.damage.value =
      log.verdict.faults.length === 0 && refused === 0
        ? null
        : { record: id, why: faultsInWords(log.verdict, refused), rows: log.damaged.length };
    desk.keeper.keep(record);
  } catch (error) {
    desk.notice.value = trouble(`The kept record could not be read: ${whyNot(error)}`);
  }
}

/** Opens the record that was open last, where there is one that can be read. */
export async function openLast(desk: Desk, reader: TalkReader): Promise<void> {
  if (desk.door.keys() === null) return;
  try {
    const id = await desk.keeper.lastOpen();
    if (id !== null && (await canRead(desk, id))) await openKept(desk, reader, id);
  } catch (error) {
    desk.notice.value = trouble(`What is kept on this device could not be read: ${whyNot(error)}`);
  }
}

/** An examination begun while locked has no key for what was open before it. */
async function canRead(desk: Desk, id: string): Promise<boolean> {
  const { records, unnamed } = await desk.keeper.list();
  const now = desk.door.now.value;
  if (now.state === 'open' && now.by === 'one') return records.some(({ facts }) => facts.id === id);
  return records.some(({ facts }) => facts.id === id) || unnamed.includes(id);
}
