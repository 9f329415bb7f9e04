// Promises the published scores from the latest readings, each with its components, or null with what is missing.

import type { Chart, Rule } from '../chart.ts';
import { gcsScore } from './gcs.ts';
import { gcsPupilsScore } from './gcs-pupils.ts';
import { news2Score } from './news2.ts';
import { meanArterialPressureScore, shockIndexScore } from './pressure.ts';
import { responsivenessScore } from './responsiveness.ts';
import { revisedTraumaScore } from './revised-trauma.ts';
import type { Score } from './score.ts';

export { type ChildRange, childRanges } from './child-ranges.ts';
export { gcsReadings } from './gcs.ts';
export type { Score, ScoreName } from './score.ts';

const rules = (saturationScale: 1 | 2): readonly Rule<Score>[] => [
  gcsScore,
  gcsPupilsScore,
  responsivenessScore,
  meanArterialPressureScore,
  shockIndexScore,
  revisedTraumaScore,
  (chart) => news2Score(chart, saturationScale),
];

/** A rule for each score, in the order shown. Scale 2 only where a prescriber set the 88 to 92 % target. */
export const SCORE_RULES: Readonly<Record<1 | 2, readonly Rule<Score>[]>> = { 1: rules(1), 2: rules(2) };

/** Every score, in the order shown. `saturationScale` 2 only where a prescriber set the 88 to 92 % target. */
export const scoreCards = (chart: Chart, saturationScale: 1 | 2 = 1): readonly Score[] =>
  SCORE_RULES[saturationScale].map((rule) => rule(chart));
