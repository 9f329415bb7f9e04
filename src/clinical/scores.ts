// The four numbers of the record's `scores`: from the latest standing values, null where one is missing.

import type { Entry } from '../record/entry.ts';
import { burnsOf } from './burns/index.ts';
import { type Chart, chartOf } from './chart.ts';
import { gcsScore } from './score/gcs.ts';
import { meanArterialPressureScore, shockIndexScore } from './score/pressure.ts';

export interface Scores {
  /** 3 to 15; null with a component missing or NT */
  readonly gcs: number | null;
  /** pulse / systolic, to two decimals */
  readonly shockIndex: number | null;
  /** whole mmHg */
  readonly meanArterialPressure: number | null;
  /** percent of the body surface, superficial redness left out; null where no burn was found or none can be sized */
  readonly burnPercent: number | null;
}

export const scoresOf = (chart: Chart): Scores => ({
  gcs: gcsScore(chart).value,
  shockIndex: shockIndexScore(chart).value,
  meanArterialPressure: meanArterialPressureScore(chart).value,
  burnPercent: burnsOf(chart)?.percent ?? null,
});

/** The record's `scores`. `now` (epoch ms) changes none of them; it is taken so that all parts are asked alike. */
export const scores = (entries: readonly Entry[], _when: { readonly now: number }): Scores =>
  scoresOf(chartOf(entries));
