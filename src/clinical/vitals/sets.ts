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
  const groups: EntryOf<'vital'>[][] = [];
  for (const entry of chart.vitals) {
    const open = groups.at(-1);
    const first = open?.[0];
    if (open === undefined || first === undefined || timeOf(entry) - timeOf(first) > SET_MINUTES * 60_000)
      groups.push([entry]);
    else open.push(entry);
  }
  const times = groups.map((entries) => entries.map(timeOf));
  return groups.map((entries, index) => {
    const from = Math.min(...(times[index] ?? []));
    const before = times[index - 1]?.[0];
    return {
      from,
      to: Math.max(...(times[index] ?? [])),
      vitals: [...new Set(entries.map((entry) => entry.vital))],
      entries,
      minutesSince: before === undefined ? null : (from - before) / 60_000,
    };
  });
}
