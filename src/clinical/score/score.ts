// The shape of one worked-out score: its value or what it lacks, never a value with a part assumed.

import type { Entry } from '../../record/entry.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import type { Source } from '../source.ts';

export type ScoreName =
  | 'gcs'
  | 'gcs-pupils'
  | 'responsiveness'
  | 'mean-arterial-pressure'
  | 'shock-index'
  | 'revised-trauma-score'
  | 'news2';

export interface Score extends Reckoned {
  readonly score: ScoreName;
  /** null where something it needs is missing */
  readonly value: number | null;
  /** components before the sum, in the trade's short form */
  readonly text: string;
}

export const scoreOf = (
  score: ScoreName,
  value: number | null,
  text: string,
  entries: readonly Entry[],
  source: Source,
  missing: readonly string[] = [],
): Score => ({ score, value, text, ...reckoned(entries, source, missing) });

/** Rounded half up to so many decimals. */
export const rounded = (value: number, decimals: number): number =>
  Math.round((value + Number.EPSILON) * 10 ** decimals) / 10 ** decimals;
