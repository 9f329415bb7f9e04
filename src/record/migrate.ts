// Brings a stored event of any known format up to the present one, or says why it cannot be read.

import { EVENT_KINDS, FORMAT, type RecordEvent } from './event.ts';

export type Migrated =
  | { readonly kind: 'event'; readonly event: RecordEvent }
  | { readonly kind: 'refused'; readonly why: string };

const refused = (why: string): Migrated => ({ kind: 'refused', why });

/**
 * One stored event as the present format has it. Nothing is guessed: an event from a later version or without its
 * facts is refused with a reason and stays where it is stored.
 */
export function migrate(stored: unknown): Migrated {
  if (typeof stored !== 'object' || stored === null) return refused('not an event');
  const event = stored as Readonly<Record<string, unknown>>;
  const { format, id, device, seq, time, kind, payload } = event;
  if (typeof format !== 'number' || !Number.isInteger(format) || format < 1) {
    return refused('the event names no format');
  }
  if (format > FORMAT) return refused(`written in format ${format}; this version reads up to ${FORMAT}`);
  if (typeof id !== 'string' || typeof device !== 'string' || typeof time !== 'string') {
    return refused('the event lacks its id, device or time');
  }
  if (typeof seq !== 'number' || !Number.isInteger(seq) || seq < 1) return refused('the event has no number');
  if (!EVENT_KINDS.some((known) => known === kind)) return refused(`unknown kind of event: ${String(kind)}`);
  if (typeof payload !== 'object' || payload === null) return refused('the event has no payload');
  // The steps, oldest first, each from one format to the next. From 1 to 2 nothing that was there changed its meaning.
  return {
    kind: 'event',
    event: format === FORMAT ? (stored as RecordEvent) : ({ ...stored, format: FORMAT } as RecordEvent),
  };
}
