// What was passed on becomes a record here, or is added to the one that is here already; a fault is named and nothing changes.

import { handOver, mergeLogs, migrate, type RecordEvent } from '../../record/index.ts';
import { type ExportedRecord, isSealed, readExport } from '../../record/store/transfer/index.ts';
import { type Desk, setRecord, type TalkReader, timeIn } from '../desk/index.ts';
import { restored } from '../records/restore.ts';

export type Received =
  | { readonly kind: 'received'; readonly words: string }
  /** it asks for a passphrase; `why` where one was given and did not open it */
  | { readonly kind: 'sealed'; readonly why: string | null }
  | { readonly kind: 'refused'; readonly why: string };

export type Way = 'symbols' | 'file';

const refused = (why: string): Received => ({ kind: 'refused', why });

/** Opens what was received; nothing of a record is stored unless all of it could be read. */
export async function receive(
  desk: Desk,
  reader: TalkReader,
  { text, passphrase, by }: { readonly text: string; readonly passphrase: string; readonly by: Way },
): Promise<Received> {
  const asks = isSealed(text);
  if (asks && passphrase === '') return { kind: 'sealed', why: null };
  const read = await readExport(text, passphrase);
  if (read.kind === 'refused') return asks ? { kind: 'sealed', why: read.why } : refused(read.why);
  if (read.records.length === 0) return refused(`${read.faults.join('; ')}. Nothing was changed here.`);
  await desk.keeper.settled();
  const words: string[] = [];
  for (const record of read.records) words.push(await takeIn(desk, reader, record, by));
  return { kind: 'received', words: [...words, ...read.faults.map((one) => `Not taken: ${one}.`)].join(' ') };
}

/** Adds the events that are new here, opens the record, and says what was done. */
async function takeIn(desk: Desk, reader: TalkReader, coming: ExportedRecord, by: Way): Promise<string> {
  const theirs = coming.rows.map(({ event }) => migrate(event)).flatMap(eventIn);
  const { records } = await desk.keeper.list();
  const known = records.find((one) => one.facts.id === coming.facts.id);
  const stored = known === undefined ? [] : (await desk.keeper.read(coming.facts.id)).events;
  const { events, added, contrary } = mergeLogs(stored.map(migrate).flatMap(eventIn), theirs);
  const { record } = restored(desk, reader, known?.facts ?? coming.facts, events);
  const step = { step: 'received', by, events: added } as const;
  const kept =
    added === 0 ? record : { ...record, exam: handOver(record.exam, step, timeIn(record, desk.clock())) };
  setRecord(desk, kept);
  const odd =
    contrary.length === 0
      ? ''
      : ` ${contrary.length} say something else here than there: what stood here was kept.`;
  return known === undefined
    ? `The record was received: ${added} events, and is open now.${odd}`
    : `The record was here already: ${added} events were added, none was overwritten.${odd}`;
}

const eventIn = (one: ReturnType<typeof migrate>): readonly RecordEvent[] =>
  one.kind === 'event' ? [one.event] : [];
