// What keeping a record costs as it grows: one append beside ten and beside ten thousand events, opening, and folding.

import { fold } from '../../src/record/index.ts';
import { appendToLog, emptyEnd, openVault, readLog } from '../../src/record/store/index.ts';
import { memoryShelf } from '../record/store/memory-shelf.ts';
import type { Bench, Row } from './bench.ts';
import { eventsOf } from './events.ts';

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

export const benches: readonly Bench[] = [
  {
    title: 'Adding an utterance and its entry to a log: sealed and chained, all but the disk',
    method:
      'the middle of 300 times each, by turns; beside ten events is 1; the disk’s own cost is measured in the browser',
    run: async (): Promise<readonly Row[]> => {
      const [few = 0, many = 0] = await appendMs([10, 10_000]);
      return [
        { what: 'beside 10 events', medianMs: few, ratio: 1 },
        { what: 'beside 10,000 events', medianMs: many, ratio: many / few },
      ];
    },
  },
  {
    title: 'Opening and folding a long log',
    method:
      'one run each, after a warm one; opening is unsealing and verifying; folding 1,000 is 1, each by its event',
    run: async (): Promise<readonly Row[]> => {
      const { shelf, keys } = await shelfWith(10_000);
      await readLog(shelf, keys, 'bench');
      const start = performance.now();
      await readLog(shelf, keys, 'bench');
      const opening = performance.now() - start;
      const folding = [1000, 10_000, 100_000].map((count) => {
        const events = eventsOf(count);
        const began = performance.now();
        fold(events);
        return { count, ms: performance.now() - began };
      });
      const each = (folding[0]?.ms ?? 1) / 1000;
      const used = Math.round(process.memoryUsage().heapUsed / 1e6);
      return [
        { what: 'opening 10,000', medianMs: opening, ratio: opening / 10_000 / each },
        ...folding.map(({ count, ms }) => ({
          what: `folding ${count}`,
          medianMs: ms,
          ratio: ms / count / each,
        })),
        { what: `memory after it: ${used} MB of heap`, medianMs: 0, ratio: 0 },
      ];
    },
  },
];
