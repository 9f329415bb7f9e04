// A record that another device handed over becomes this device's to write: its history whole, the taking over after it.

import * as v from 'valibot';
import type { Offer } from '../../../link/index.ts';
import { handOver, mergeLogs, migrate, type RecordEvent } from '../../../record/index.ts';
import { eventShape } from '../../../record/store/transfer/index.ts';
import { type Desk, setRecord, type TalkReader, timeIn } from '../../desk/index.ts';
import { restored } from '../../records/restore.ts';

/** In one sentence what is wrong with an event, or null. */
function faultOf(event: unknown, place: number): string | null {
  const read = migrate(event);
  if (read.kind === 'refused') return `its event ${place} is ${read.why}`;
  const shape = v.safeParse(eventShape(read.event.kind), read.event);
  return shape.success
    ? null
    : `its event ${place} is wrong at ${v.getDotPath(shape.issues[0]) ?? 'its top'}`;
}

const eventIn = (one: ReturnType<typeof migrate>): readonly RecordEvent[] =>
  one.kind === 'event' ? [one.event] : [];

/** Opens the record with the taking over logged in it; gives why not, and then nothing was changed, or null. */
export async function takeOver(
  desk: Desk,
  reader: TalkReader,
  { facts, events, from }: Offer,
  name: string,
): Promise<string | null> {
  for (const [index, event] of events.entries()) {
    const fault = faultOf(event, index + 1);
    if (fault !== null) return fault;
  }
  await desk.keeper.settled();
  const { records } = await desk.keeper.list();
  const known = records.find((one) => one.facts.id === facts.id);
  const stored = known === undefined ? [] : (await desk.keeper.read(facts.id)).events;
  const merged = mergeLogs(stored.map(migrate).flatMap(eventIn), events.map(migrate).flatMap(eventIn));
  if (merged.contrary.length > 0)
    return `${merged.contrary.length} of its events say something else here than there (${merged.contrary[0]})`;
  const { record } = restored(desk, reader, known?.facts ?? facts, merged.events);
  const step = { step: 'taken', from, name, after: events.at(-1)?.id ?? '' } as const;
  setRecord(desk, { ...record, exam: handOver(record.exam, step, timeIn(record, desk.clock())) });
  return null;
}
