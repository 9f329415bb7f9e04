// Keeps each event of a record under a key of its own, in order, and says so when it cannot.

import { type Signal, signal } from '@preact/signals';
import { createStore, del, delMany, get, getMany, keys, setMany, type UseStore } from 'idb-keyval';
import type { OpenRecord, RecordFacts } from '../desk/open-record.ts';

export interface Keeper {
  /** a sentence where something could not be kept, else null */
  readonly fault: Signal<string | null>;
  /** how much was handed over and is not kept yet */
  readonly unwritten: Signal<number>;
  /** keeps what is new in the record and remembers it as the open one; returns at once */
  keep(record: OpenRecord): void;
  /** settles when everything handed over so far is kept, or has failed */
  settled(): Promise<void>;
  /** the identifier of the record that was open last */
  lastOpen(): Promise<string | null>;
  forgetOpen(): Promise<void>;
  /** what is kept, latest start first */
  list(): Promise<readonly RecordFacts[]>;
  /** the stored events of one record, oldest first, as they were stored */
  events(id: string): Promise<readonly unknown[]>;
  remove(id: string): Promise<void>;
}

const UNKEPT = 'This record could not be kept on this device: a reload would lose what is new in it.';

const OPEN = 'open';
const factsKey = (id: string): IDBValidKey => ['record', id];
// The place in the log comes before the event's own id: keys are sorted, and two pages may write at one place.
const eventKey = (id: string, place: number, event: string): IDBValidKey => ['event', id, place, event];

const isFacts = (key: IDBValidKey): boolean => Array.isArray(key) && key[0] === 'record';
const isEventOf = (key: IDBValidKey, id: string): boolean =>
  Array.isArray(key) && key[0] === 'event' && key[1] === id;

interface Kept {
  readonly ids: Set<string>;
  /** the place of the next event */
  next: number;
}

const placeOf = (key: IDBValidKey | undefined): number =>
  Array.isArray(key) && typeof key[2] === 'number' ? key[2] : -1;

/** A keeper in the browser's own database. */
export function createKeeper(store: UseStore = createStore('fieldsay', 'kept')): Keeper {
  const fault = signal<string | null>(null);
  const unwritten = signal(0);
  const records = new Map<string, Kept>();
  let queue: Promise<void> = Promise.resolve();

  const write = async ({ facts, exam }: OpenRecord): Promise<void> => {
    const kept = records.get(facts.id) ?? { ids: new Set(), next: 0 };
    const fresh = exam.events.filter(({ id }) => !kept.ids.has(id));
    const rows = fresh.map((event, index): [IDBValidKey, unknown] => {
      return [eventKey(facts.id, kept.next + index, event.id), event];
    });
    try {
      await setMany([[factsKey(facts.id), facts], [OPEN, facts.id], ...rows], store);
      for (const { id } of fresh) kept.ids.add(id);
      kept.next += fresh.length;
      records.set(facts.id, kept);
      fault.value = null;
    } catch {
      fault.value = UNKEPT;
    }
  };

  const eventKeys = async (id: string): Promise<IDBValidKey[]> =>
    (await keys(store)).filter((key) => isEventOf(key, id));

  return {
    fault,
    unwritten,
    keep: (record) => {
      unwritten.value += 1;
      queue = queue
        .then(() => write(record))
        .finally(() => {
          unwritten.value -= 1;
        });
    },
    settled: () => queue,
    lastOpen: async () => (await get<string>(OPEN, store)) ?? null,
    forgetOpen: () => {
      queue = queue.then(() => del(OPEN, store)).catch(() => undefined);
      return queue;
    },
    list: async () => {
      const facts = await getMany<RecordFacts>((await keys(store)).filter(isFacts), store);
      return facts
        .filter((one) => one !== undefined)
        .toSorted((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
    },
    events: async (id) => {
      const found = await eventKeys(id);
      const ids = new Set(found.flatMap((key) => (Array.isArray(key) ? [String(key[3])] : [])));
      records.set(id, { ids, next: placeOf(found.at(-1)) + 1 });
      return getMany(found, store);
    },
    remove: async (id) => {
      await queue;
      await delMany([factsKey(id), ...(await eventKeys(id))], store);
      if ((await get(OPEN, store)) === id) await del(OPEN, store);
      records.delete(id);
    },
  };
}
