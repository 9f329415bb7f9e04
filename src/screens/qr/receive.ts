// What was passed on becomes a record here, or is added to the one that is here already; each fault is named by its field.

import { mergeLogs, migrate, type RecordEvent } from '../../record/index.ts';
import type { RecordFacts } from '../../record/store/index.ts';
import { type Desk, setRecord, type TalkReader } from '../desk/index.ts';
import { restored } from '../records/restore.ts';
import { SCHEMA, type Unpacked } from './pack.ts';

export type Received =
  | { readonly kind: 'received'; readonly words: string }
  | { readonly kind: 'refused'; readonly why: string };

const refused = (why: string): Received => ({ kind: 'refused', why });

const KINDS: readonly string[] = ['live', 'invented', 'opened'];

/** The facts, or the field that is wrong. */
function checkedFacts(facts: unknown): RecordFacts | string {
  if (typeof facts !== 'object' || facts === null) return 'facts';
  const { id, kind, title, startedAt } = facts as Readonly<Record<string, unknown>>;
  if (typeof id !== 'string' || !/^[\w.-]{1,100}$/.test(id)) return 'facts.id';
  if (typeof kind !== 'string' || !KINDS.includes(kind)) return 'facts.kind';
  if (typeof title !== 'string') return 'facts.title';
  if (typeof startedAt !== 'string' || Number.isNaN(Date.parse(startedAt))) return 'facts.startedAt';
  return { id, kind: kind as RecordFacts['kind'], title, startedAt };
}

/** Opens what was received; nothing is stored unless all of it could be read. */
export async function receive(
  desk: Desk,
  reader: TalkReader,
  { schema, facts, events }: Extract<Unpacked, { kind: 'contents' }>,
): Promise<Received> {
  if (schema !== SCHEMA)
    return refused(`It is no record of this page: its schema is ${JSON.stringify(schema)}.`);
  const checked = checkedFacts(facts);
  if (typeof checked === 'string') return refused(`The record cannot be taken: ${checked} is wrong.`);
  if (!Array.isArray(events)) return refused('The record cannot be taken: it has no events.');
  const theirs: RecordEvent[] = [];
  for (const [index, event] of events.entries()) {
    const read = migrate(event);
    if (read.kind === 'refused')
      return refused(
        `The record cannot be taken: its event ${index + 1} is ${read.why}. Nothing was changed here.`,
      );
    theirs.push(read.event);
  }
  await desk.keeper.settled();
  const { records } = await desk.keeper.list();
  const known = records.find((one) => one.facts.id === checked.id);
  const stored = known === undefined ? [] : (await desk.keeper.read(checked.id)).events;
  const mine = stored.map(migrate).flatMap((one) => (one.kind === 'event' ? [one.event] : []));
  const { events: all, added, contrary } = mergeLogs(mine, theirs);
  const { record } = restored(desk, reader, known?.facts ?? checked, all);
  setRecord(desk, record);
  const odd =
    contrary.length === 0
      ? ''
      : ` ${contrary.length} say something else here than there: what stood here was kept.`;
  return {
    kind: 'received',
    words:
      known === undefined
        ? `The record was received: ${added} events, and is open now.${odd}`
        : `The record was here already: ${added} events were added, none was overwritten.${odd}`,
  };
}
