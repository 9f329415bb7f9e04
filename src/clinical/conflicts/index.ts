// Promises to ask, of entries that are at odds or unlikely, one short question each; nothing is settled here.

import { SITES } from '../../terms/index.ts';
import type { Chart, Rule } from '../chart.ts';
import { MEASURES } from '../vitals/measures.ts';
import { onAmputated } from './amputated.ts';
import type { Conflict } from './conflict.ts';
import { nothingAndSomething, oppositeCsm, oppositeFindings, wholeAndNot } from './opposite.ts';
import { twoAges, twoSexes } from './patients.ts';
import { careWithoutFinding, PAIRED_REGIONS, sideJumps, unlikePupils, unlikeStrength } from './sides.ts';
import { jumps, sums, timesFarBack, units } from './values.ts';

export type { Conflict } from './conflict.ts';

const each =
  <T>(of: readonly T[]) =>
  (rule: (chart: Chart, one: T) => readonly Conflict[]): readonly Rule<readonly Conflict[]>[] =>
    of.map((one) => (chart: Chart) => rule(chart, one));

/** In the order shown: two patients in one, opposite answers, sides, values, and what was said or done where it cannot be. */
export const CONFLICT_RULES: readonly Rule<readonly Conflict[]>[] = [
  twoAges,
  twoSexes,
  ...each(SITES)(oppositeFindings),
  ...each(['hand', 'foot'] as const)(oppositeCsm),
  ...each(['hand', 'foot'] as const)(wholeAndNot),
  ...each(SITES)(nothingAndSomething),
  ...each(PAIRED_REGIONS)(sideJumps),
  unlikePupils,
  unlikeStrength,
  ...each(MEASURES)(jumps),
  ...each(MEASURES)(units),
  sums,
  timesFarBack,
  onAmputated,
  careWithoutFinding,
];
