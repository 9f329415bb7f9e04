// Keeps what is new in a record, in order, and calls it kept only when it is on the disk; until then it tries again.

import { type Signal, signal } from '@preact/signals';
import {
  createWitness,
  isStoreFailure,
  type Keys,
  listRecords,
  OPEN_KEY,
  type ReadLog,
  type RecordRow,
  type Shelf,
  type Witness,
} from '../../record/store/index.ts';
import type { OpenRecord } from '../desk/open-record.ts';
import type { Door } from './door.ts';
import { createKeptLogs, type KeptSoFar } from './kept-logs.ts';
import { summaryOf } from './summary.ts';
import { notKept } from './words.ts';

export interface Listed {
  /** latest start first */
  readonly records: readonly Pick<RecordRow, 'facts' | 'summary'>[];
  /** records whose name cannot be read */
  readonly unnamed: readonly string[];
  /** records that were kept here, and were removed other than by this page */
  readonly gone: readonly string[];
}

export interface Keeper {
  /** a sentence where something could not be kept, else null */
  readonly fault: Signal<string | null>;
  /** how many records have something that is not on the disk yet */
  readonly unwritten: Signal<number>;
  readonly kept: Signal<KeptSoFar | null>;
  /** keeps what is new in the record and remembers it as the open one; returns at once */
  keep(record: OpenRecord): void;
  /** settles when everything handed over so far is kept, or has failed */
  settled(): Promise<void>;
  /** the identifier of the record that was open last */
  lastOpen(): Promise<string | null>;
  forgetOpen(): Promise<void>;
  /** every record: those on the disk, and those that are not there yet */
  list(): Promise<Listed>;
  /** a record of which something is not on the disk yet, as it was handed over last */
  unkept(id: string): OpenRecord | null;
  /** a record's log, verified; what is new is added after it from now on */
  read(id: string): Promise<ReadLog>;
  remove(id: string): Promise<void>;
  /** forgets that a record that is gone was ever here */
  forgetGone(id: string): void;
}

/** After a failure it is tried again by itself, ms. */
const AGAIN = 10_000;

/**
 * A keeper on a shelf; it waits while the door is shut. A page that follows keeps nothing. `makeRoom` is asked where the
 * device is full, and gives how many things it let go.
 */
export function createKeeper(
  shelf: Shelf,
  door: Door,
  mayWrite: () => boolean,
  makeRoom: () => Promise<number> = async () => 0,
  witness: Witness = createWitness(null),
): Keeper {
  const fault = signal<string | null>(null);
  const unwritten = signal(0);
  const kept = signal<KeptSoFar | null>(null);
  const pending = new Map<string, OpenRecord>();
  let pumping: Promise<void> | null = null;
  let triesAgain = false;

  const needKeys = (): Keys => {
    const keys = door.keys();
    if (keys === null) throw new Error('the door is shut');
    return keys;
  };
  const logs = createKeptLogs(shelf, needKeys, witness);

  const pump = async (): Promise<void> => {
    while (pending.size > 0) {
      if (door.now.value.state === 'without') await door.start();
      const state = door.now.value;
      if (state.state === 'without') return fail(`NOT KEPT on this device: ${state.why}`);
      if (state.state !== 'open') return;
      const [record] = pending.values();
      if (record === undefined) return;
      try {
        kept.value = await logs.write(record, [...pending.keys()].at(-1) === record.facts.id);
      } catch (error) {
        if (await madeRoom(error)) continue;
        return fail(notKept(error));
      }
      // What was handed over while this was written is newer, and still waits.
      if (pending.get(record.facts.id) === record) pending.delete(record.facts.id);
      unwritten.value = pending.size;
      fault.value = null;
    }
  };
  const madeRoom = async (error: unknown): Promise<boolean> => {
    if (!isStoreFailure(error) || error.failure !== 'full') return false;
    return (await makeRoom().catch(() => 0)) > 0;
  };
  const fail = (why: string): void => {
    fault.value = why;
    if (triesAgain) return;
    triesAgain = true;
    setTimeout(() => {
      triesAgain = false;
      void run();
    }, AGAIN);
  };
  const run = (): Promise<void> => {
    pumping ??= pump().finally(() => {
      pumping = null;
      // What was handed over while it ended must not wait for the next.
      if (pending.size > 0 && fault.peek() === null && door.now.peek().state === 'open') void run();
    });
    return pumping;
  };
  door.now.subscribe(({ state }) => {
    if (state === 'open') void run();
    if (state === 'locked') forget();
  });
  /** A locked page holds nothing that was read or said. */
  const forget = (): void => {
    logs.forgetAll();
    kept.value = null;
  };

  return {
    fault,
    unwritten,
    kept,
    read: logs.read,
    keep: (record) => {
      if (!mayWrite()) return;
      // Taken out first, so that the record handed over last is the last in order, and the one opened at the next start.
      pending.delete(record.facts.id);
      pending.set(record.facts.id, record);
      unwritten.value = pending.size;
      void run();
    },
    settled: async () => {
      while (pumping !== null) await pumping;
    },
    lastOpen: async () => ((await shelf.get(OPEN_KEY)) as string | undefined) ?? null,
    forgetOpen: async () => {
      await pumping;
      await shelf.write({ remove: [OPEN_KEY] }).catch(() => undefined);
    },
    list: async () => {
      const fresh = [...pending.values()].map((record) => ({ ...record, summary: { ...summaryOf(record) } }));
      const kept = door.keys() === null ? { records: [], unnamed: [] } : await listRecords(shelf, needKeys());
      const here = new Set((await shelf.keysUnder(['head'])).map((key) => String(key[1])));
      const older = kept.records.filter(({ facts }) => !fresh.some((one) => one.facts.id === facts.id));
      const records = [...fresh, ...older].toSorted(
        (a, b) => Date.parse(b.facts.startedAt) - Date.parse(a.facts.startedAt),
      );
      const state = door.now.value;
      // What is locked for an examination begun under the lock is no damage, and is not shown at all.
      const isForOne = state.state === 'open' && state.by === 'one';
      const gone = witness.records().filter((id) => !here.has(id) && !pending.has(id));
      return { records, unnamed: isForOne ? [] : kept.unnamed, gone: isForOne ? [] : gone };
    },
    unkept: (id) => pending.get(id) ?? null,
    remove: async (id) => {
      await pumping;
      pending.delete(id);
      const open = await shelf.get(OPEN_KEY);
      await shelf.write({
        remove: [['head', id], ...(open === id ? [OPEN_KEY] : [])],
        removeUnder: [
          ['row', id],
          ['clip', id],
        ],
      });
      logs.forget(id);
      witness.forget(id);
    },
    forgetGone: witness.forget,
  };
}
