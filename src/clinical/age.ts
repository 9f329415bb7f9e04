// The patient's age as last told, in years, and never guessed.

import type { Chart, EntryOf } from './chart.ts';

export interface Age {
  /** years, with a fraction under one or two years; null where it was not said */
  readonly years: number | null;
  readonly entries: readonly EntryOf<'history'>[];
}

/** The latest age that was told in figures. */
export function ageOf(chart: Chart): Age {
  const told = chart.told('age').findLast((entry) => entry.years !== undefined);
  return told?.years === undefined ? { years: null, entries: [] } : { years: told.years, entries: [told] };
}

/** Age in whole years lived. */
export const wholeYears = (years: number): number => Math.floor(years);
