// The patient's age as told, in years, and never guessed: of two ages that cannot be one patient's neither counts.

import type { Chart, EntryOf } from './chart.ts';

export interface Age {
  /** years, with a fraction under one or two years; null where it was not said, or two ages were told that are far apart */
  readonly years: number | null;
  /** every age told, each once */
  readonly told: readonly number[];
  readonly entries: readonly EntryOf<'history'>[];
}

/** Ages no further apart than this are taken for a guess and a better one of the same patient; common practice, no source. */
const NEAR_YEARS = 5;

/** A child's age is told more closely than that. */
const isNear = (told: readonly number[]): boolean =>
  Math.max(...told) - Math.min(...told) <= Math.min(NEAR_YEARS, Math.max(1, Math.min(...told) / 4));

/** The latest age that was told in figures, unless another is far from it. */
export function ageOf(chart: Chart): Age {
  const entries = chart.told('age').filter((entry) => entry.years !== undefined);
  const latest = entries.at(-1);
  const told = [...new Set(entries.flatMap(({ years }) => years ?? []))];
  if (latest?.years === undefined) return { years: null, told, entries: [] };
  if (told.length === 1) return { years: latest.years, told, entries: [latest] };
  return { years: isNear(told) ? latest.years : null, told, entries };
}

/** What would settle the age. */
export const ageMissing = ({ told }: Age): string =>
  told.length < 2 ? 'age' : `which age holds: ${told.join(' or ')}`;

/** Age in whole years lived. */
export const wholeYears = (years: number): number => Math.floor(years);
