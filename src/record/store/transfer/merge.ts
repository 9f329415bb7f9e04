// Brings imported records into what is kept: by the identifiers of events, adding what is new and overwriting nothing.

import { canonical } from '../../chain/index.ts';
import { appendToLog, emptyEnd, readLog } from '../log/index.ts';
import { headKey } from '../places.ts';
import type { Keys } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import type { ExportedRecord } from './shape.ts';

export interface Merged {
  /** events that were added */
  readonly added: number;
  /** events that were here already */
  readonly here: number;
  /** events that are here with other content: what is here stays, what came is left in its file */
  readonly differ: readonly string[];
}

const idOf = (event: unknown): string => String((event as { readonly id?: unknown }).id);

/** Merges one record; all or nothing. */
export async function mergeRecord(shelf: Shelf, keys: Keys, coming: ExportedRecord): Promise<Merged> {
  const { facts, rows, summary } = coming;
  const isHere = (await shelf.get(headKey(facts.id))) !== undefined;
  const log = await readLog(shelf, keys, facts.id);
  const known = new Map(log.events.map((event) => [idOf(event), canonical(event)]));
  const fresh = rows.filter(({ event }) => !known.has(idOf(event)));
  const differ = rows.flatMap(({ event }) => {
    const mine = known.get(idOf(event));
    return mine === undefined || mine === canonical(event) ? [] : [idOf(event)];
  });
  if (fresh.length > 0 || !isHere) {
    const end = isHere || log.events.length > 0 ? log.verdict.end : await emptyEnd(facts.id);
    await appendToLog(shelf, keys, end, {
      facts: log.record?.facts ?? facts,
      summary: log.record?.summary ?? summary,
      events: fresh.map(({ event }) => event),
      open: false,
    });
  }
  return { added: fresh.length, here: rows.length - fresh.length, differ };
}
