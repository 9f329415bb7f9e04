// Adds events to the end of a record's log: sealed, chained, all or nothing, and never over another page's.

import { beginChain, type Head, linkAfter } from '../../chain/index.ts';
import { sha256 } from '../bytes.ts';
import { headKey, OPEN_KEY, placeOf, rowKey } from '../places.ts';
import { type Keys, seal } from '../sealed.ts';
import type { Placed, Shelf } from '../shelf.ts';
import type { RecordFacts, RecordRow } from './facts.ts';

export interface Addition {
  readonly facts: RecordFacts;
  readonly summary: Readonly<Record<string, unknown>>;
  readonly events: readonly unknown[];
  /** this record is the one that is opened at the next start */
  readonly open: boolean;
}

/** What one row of a log holds when it is opened. */
export interface LogRow {
  /** the event as it was stored, in the format of its time */
  readonly event: unknown;
  /** the hash of the one before */
  readonly previous: string;
}

export const emptyEnd = async (record: string): Promise<Head> => ({
  count: 0,
  hash: await beginChain(record, sha256),
});

/**
 * Writes the events after `end` in one transaction and gives the new end. It rejects with a `StoreFailure`: `taken`
 * where another page has written there meanwhile, and then nothing was written.
 */
export async function appendToLog(shelf: Shelf, keys: Keys, end: Head, addition: Addition): Promise<Head> {
  const { facts, summary, events, open } = addition;
  const rows: { readonly place: number; readonly row: LogRow }[] = [];
  let { count, hash } = end;
  for (const event of events) {
    count += 1;
    rows.push({ place: count, row: { event, previous: hash } });
    hash = await linkAfter(hash, event, sha256);
  }
  const head: Head = { count, hash };
  const record: RecordRow = { version: 1, facts, head, summary };
  const sealed = (key: Placed['key'], value: unknown): Promise<Placed> =>
    seal(keys, placeOf(key), value).then((made) => ({ key, value: made }));
  const [add, top] = await Promise.all([
    Promise.all(rows.map(({ place, row }) => sealed(rowKey(facts.id, place), row))),
    sealed(headKey(facts.id), record),
  ]);
  // Without events to add, the end of the log must still be where this page believes it.
  const absent = events.length === 0 ? [rowKey(facts.id, count + 1)] : [];
  await shelf.write({ absent, add, put: open ? [top, { key: OPEN_KEY, value: facts.id }] : [top] });
  return head;
}
