// How soon a spoken and a typed sentence stand on the screen, and how much memory listening takes, beside the goals.

import type { Bench, Row } from './bench.ts';
import { measureWords } from './word/measure.ts';

/** Goals: from the end of speech to the words, half of the sentences and nineteen of twenty within, ms; bytes. */
const GOAL = { half: 300, most: 800, memory: 150e6 } as const;

const SIDES = ['left', 'right'] as const;
const SITES = ['forearm', 'wrist', 'knee', 'ankle', 'elbow'] as const;
const SENTENCES = SITES.flatMap((site) =>
  SIDES.flatMap((side) => [`${side} ${site} swelling`, `no deformity of the ${side} ${site}`]),
);
const TYPED = SITES.flatMap((site) => SIDES.map((side) => `bruising of the ${side} ${site}`));

/** The value that so many of a hundred lie at or under. */
function percentile(times: readonly number[], hundredth: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil((hundredth / 100) * sorted.length) - 1)] ?? 0;
}

const rows = (what: string, times: readonly number[]): readonly Row[] => [
  {
    what: `${what}, p50 of ${times.length}`,
    medianMs: percentile(times, 50),
    ratio: percentile(times, 50) / GOAL.half,
  },
  {
    what: `${what}, p95 of ${times.length}`,
    medianMs: percentile(times, 95),
    ratio: percentile(times, 95) / GOAL.most,
  },
];

export const benches: readonly Bench[] = [
  {
    title: 'A sentence on its way to the screen, in Chromium (goals: p50 300 ms, p95 800 ms, 150 MB)',
    method:
      'flite speaks into a fake microphone; when a voice ended is found by laying the levels that the tap stamped with the wall clock over those of the file; drawn is the frame after; memory by measureUserAgentSpecificMemory',
    run: async (): Promise<readonly Row[]> => {
      const { words, entry, typed, memory, left } = await measureWords(SENTENCES, TYPED);
      const megabytes = memory === null ? 'not told' : `${Math.round(memory / 1e6)} MB`;
      return [
        ...rows('end of speech to the words as they stayed', words),
        ...rows('end of speech to the entry drawn', entry),
        ...rows('Enter to the entry drawn', typed),
        { what: `memory of page and worker: ${megabytes}`, medianMs: 0, ratio: (memory ?? 0) / GOAL.memory },
        { what: `sentences without a time: ${left} of ${SENTENCES.length}`, medianMs: 0, ratio: 0 },
      ];
    },
  },
];
