// Two ages or two sexes in one record: misheard, or said of another patient?

import { ageOf } from '../age.ts';
import type { Chart } from '../chart.ts';
import { sexOf } from '../told/sex.ts';
import { type Conflict, conflictOf } from './conflict.ts';

/** Ages that differ at all are asked about; what rests on the age stays open where they are far apart. */
export function twoAges(chart: Chart): readonly Conflict[] {
  const { told, entries } = chart.ask(ageOf);
  return told.length < 2
    ? []
    : [
        conflictOf(
          'two-ages',
          `Age ${told.join(' and ')} told of one patient. Which holds, or is it another patient?`,
          entries,
        ),
      ];
}

/** Male and female both told. */
export function twoSexes(chart: Chart): readonly Conflict[] {
  const { both, entries } = chart.ask(sexOf);
  return both
    ? [
        conflictOf(
          'two-sexes',
          'Male and female told of one patient. Which holds, or is it another patient?',
          entries,
        ),
      ]
    : [];
}
