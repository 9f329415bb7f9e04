// Vitals taken together make a set; a set never takes in a reading more than five minutes after its first.

import type { Vital } from '../../terms/index.ts';
import { type Chart, type EntryOf, timeOf } from '../chart.ts';
import { SET_MINUTES } from './set-length.ts';

export interface VitalSet {
  /** epoch ms of the first and the last reading */
  readonly from: number;
  readonly to: number;
  readonly vitals: readonly Vital[];
  readonly entries: readonly EntryOf<'vital'>[];
  /** minutes from the set before; null for the first */
  readonly minutesSince: number | null;
}

/** The sets in order, each with the minutes since the one before. */
export function setsOf(chart: Chart): readonly VitalSet[] {
  const groups: { readonly from: number; to: number; readonly entries: EntryOf<'vital'>[] }[] = [];
  for (const entry of chart.vitals) {
    const at = timeOf(entry);
    const open = groups.at(-1);
    if (open === undefined || at - open.from > SET_MINUTES * 60_000)
      groups.push({ from: at, to: at, entries: [entry] });
    else {
      open.to = at;
      open.entries.push(entry);
    }
  }
  return groups.map(({ from, to, entries }, index) => {
    const before = groups[index - 1]?.from;
    return {
      from,
      to,
      vitals: [...new Set(entries.map((entry) => entry.vital))],
      entries,
      minutesSince: before === undefined ? null : (from - before) / 60_000,
    };
  });
}
