// A vital sign as it is read from its words, and the bounds that no number of a patient leaves.

import type { VitalReading, VitalStatement } from '../../../terms/index.ts';
import type { HowKnown } from '../talk.ts';

export interface VitalRead {
  readonly statement: VitalStatement;
  readonly known: HowKnown;
}

/** What a kind's own reader gives: its value and how that was known; null where a number in it cannot be. */
export type Read = { readonly reading: VitalReading; readonly known?: HowKnown } | null;

export type Bounds = readonly [least: number, most: number];

// What a number of each kind can be at all. Bounds are wide: they catch what was misheard, not what is ill.
// NEMSIS v3.5.1 gives SBP and HR 0-500, RR 0-300, SpO2 0-100, temperature 0-50 (reference, 9.5); ours are tighter where
// no living or newly dead patient can have more (common practice, no source).
export const BOUNDS = {
  pulse: [0, 300],
  respirations: [0, 100],
  systolic: [0, 300],
  diastolic: [0, 200],
  percent: [0, 100],
  celsius: [10, 46],
  mgPerDl: [10, 1500],
  millimetres: [0.5, 10],
  refill: [0, 30],
  painScore: [0, 10],
  orientation: [0, 4],
} as const satisfies Record<string, Bounds>;

/** True for a number within these bounds, both included. */
export const isWithin = (value: number | null, [least, most]: Bounds): value is number =>
  value !== null && value >= least && value <= most;

/** True for a whole number within these bounds, both included. */
export const isWholeWithin = (value: number | null, bounds: Bounds): value is number =>
  Number.isInteger(value) && isWithin(value, bounds);
