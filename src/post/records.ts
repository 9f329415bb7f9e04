// The records of the incident as their devices tell them: joined by the events' ids, each device's own order kept.

import * as v from 'valibot';
import { type Message, sha256 } from '../link/index.ts';
import { canonical } from '../record/chain/index.ts';
import { EMPTY, fold, migrate, type RecordEvent, type RecordState } from '../record/index.ts';
import type { RecordFacts } from '../record/store/index.ts';
import { eventShape } from '../record/store/transfer/index.ts';
import type { Spot } from './log.ts';

/** One event of a record, as one device sent it. */
interface Row {
  readonly device: string;
  readonly seq: number;
  /** counts the post's arrivals */
  readonly arrival: number;
  readonly id: string;
  readonly spot: Spot;
}

export interface PostRecord {
  readonly facts: RecordFacts;
  readonly rows: Row[];
  /** rises with every change */
  version: number;
  /** epoch ms, the post's clock */
  heardAt: number;
  /** the device that the first of it came from */
  readonly begunBy: string;
  /** every device that sent something of it first */
  readonly devices: Set<string>;
  /** the device that took it over last, else the one that began it */
  writer: string;
  /** devices that wrote to it after it had been handed over */
  readonly also: Set<string>;
  /** what is not taken in, in plain words */
  readonly refused: string[];
  /** the post's question, by its id, and what became of it in the record */
  readonly asked: Map<string, Asked>;
}

export interface Asked {
  /** id of the event that holds the question in the record */
  readonly event: string;
  readonly answer: string | null;
}

export type ReadBack = (spot: Spot) => Promise<Message | null>;

interface Folded {
  state: RecordState;
  fresh: RecordEvent[];
  dirty: boolean;
  /** one folding at a time */
  work: Promise<unknown>;
}

export interface Records {
  all(): readonly PostRecord[];
  get(id: string): PostRecord | null;
  /** `inOrder`: nothing of this device is missing before it, and nothing after it came earlier */
  admit(
    message: Message,
    from: {
      readonly device: string;
      readonly arrival: number;
      readonly at: number;
      readonly spot: Spot;
      readonly inOrder: boolean;
    },
  ): Promise<void>;
  /** the rows of a device are to be put in order anew, since one that was missing has come */
  disorder(device: string): void;
  state(id: string): Promise<RecordState>;
  events(id: string): Promise<readonly RecordEvent[]>;
}

/** Events that wait to be folded are held up to this many. */
const HELD = 200;

/** What is wrong with an event, or null. */
export function faultOf(event: unknown): string | null {
  const migrated = migrate(event);
  if (migrated.kind === 'refused') return migrated.why;
  const read = v.safeParse(eventShape(migrated.event.kind), migrated.event);
  if (read.success) return null;
  const [issue] = read.issues;
  return `${v.getDotPath(issue) ?? 'the whole'}: ${issue.message}`;
}

