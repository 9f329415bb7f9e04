// The four numbers of the record's `scores`: from the latest standing values, null where one is missing.

import type { Entry } from '../record/entry.ts';
import { type Burns, burnsOf } from './burns/index.ts';
import { chartOf } from './chart.ts';
import { gcsScore } from './score/gcs.ts';
import { meanArterialPressureScore, shockIndexScore } from './score/pressure.ts';
import type { Score, ScoreName } from './score/score.ts';

export interface Scores {
  /** 3 to 15; null with a component missing or NT */
  readonly gcs: number | null;
  /** pulse / systolic, to two decimals; null where they were not taken together */
  readonly shockIndex: number | null;
  /** whole mmHg */
  readonly meanArterialPressure: number | null;
  /** percent of the body surface, superficial redness left out; null where no burn was found, none can be sized, or one was denied since */
  readonly burnPercent: number | null;
}

/** The four numbers among what was worked out. */
export function scoresOf(cards: readonly Score[], burns: Burns | null): Scores {
  const value = (name: ScoreName): number | null => cards.find((card) => card.score === name)?.value ?? null;
  return {
    gcs: value('gcs'),
    shockIndex: value('shock-index'),
    meanArterialPressure: value('mean-arterial-pressure'),
    burnPercent: burns?.percent ?? null,
  };
}

/** The record's `scores`. `now` (epoch ms) changes none of them; it is taken so that all parts are asked alike. */
export function scores(entries: readonly Entry[], _when: { readonly now: number }): Scores {
  const chart = chartOf(entries);
  return scoresOf(
    [gcsScore(chart), shockIndexScore(chart), meanArterialPressureScore(chart)],
    burnsOf(chart),
  );
}
