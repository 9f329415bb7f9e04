// The logs of records on the disk, so far as this page knows them: what is new in a record is added after what is there.

import {
  appendToLog,
  emptyEnd,
  type Head,
  isStoreFailure,
  type Keys,
  type ReadLog,
  readLog,
  type Shelf,
  type Witness,
} from '../../record/store/index.ts';
import type { OpenRecord } from '../desk/open-record.ts';
import { summaryOf } from './summary.ts';

/** How much of a record is on the disk. */
export interface KeptSoFar {
  readonly record: string;
  readonly events: number;
}

export interface KeptLogs {
  /** a record's log, verified; what is new is added after it from now on */
  readonly read: (id: string) => Promise<ReadLog>;
  /** adds what is new in the record; `open`: it is the one that is open. Rejects with what the disk says */
  readonly write: (record: OpenRecord, open: boolean) => Promise<KeptSoFar>;
  readonly forget: (id: string) => void;
  readonly forgetAll: () => void;
}

/** What of a record's log is known to be on the disk. */
interface Log {
  readonly end: Head;
  readonly ids: Set<string>;
  readonly events: number;
  readonly last: string | null;
}

/** Logs on a shelf; `keys` throws where there are none. */
export function createKeptLogs(shelf: Shelf, keys: () => Keys, witness: Witness): KeptLogs {
  const logs = new Map<string, Log>();
  const contradicted = new Set<string>();

  const read = async (id: string): Promise<ReadLog> => {
    const log = await readLog(shelf, keys(), id, witness.of(id));
    // What contradicts the witness must be said again at every opening: it is not to be taught otherwise.
    if (log.verdict.faults.some(({ fault: kind }) => kind === 'put-back')) contradicted.add(id);
    else if (log.verdict.faults.length === 0) witness.note(id, log.verdict.end);
    const ids = new Set(log.events.flatMap((event) => idOf(event) ?? []));
    const last = idOf(log.events.at(-1));
    logs.set(id, { end: log.verdict.end, ids, events: log.events.length, last });
    return log;
  };

  const add = async (record: OpenRecord, open: boolean): Promise<KeptSoFar> => {
    const { facts, exam } = record;
    const log = logs.get(facts.id) ?? {
      end: await emptyEnd(facts.id),
      ids: new Set<string>(),
      events: 0,
      last: null,
    };
    const fresh = freshIn(exam.events, log);
    const addition = { facts, summary: { ...summaryOf(record) }, events: fresh, open };
    const end = await appendToLog(shelf, keys(), log.end, addition);
    if (!contradicted.has(facts.id)) witness.note(facts.id, end);
    for (const { id } of fresh) log.ids.add(id);
    logs.set(facts.id, {
      end,
      ids: log.ids,
      events: exam.events.length,
      last: exam.events.at(-1)?.id ?? null,
    });
    return { record: facts.id, events: exam.events.length };
  };

  const write = async (record: OpenRecord, open: boolean): Promise<KeptSoFar> => {
    try {
      return await add(record, open);
    } catch (error) {
      if (!isStoreFailure(error) || error.failure !== 'taken') throw error;
      // Another page wrote to this log: what is new here goes after what is new there, and both stand.
      await read(record.facts.id);
      return add(record, open);
    }
  };

  return {
    read,
    write,
    forget: (id) => void logs.delete(id),
    forgetAll: () => logs.clear(),
  };
}

const idOf = (event: unknown): string | null =>
  typeof event === 'object' && event !== null && 'id' in event && typeof event.id === 'string'
    ? event.id
    : null;

/** The events that are not on the disk; they are at the end, unless the log was merged with another page's. */
function freshIn(events: OpenRecord['exam']['events'], log: Log): OpenRecord['exam']['events'] {
  const isPrefix = log.events === 0 || (log.last !== null && events[log.events - 1]?.id === log.last);
  return isPrefix ? events.slice(log.events) : events.filter(({ id }) => !log.ids.has(id));
}
