// How long one reckoning takes on a long invented examination; run by hand or by the benchmark script.

import { performance } from 'node:perf_hooks';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { FINDINGS, isPaired, SITES } from '../../src/terms/index.ts';
import {
  age,
  breaths,
  clock,
  csmAllFour,
  denied,
  found,
  gcs,
  minute,
  pressure,
  pulse,
  saturation,
  told,
} from '../clinical/build.ts';

/** About 400 entries: each site with six denials or findings, twelve sets of vitals, four rounds of the limbs' ends. */
export function longExam(): readonly Entry[] {
  const body = SITES.flatMap((site, index) =>
    FINDINGS.slice(0, 6).map((finding, turn) => {
      const side = isPaired(site) ? 'both' : null;
      const facts = { at: minute(index) };
      return (index * 6 + turn) % 17 === 0
        ? found(site, side, finding, facts)
        : denied(site, side, finding, facts);
    }),
  );
  const sets = Array.from({ length: 12 }, (_, set) => [
    pulse(80 + set * 3, set * 5),
    pressure(126 - set * 3, 80 - set, set * 5),
    breaths(16 + set, set * 5),
    saturation(98 - set, false, set * 5),
    gcs(4, 5, 6, set * 5),
  ]).flat();
  const ends = [0, 15, 30, 45].flatMap((at) => csmAllFour(at));
  return [age(42), told('mechanism', 'fell twenty feet'), ...body, ...sets, ...ends];
}

/** Median and slowest of so many reckonings, in milliseconds. */
export function benchClinical(runs = 200): {
  readonly name: string;
  readonly entries: number;
  readonly runs: number;
  readonly medianMs: number;
  readonly slowestMs: number;
} {
  const entries = longExam();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    reckon(entries, { now: clock(60) });
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return {
    name: 'one reckoning',
    entries: entries.length,
    runs,
    medianMs: times[Math.floor(runs / 2)] ?? 0,
    slowestMs: times.at(-1) ?? 0,
  };
}