/** No records yet; `readBack` reads one message of the post's log again. */
export function createRecords(readBack: ReadBack): Records {
  const all = new Map<string, PostRecord>();
  const folded = new Map<string, Folded>();
  /** what each event said when it came first, so that a second copy is compared */
  const said = new Map<string, string>();

  const recordOf = (facts: RecordFacts, device: string): PostRecord => {
    const here = all.get(facts.id);
    if (here !== undefined) return here;
    const made: PostRecord = {
      facts,
      rows: [],
      version: 0,
      heardAt: 0,
      begunBy: device,
      devices: new Set(),
      writer: device,
      also: new Set(),
      refused: [],
      asked: new Map(),
    };
    all.set(facts.id, made);
    folded.set(facts.id, { state: EMPTY, fresh: [], dirty: false, work: Promise.resolve() });
    return made;
  };

  const ordered = (rows: readonly Row[]): readonly Row[] => {
    // A message that came late stands where its device made it: before all that the device made after it.
    const least = new Map<string, number>();
    const keyed = [...rows]
      .sort((a, b) => b.seq - a.seq)
      .map((row) => {
        const key = Math.min(row.arrival, least.get(row.device) ?? Number.POSITIVE_INFINITY);
        least.set(row.device, key);
        return { row, key };
      });
    return keyed
      .sort(
        (a, b) =>
          a.key - b.key ||
          (a.row.device < b.row.device ? -1 : a.row.device > b.row.device ? 1 : a.row.seq - b.row.seq),
      )
      .map(({ row }) => row);
  };

  const eventsOf = async (rows: readonly Row[]): Promise<readonly RecordEvent[]> => {
    const events: RecordEvent[] = [];
    for (const { spot } of rows) {
      const message = await readBack(spot);
      const migrated = migrate(message?.event);
      if (migrated.kind === 'event') events.push(migrated.event);
    }
    return events;
  };

  const bring = (id: string): Promise<RecordState> => {
    const now = folded.get(id);
    if (now === undefined) return Promise.resolve(EMPTY);
    const done = now.work.then(() => bringOne(id));
    now.work = done.catch(() => undefined);
    return done;
  };
  const bringOne = async (id: string): Promise<RecordState> => {
    const record = all.get(id);
    const now = folded.get(id);
    if (record === undefined || now === undefined) return EMPTY;
    if (now.dirty) {
      now.dirty = false;
      now.fresh = [];
      record.rows.splice(0, record.rows.length, ...ordered(record.rows));
      // What comes while these are read stands after them, and waits in `fresh`.
      now.state = fold(await eventsOf([...record.rows]));
    } else if (now.fresh.length > 0) {
      const { fresh } = now;
      now.fresh = [];
      now.state = fold(fresh, now.state);
    }
    return now.state;
  };

  return {
    all: () => [...all.values()],
    get: (id) => all.get(id) ?? null,
    admit: async (message, { device, arrival, at, spot, inOrder }) => {
      const record = recordOf(message.record, device);
      record.heardAt = Math.max(record.heardAt, at);
      record.version += 1;
      const fault = faultOf(message.event);
      const { id } = message.event;
      if (fault !== null) {
        record.refused.push(`message ${message.seq} of ${device} is kept and not shown: ${fault}`);
        return;
      }
      const name = `${record.facts.id} ${id}`;
      const text = await sha256(canonical(message.event));
      const before = said.get(name);
      if (before !== undefined) {
        // A record that was handed over comes a second time from its new writer.
        if (before !== text)
          record.refused.push(
            `message ${message.seq} of ${device} says something else than was said first in ${id}: what came first stays`,
          );
        return;
      }
      said.set(name, text);
      record.devices.add(device);
      const event = message.event as unknown as RecordEvent;
      follow(record, event, device);
      record.rows.push({ device, seq: message.seq, arrival, id, spot });
      const now = folded.get(record.facts.id);
      if (now === undefined) return;
      if (inOrder && !now.dirty) {
        now.fresh.push(event);
        if (now.fresh.length >= HELD) await bring(record.facts.id);
      } else {
        now.dirty = true;
        now.fresh = [];
      }
    },
    disorder: (device) => {
      for (const record of all.values()) {
        const now = folded.get(record.facts.id);
        if (now === undefined || !record.rows.some((row) => row.device === device)) continue;
        now.dirty = true;
        now.fresh = [];
        record.version += 1;
      }
    },
    state: bring,
    events: async (id) => {
      await bring(id);
      return eventsOf([...(all.get(id)?.rows ?? [])]);
    },
  };
}

/** Who writes it, and which of the post's questions it holds. */
function follow(record: PostRecord, event: RecordEvent, device: string): void {
  const step = event.kind === 'handed-over' ? event.payload : null;
  if (step?.step === 'taken') {
    record.writer = device;
    record.also.clear();
  } else if (device !== record.writer && step?.step !== 'passed') record.also.add(device);
  if (step?.step === 'question' && step.asked !== undefined)
    record.asked.set(step.asked, { event: event.id, answer: null });
  if (step?.step === 'answer')
    for (const [id, one] of record.asked)
      if (one.event === step.question) record.asked.set(id, { ...one, answer: step.text });
}
