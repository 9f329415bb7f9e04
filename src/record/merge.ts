// Two logs of one record become one by the events' ids: nothing is overwritten, and what contradicts is counted and not taken.

import type { RecordEvent } from './event.ts';

export interface Merged {
  /** this device's events as they stood, then those it lacked, in their own order */
  readonly events: readonly RecordEvent[];
  /** how many came in */
  readonly added: number;
  /** ids of events that both have and that do not say the same; this device's own stays */
  readonly contrary: readonly string[];
}

/** Members in one order, so that two copies of one event compare alike. */
const settled = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(settled)
    : typeof value === 'object' && value !== null
      ? Object.entries(value)
          .sort(([a], [b]) => (a < b ? -1 : 1))
          .map(([name, member]) => [name, settled(member)])
      : value;

const same = (one: RecordEvent, other: RecordEvent): boolean =>
  JSON.stringify(settled(one)) === JSON.stringify(settled(other));

/** `mine` with what only `theirs` has. */
export function mergeLogs(mine: readonly RecordEvent[], theirs: readonly RecordEvent[]): Merged {
  const byId = new Map(mine.map((event) => [event.id, event]));
  const fresh = new Map<string, RecordEvent>();
  const contrary = new Set<string>();
  for (const event of theirs) {
    const known = byId.get(event.id) ?? fresh.get(event.id);
    if (known === undefined) fresh.set(event.id, event);
    else if (!same(known, event)) contrary.add(event.id);
  }
  return { events: [...mine, ...fresh.values()], added: fresh.size, contrary: [...contrary] };
}
