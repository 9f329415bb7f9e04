// The burned share of the body surface by one chart: overlapping burns once, superficial redness not at all.

import type { FindingEntry } from '../said.ts';
import { rounded } from '../score/score.ts';
import type { BurnChart } from './charts.ts';
import { patchesOf, patchKey } from './patches.ts';
import { type Method, sharesOf } from './region.ts';

export interface BurnSaid {
  readonly entry: FindingEntry;
  /** percent where it was told in palms or percent, which then counts instead of the chart's area */
  readonly told: number | null;
}

export interface Estimate {
  readonly method: Method;
  /** percent of the body surface, to two decimals */
  readonly percent: number;
  /** burns at sites smaller than the chart's areas: not in the percentage */
  readonly unplaced: readonly FindingEntry[];
}

/** Adds up the burns on one chart. */
export function estimate(burns: readonly BurnSaid[], chart: BurnChart, method: Method): Estimate {
  const patches = patchesOf(chart);
  const taken = new Map<string, number>();
  const unplaced: FindingEntry[] = [];
  let told = 0;
  for (const burn of burns) {
    if (burn.told !== null) {
      told += burn.told;
      continue;
    }
    const shares = sharesOf(burn.entry, patches, method);
    if (shares === null) unplaced.push(burn.entry);
    for (const { patch, fraction, unsided } of shares ?? []) {
      const key = `${unsided ? 'side not said ' : ''}${patchKey(patch)}`;
      taken.set(key, Math.max(taken.get(key) ?? 0, patch.percent * fraction));
    }
  }
  const percent = [...taken.values()].reduce((sum, each) => sum + each, told);
  return { method, percent: rounded(Math.min(percent, 100), 2), unplaced };
}
