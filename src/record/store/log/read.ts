// Reads a record's log and says what of it is whole; what is not stays where it lies.

import { eachOf, type Head, type Stored, type Verdict, verifyLog } from '../../chain/index.ts';
import { sha256 } from '../bytes.ts';
import { headKey, placeOf, rowKey } from '../places.ts';
import { type Keys, type Unsealed, unseal } from '../sealed.ts';
import type { Placed, Shelf } from '../shelf.ts';
import { type RecordRow, readRecordRow } from './facts.ts';

export interface ReadLog {
  /** what can be read, oldest first, each as it was stored */
  readonly events: readonly unknown[];
  readonly verdict: Verdict;
  /** null where it cannot be read */
  readonly record: RecordRow | null;
  /** the rows that cannot be read, as they lie */
  readonly damaged: readonly Placed[];
}

const WHY: Readonly<Record<Exclude<Unsealed['kind'], 'value'>, string>> = {
  'bytes-altered': 'its bytes were altered, or it was written for another place',
  'no-key': 'it was sealed under a key that is not here',
  'not-sealed': 'it is no sealed event',
};

const storedAt = (place: number, opened: Unsealed): Stored => {
  if (opened.kind !== 'value') return { place, kind: 'damaged', why: WHY[opened.kind] };
  const { event, previous } = (opened.value ?? {}) as { event?: unknown; previous?: unknown };
  return typeof previous === 'string' && event !== undefined
    ? { place, kind: 'event', event, previous }
    : { place, kind: 'damaged', why: 'it holds no event' };
};

/** The rows of a log from a place on, opened; a row with an unfit key counts as damaged at place 0. */
async function openRows(
  keys: Keys,
  rows: readonly Placed[],
): Promise<readonly { readonly row: Placed; readonly stored: Stored }[]> {
  return eachOf(rows, async (row) => {
    const place = Number(row.key[2]);
    return { row, stored: storedAt(place, await unseal(keys, placeOf(row.key), row.value)) };
  });
}

/** The whole log of a record, verified; `witness` is where it had come to at least, as far as that is known. */
export async function readLog(
  shelf: Shelf,
  keys: Keys,
  record: string,
  witness: Head | null = null,
): Promise<ReadLog> {
  const [top, rows] = await Promise.all([
    shelf.get(headKey(record)),
    shelf.under(rowKey(record, 0).slice(0, 2)),
  ]);
  const [opened, head] = await Promise.all([
    openRows(keys, rows),
    unseal(keys, placeOf(headKey(record)), top),
  ]);
  const row = head.kind === 'value' ? readRecordRow(head.value) : null;
  const log = opened.map(({ stored }) => stored);
  const verdict = await verifyLog(record, log, row?.head ?? null, sha256, witness);
  return {
    events: log.flatMap((one) => (one.kind === 'event' ? [one.event] : [])),
    verdict,
    record: row,
    damaged: opened.flatMap(({ row: lies, stored }) => (stored.kind === 'damaged' ? [lies] : [])),
  };
}

export interface Listed {
  readonly records: readonly RecordRow[];
  /** records whose name cannot be read: their log may still be */
  readonly unnamed: readonly string[];
}

/** Every record that is kept, latest start first. */
export async function listRecords(shelf: Shelf, keys: Keys): Promise<Listed> {
  const rows = await shelf.under(['head']);
  const opened = await Promise.all(
    rows.map(async ({ key, value }) => {
      const one = await unseal(keys, placeOf(key), value);
      return { id: String(key[1]), row: one.kind === 'value' ? readRecordRow(one.value) : null };
    }),
  );
  return {
    records: opened
      .flatMap(({ row }) => row ?? [])
      .toSorted((a, b) => Date.parse(b.facts.startedAt) - Date.parse(a.facts.startedAt)),
    unnamed: opened.flatMap(({ id, row }) => (row === null ? [id] : [])),
  };
}
