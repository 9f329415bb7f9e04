// Reading talk beside what else a user could pick: a general tagger, a reader of dates, a generated parser of vital signs.

import nlp from 'compromise/one';
import { realReader } from '../talk-case.ts';
import type { Bench, Row } from './bench.ts';
import { dates, generated, tagger } from './others.ts';
import { sampledLines } from './sampled.ts';

const SAID = { heardAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' };
const SIGNS = [
  'pulse ninety two',
  'bp 118 over 76',
  'resps 18',
  'sats 97 percent',
  'pulse 112, bp 96 over 60, resps 24',
  'pressure is one ten over seventy',
];

interface Way {
  readonly what: string;
  readonly read: (line: string) => unknown;
}

/** Each line once by each way, by turns, warm; the middle and the ninety-ninth in a hundred of each way's lines. */
function timed(ways: readonly Way[], lines: readonly string[]) {
  for (const { read } of ways) for (const line of lines.slice(0, 300)) read(line);
  const times = ways.map((): number[] => []);
  for (const line of lines)
    for (const [at, { read }] of ways.entries()) {
      const start = performance.now();
      read(line);
      times[at]?.push(performance.now() - start);
    }
  return times.map((all) => {
    const sorted = all.toSorted((a, b) => a - b);
    const part = (share: number): number => sorted[Math.floor(sorted.length * share)] ?? 0;
    return { median: part(0.5), late: part(0.99) };
  });
}

function rows(ways: readonly Way[], lines: readonly string[]): readonly Row[] {
  const spreads = timed(ways, lines);
  const floor = spreads[0] ?? { median: 1, late: 1 };
  return ways.flatMap(({ what }, at) => {
    const { median, late } = spreads[at] ?? { median: 0, late: 0 };
    return [
      { what: `${what}, median`, medianMs: median, ratio: median / floor.median },
      { what: `${what}, 99th of 100`, medianMs: late, ratio: late / floor.late },
    ];
  });
}

const words: Way = { what: 'splitting the words alone', read: (line) => nlp.tokenize(line).docs };

function ours(): Way {
  const reader = realReader();
  return { what: 'ours', read: (text) => reader.read({ text, ...SAID }, reader.begin()) };
}

export const benches: readonly Bench[] = [
  {
    title: 'Reading 5,000 sampled utterances, beside a general tagger and a reader of dates',
    method:
      'each line once by each way, by turns, warm; splitting the words alone is 1, its 99th for the 99th; sampled from the grammar with a seed',
    run: () =>
      rows(
        [
          words,
          ours(),
          { what: 'compromise/three with the words of the grammar', read: tagger() },
          { what: 'chrono-node, times alone', read: dates },
        ],
        sampledLines(5000),
      ),
  },
  {
    title: 'Reading four vital signs, beside a parser that peggy generated for them alone',
    method: '600 lines of six kinds, each once by each way, by turns, warm; splitting the words alone is 1',
    run: () =>
      rows(
        [words, ours(), { what: 'peggy, four rules', read: generated() }],
        Array.from({ length: 600 }, (_, i) => SIGNS[i % SIGNS.length] ?? ''),
      ),
  },
];
