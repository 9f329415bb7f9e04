// A stretch in which nothing was heard is named, so that nobody takes silence for an examination without findings.

import type { Entry } from '../record/entry.ts';
import { bySpokenOrder, heardOf } from './order.ts';

/** Silence longer than this is named; common practice, no source: the interval of vitals in an unstable patient. */
export const GAP_MINUTES = 5;

export interface Gap {
  /** ISO: when the last words before it were heard */
  readonly from: string;
  /** ISO: when the first words after it were heard */
  readonly to: string;
  readonly minutes: number;
}

/** The silences longer than `longerThan` minutes between entries, in order; struck and replaced ones were talk too. */
export function gaps(entries: readonly Entry[], longerThan: number = GAP_MINUTES): readonly Gap[] {
  const found: Gap[] = [];
  let before: Entry | null = null;
  for (const entry of bySpokenOrder(entries)) {
    if (before !== null) {
      const minutes = (heardOf(entry) - heardOf(before)) / 60_000;
      if (minutes > longerThan)
        found.push({ from: before.heardAt, to: entry.heardAt, minutes: Math.floor(minutes) });
    }
    before = entry;
  }
  return found;
}
