// What is handed to the link: only what is on this device's disk, read from there.

import type { EventText, Session } from '../../../link/index.ts';
import { type RecordFacts, readLog } from '../../../record/store/index.ts';
import type { Desk } from '../../desk/index.ts';

/** A record's log as it lies on the disk, or null where it is not there. */
export async function readShared(
  desk: Desk,
  record: string,
): Promise<{ readonly facts: RecordFacts; readonly events: readonly EventText[] } | null> {
  const keys = desk.door.keys();
  if (keys === null) return null;
  const log = await readLog(desk.shelf, keys, record);
  return log.record === null ? null : { facts: log.record.facts, events: log.events as readonly EventText[] };
}

/** Offers every kept record of the incident; what was sent of it before is passed over. */
export async function offerKept(
  desk: Desk,
  session: Session,
  isShared: (facts: RecordFacts) => boolean,
): Promise<void> {
  await desk.keeper.settled();
  const { records } = await desk.keeper.list();
  for (const { facts } of records.filter((one) => isShared(one.facts))) {
    const log = await readShared(desk, facts.id);
    if (log !== null) session.offer(log.facts, log.events);
  }
}
