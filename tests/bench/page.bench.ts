// What the built page costs in Chromium: bytes by part, first use, long tasks, frames and memory of a very long exam.

import type { Bench, Row } from './bench.ts';
import { type Built, withBuilt } from './page/built.ts';
import { partsOf } from './page/bytes.ts';
import { emptyPage, firstUse, SLOWER } from './page/first-use.ts';
import { type Cost, costOf } from './page/long-exam.ts';

const RUNS = 5;
const FEW = 10;
const MANY = 2000;
const LINES = [
  'swelling of the left cheek',
  'no bleeding of the nose',
  'pulse ninety two',
  'laceration of the right forearm three centimetres',
  'blood pressure one twenty over eighty',
];
const SIZES = [
  ['phone', 360, 740],
  ['desk', 1440, 900],
] as const;

const middle = (all: readonly number[]): number => all.toSorted((a, b) => a - b)[all.length >> 1] ?? 0;
const kB = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
/** A figure that is no time: it stands in the words. */
const figure = (what: string): Row => ({ what, medianMs: 0, ratio: 0 });

async function bytes(): Promise<readonly Row[]> {
  const parts = await withBuilt(async ({ folder }) => partsOf(folder));
  const scripts = parts.filter(({ first, name }) => first && name.endsWith('.js'));
  const all = scripts.reduce((sum, { packed }) => sum + packed, 0);
  return [
    figure(`scripts before the first use: ${kB(all)} as sent (90 kB at most)`),
    ...parts.map(({ name, bytes: whole, packed, first }) =>
      figure(`${name}: ${kB(packed)} as sent, ${kB(whole)} whole${first ? ', before the first use' : ''}`),
    ),
  ];
}

const first = () =>
  withBuilt(async ({ browser, address }): Promise<readonly Row[]> => {
    const empty: number[] = [];
    const fresh: { usable: number; read: number }[] = [];
    const kept: { usable: number; read: number }[] = [];
    // By turns, so that what else the machine does meets all of them.
    for (let run = 0; run < RUNS; run += 1) {
      empty.push(await emptyPage(browser, address));
      fresh.push(await firstUse(browser, address, false));
      kept.push(await firstUse(browser, address, true));
    }
    const one = middle(empty);
    const row = (what: string, times: readonly number[]): Row => ({
      what,
      medianMs: middle(times),
      ratio: middle(times) / one,
    });
    return [
      { what: 'an empty page', medianMs: one, ratio: 1 },
      row(
        'usable, from the network',
        fresh.map(({ usable }) => usable),
      ),
      row(
        'usable, from the device without a network',
        kept.map(({ usable }) => usable),
      ),
      row(
        'talk is read, from the network',
        fresh.map(({ read }) => read),
      ),
      row(
        'talk is read, from the device',
        kept.map(({ read }) => read),
      ),
    ];
  });

async function costIn(
  { browser, address }: Built,
  size: (typeof SIZES)[number],
  entries: number,
  slower: number,
) {
  const [, width, height] = size;
  const page = await (await browser.newContext({ viewport: { width, height } })).newPage();
  const cost = await costOf(page, address, entries, LINES, slower);
  await page.context().close();
  return cost;
}

const rowsOf = (name: string, few: Cost, many: Cost): readonly Row[] => [
  { what: `${name}, ${FEW} entries: longest frame with a new entry`, medianMs: few.frame, ratio: 1 },
  {
    what: `${name}, ${MANY} entries: longest frame with a new entry`,
    medianMs: many.frame,
    ratio: many.frame / few.frame,
  },
  {
    what: `${name}, ${MANY} entries: longest frame while scrolling`,
    medianMs: many.scrolling,
    ratio: many.scrolling / few.scrolling,
  },
  figure(
    `${name}: tasks of 50 ms or more: ${few.tasks} beside ${FEW} entries (longest ${few.task} ms), ${many.tasks} beside ${MANY} (longest ${many.task} ms)`,
  ),
  figure(
    `${name}: heap ${(few.heap / 1e6).toFixed(1)} MB with ${FEW} entries, ${(many.heap / 1e6).toFixed(1)} MB with ${MANY}`,
  ),
];

const long = (slower: number) => (): Promise<readonly Row[]> =>
  withBuilt(async (built) => {
    const rows: Row[] = [];
    for (const size of SIZES) {
      const few = await costIn(built, size, FEW, slower);
      const many = await costIn(built, size, MANY, slower);
      rows.push(...rowsOf(size[0], few, many));
    }
    return rows;
  });

export const benches: readonly Bench[] = [
  {
    title: 'What the page weighs, part by part',
    method: 'the built page, each part compressed by gzip; figures, no times',
    run: bytes,
  },
  {
    title: `First use in Chromium with the processor slowed ${SLOWER} times`,
    method: `ms from the start of the visit until the line to type in is drawn; the middle of ${RUNS}, by turns; an empty page is 1`,
    run: first,
  },
  {
    title: `A very long exam in Chromium: ${LINES.length} lines said beside ${MANY} entries`,
    method: `each on a page of its own; the same beside ${FEW} entries is 1; the screen draws a frame every 16.7 ms`,
    run: long(1),
  },
  {
    title: `The same with the processor slowed ${SLOWER} times`,
    method: `as above; tasks of 50 ms or more as the W3C’s Long Tasks counts them`,
    run: long(SLOWER),
  },
];
