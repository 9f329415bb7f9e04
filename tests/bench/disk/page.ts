// Runs inside the browser: keeps invented records on the disk with the page's own store, and times each append.

import { fold, migrate } from '../../../src/record/index.ts';
import {
  appendToLog,
  createIdbShelf,
  emptyEnd,
  type Head,
  openVault,
  readLog,
} from '../../../src/record/store/index.ts';
import { eventsOf } from '../events.ts';

export interface OnDisk {
  /** milliseconds of each append, by turns beside few and beside many */
  readonly few: readonly number[];
  readonly many: readonly number[];
  /** milliseconds to read, verify and fold the long log */
  readonly openMs: number;
  readonly events: number;
  /** bytes of the page's own memory after that, where the browser tells */
  readonly heap: number | null;
}

const STEP = 500;

/** One utterance and its entry appended `runs` times to a log of `few` events and to one of `many`, by turns. */
export async function measure(few: number, many: number, runs: number): Promise<OnDisk> {
  const shelf = createIdbShelf();
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  const { keys } = opened;
  const append = (id: string, end: Head, from: number, count: number): Promise<Head> => {
    const facts = { id, kind: 'invented', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
    return appendToLog(shelf, keys, end, { facts, summary: {}, events: eventsOf(count, from), open: true });
  };
  const ends: Record<string, Head> = {};
  for (const [id, count] of [
    ['few', few],
    ['many', many],
  ] as const) {
    let end = await emptyEnd(id);
    for (let at = 0; at < count; at += STEP) end = await append(id, end, at, Math.min(STEP, count - at));
    ends[id] = end;
  }
  const times: Record<string, number[]> = { few: [], many: [] };
  for (let run = 0; run < runs; run += 1)
    for (const id of ['few', 'many']) {
      const end = ends[id] ?? (await emptyEnd(id));
      const start = performance.now();
      ends[id] = await append(id, end, end.count, 2);
      times[id]?.push(performance.now() - start);
    }
  const start = performance.now();
  const { events, verdict } = await readLog(shelf, keys, 'many');
  const state = fold(
    events.flatMap((event) => {
      const one = migrate(event);
      return one.kind === 'event' ? [one.event] : [];
    }),
  );
  const openMs = performance.now() - start;
  if (verdict.faults.length > 0 || state.entries.length === 0) throw new Error('the log is not whole');
  const { memory } = performance as { memory?: { usedJSHeapSize: number } };
  const heap = memory?.usedJSHeapSize ?? null;
  return { few: times.few ?? [], many: times.many ?? [], openMs, events: events.length, heap };
}

Object.assign(globalThis, { measure });
