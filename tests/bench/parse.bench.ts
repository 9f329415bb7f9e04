// How long an utterance takes to read, beside cutting it into words alone, and how that grows with its length; run by hand
// or by the benchmark script.

import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import nlp from 'compromise/one';
import { createReader, type Reader } from '../../src/parse/index.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';
import { realReader } from '../talk-case.ts';
import type { Bench } from './bench.ts';

const DEMOS = ['ridge-fall', 'ski-evening'];
const LENGTHS = [10, 30, 100, 300, 1000];
const SAID = { heardAt: Date.UTC(2026, 4, 3, 20, 2, 0), zone: '-06:00' };

/** The utterances of the demo talks, without their comments and times. */
export const demoLines = (): readonly string[] =>
  DEMOS.flatMap((name) =>
    readFileSync(new URL(`../../public/demo/${name}.talk`, import.meta.url), 'utf8')
      .split('\n')
      .filter((line) => line.trim() !== '' && !/^[@#]/.test(line))
      .map((line) => line.replace(/^\[[^\]]*\]\s*/, '')),
  );

/** Median and ninety-fifth in a hundred, in nanoseconds. */
export interface Spread {
  readonly medianNs: number;
  readonly p95Ns: number;
}

export interface ParseFigures {
  readonly name: string;
  readonly lines: number;
  readonly createReaderMs: number;
  readonly read: Spread;
  /** `compromise/one` cutting the same lines into words, which reading does too */
  readonly words: Spread;
  readonly growth: readonly { readonly words: number; readonly nsPerWord: number; readonly ratio: number }[];
}

const nsOf = (act: () => unknown): number => {
  const start = performance.now();
  act();
  return (performance.now() - start) * 1e6;
};

// The least of several runs is the machine's own time; what is above it belongs to other programs.
const least = (runs: number, act: () => unknown): number =>
  Math.min(...Array.from({ length: runs }, () => nsOf(act)));

function spread(times: readonly number[]): Spread {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) => Math.round(sorted[Math.floor(sorted.length * share)] ?? 0);
  return { medianNs: at(0.5), p95Ns: at(0.95) };
}

const read = (reader: Reader, text: string): unknown => reader.read({ text, ...SAID }, reader.begin());

/** Demo talk run together and cut to so many words. */
function longTalk(lines: readonly string[], words: number): string {
  const all = lines.flatMap((line) => line.split(/\s+/));
  return Array.from({ length: words }, (_, i) => all[i % all.length]).join(' ');
}

/** Reads the demo talks, `runs` times each line; the reader is warm from one pass over all of it. */
export function benchParse(runs = 15): ParseFigures {
  const lines = demoLines();
  const files = grammarFiles();
  const createReaderMs = nsOf(() => createReader(files)) / 1e6;
  const reader = realReader();
  for (let pass = 0; pass < 5; pass++) for (const line of lines) read(reader, line);
  const perWord = LENGTHS.map((words) => {
    const text = longTalk(lines, words);
    return { words, nsPerWord: Math.round(least(runs, () => read(reader, text)) / words) };
  });
  const first = perWord[0]?.nsPerWord ?? 1;
  return {
    name: 'reading an utterance',
    lines: lines.length,
    createReaderMs,
    read: spread(lines.map((line) => least(runs, () => read(reader, line)))),
    words: spread(lines.map((line) => least(runs, () => nlp.tokenize(line).docs))),
    growth: perWord.map((one) => ({ ...one, ratio: Math.round((one.nsPerWord / first) * 100) / 100 })),
  };
}

const asRow = (what: string, ns: number, beside: number) => ({
  what,
  medianMs: Math.round(ns / 1000) / 1000,
  ratio: Math.round((ns / beside) * 100) / 100,
});

export const benches: readonly Bench[] = [
  {
    title: 'Reading an utterance of the demo talks, beside splitting its words',
    method:
      'least of 15 runs for each line, warm; the median and the 95th of 100 lines; compromise/one tokenising alone is 1',
    run: () => {
      const { read: ours, words, growth } = benchParse();
      return [
        asRow('splitting the words alone, median', words.medianNs, words.medianNs),
        asRow('reading, median', ours.medianNs, words.medianNs),
        asRow('reading, 95th of 100', ours.p95Ns, words.medianNs),
        ...growth.map(({ words: count, nsPerWord }) =>
          asRow(
            `a word of ${count} (beside a word of ${growth[0]?.words})`,
            nsPerWord,
            growth[0]?.nsPerWord ?? nsPerWord,
          ),
        ),
      ];
    },
  },
];
