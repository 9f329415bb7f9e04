// What keeping a record costs as it grows: one append beside ten, a thousand and a hundred thousand events, opening, and folding.

import { fold, type RecordEvent } from '../../src/record/index.ts';
import { appendToLog, emptyEnd, openVault, readLog } from '../../src/record/store/index.ts';
import { memoryShelf } from '../record/store/memory-shelf.ts';
import type { Bench, Row } from './bench.ts';
import { eventsOf } from './events.ts';
import { heldMb } from './held.ts';

const FACTS = { id: 'bench', kind: 'invented', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;

async function shelfWith(count: number) {
  // Rows by their place, without the sorting of the tests' shelf, so that its own cost does not grow with what lies in it.
  const lies = new Map<string, unknown>();
  const shelf = {
    ...memoryShelf(lies),
    write: async ({ add = [], put = [] }: Parameters<ReturnType<typeof memoryShelf>['write']>[0]) => {
      for (const { key, value } of [...add, ...put]) lies.set(JSON.stringify(key), value);
    },
  };
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  const { keys } = opened;
  const addition = { facts: FACTS, summary: {}, events: eventsOf(count), open: true };
  const end = await appendToLog(shelf, keys, await emptyEnd('bench'), addition);
  return { shelf, keys, end };
}

const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;

/** One utterance and its entry added beside each count by turns, sealed and chained; the middle of 300 times of each. */
async function appendMs(counts: readonly number[]): Promise<readonly number[]> {
  const logs = await Promise.all(counts.map((count) => shelfWith(count)));
  const events = eventsOf(2);
  const ends = logs.map(({ end }) => end);
  const times = counts.map((): number[] => []);
  for (let run = 0; run < 300; run += 1)
    for (const [index, { shelf, keys, end }] of logs.entries()) {
      const addition = { facts: FACTS, summary: {}, events, open: true };
      const start = performance.now();
      ends[index] = await appendToLog(shelf, keys, ends[index] ?? end, addition);
      times[index]?.push(performance.now() - start);
    }
  return times.map(middle);
}

/** Milliseconds to unseal and verify each log, read once before; the middle of three times, and of one for a long one. */
async function openMs(counts: readonly number[]): Promise<readonly number[]> {
  const times: number[] = [];
  for (const count of counts) {
    const { shelf, keys } = await shelfWith(count);
    await readLog(shelf, keys, 'bench');
    const runs: number[] = [];
    for (let run = 0; run < (count > 10_000 ? 1 : 3); run += 1) {
      const start = performance.now();
      await readLog(shelf, keys, 'bench');
      runs.push(performance.now() - start);
    }
    times.push(middle(runs));
  }
  return times;
}

/** A log unsealed, verified and folded, as a page keeps it while it is open; where it was read from is let go. */
async function openLog(count: number) {
  const { shelf, keys } = await shelfWith(count);
  const events = (await readLog(shelf, keys, 'bench')).events as readonly RecordEvent[];
  return { events, record: fold(events) };
}

const SIZES = [10, 1000, 100_000] as const;
const written = (count: number): string => count.toLocaleString('en');

/** Heap by its event; a short log takes too little to be told from what else the process does. */
async function heldRows(): Promise<readonly Row[]> {
  const counts = [10_000, 100_000];
  const held: number[] = [];
  for (const count of counts) held.push(await heldMb(() => openLog(count)));
  const each = (held[0] ?? 1) / 10_000;
  return counts.map((count, i) => ({
    what: `heap while open ${written(count)}`,
    medianMs: held[i] ?? 0,
    unit: 'MB',
    ratio: (held[i] ?? 0) / count / each,
  }));
}

export const benches: readonly Bench[] = [
  {
    title: 'Adding an utterance and its entry to a log: sealed and chained, all but the disk',
    method:
      'the middle of 300 times each, by turns; beside ten events is 1; the disk’s own cost is measured in the browser',
    run: async (): Promise<readonly Row[]> => {
      const times = await appendMs(SIZES);
      const one = times[0] ?? 0;
      return SIZES.map((count, i) => ({
        what: `beside ${written(count)} events`,
        medianMs: times[i] ?? 0,
        ratio: (times[i] ?? 0) / one,
      }));
    },
  },
  {
    title: 'Opening and folding a log, each by its event',
    method:
      'after a warm run: opening is unsealing and verifying, an event of 1,000 is 1; folding likewise; ten events have a cost of their own; heap is what an open log still takes once all waste is collected',
    run: async (): Promise<readonly Row[]> => {
      const opened = await openMs(SIZES);
      const folded = SIZES.map((count) => {
        const events = eventsOf(count);
        fold(events);
        const began = performance.now();
        fold(events);
        return performance.now() - began;
      });
      const rows = (what: string, times: readonly number[]): readonly Row[] => {
        const each = (times[SIZES.indexOf(1000)] ?? 1) / 1000;
        return SIZES.map((count, i) => ({
          what: `${what} ${written(count)}`,
          medianMs: times[i] ?? 0,
          ratio: (times[i] ?? 0) / count / each,
        }));
      };
      return [...rows('opening', opened), ...rows('folding', folded), ...(await heldRows())];
    },
  },
];
