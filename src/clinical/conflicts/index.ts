// Promises to ask, of entries that are at odds or unlikely, one short question each; nothing is settled here.

import type { Chart } from '../chart.ts';
import { onAmputated } from './amputated.ts';
import type { Conflict } from './conflict.ts';
import { nothingAndSomething, oppositeCsm, oppositeFindings } from './opposite.ts';
import { careWithoutFinding, notEqual, sideJumps } from './sides.ts';
import { jumps, sums, units } from './values.ts';

export type { Conflict } from './conflict.ts';

const RULES = [
  oppositeFindings,
  oppositeCsm,
  nothingAndSomething,
  sideJumps,
  notEqual,
  jumps,
  units,
  sums,
  onAmputated,
  careWithoutFinding,
];

export const conflictsOf = (chart: Chart): readonly Conflict[] => RULES.flatMap((rule) => rule(chart));
