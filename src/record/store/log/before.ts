// Takes over what the first version kept: events in the open, one under a key of its own; none is left behind or lost.

import type { Keys } from '../sealed.ts';
import type { Key, Shelf } from '../shelf.ts';
import { appendToLog, emptyEnd } from './append.ts';
import type { RecordFacts } from './facts.ts';

/** How the first version named what it kept: `['record', id]`, `['event', id, place, event id]`, and `open`. */
const FACTS: Key = ['record'];
const eventsOf = (record: string): Key => ['event', record];

const isFacts = (value: unknown): value is RecordFacts =>
  typeof value === 'object' &&
  value !== null &&
  'id' in value &&
  typeof value.id === 'string' &&
  'startedAt' in value &&
  typeof value.startedAt === 'string';

const startOf = (facts: unknown): number => Date.parse((facts as RecordFacts).startedAt);

/**
 * Seals and chains every record of the first version and removes it in the open. A record is taken over whole or not at
 * all, so this may be broken off anywhere; the one begun last is opened at the start. Gives how many were taken over. What the disk itself still holds of deleted
 * rows is beyond a page's reach.
 */
export async function takeOverOpenRecords(shelf: Shelf, keys: Keys): Promise<number> {
  const found = (await shelf.under(FACTS))
    .filter(({ value }) => isFacts(value))
    .toSorted((a, b) => startOf(a.value) - startOf(b.value));
  for (const { key, value } of found) {
    const facts = value as RecordFacts;
    const events = (await shelf.under(eventsOf(facts.id))).map((one) => one.value);
    const under: Shelf = {
      ...shelf,
      write: (write) => shelf.write({ ...write, remove: [key], removeUnder: [eventsOf(facts.id)] }),
    };
    await appendToLog(under, keys, await emptyEnd(facts.id), { facts, summary: {}, events, open: true });
  }
  return found.length;
}
