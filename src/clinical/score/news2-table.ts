// NEWS2 points for each reading, as published; no point is given for a reading that was not taken.

import type { Source } from '../source.ts';

/** The report asks to be acknowledged and its charts not to be redrawn; only its numbers are here. */
export const NEWS2_SOURCE: Source = {
  cite: 'Royal College of Physicians. National Early Warning Score (NEWS) 2. London: RCP, 2017 (chart 1)',
  mark: 'read',
};

/** Upper edge of each band (inclusive) with its points, lowest band first. */
type Bands = readonly (readonly [upTo: number, points: 0 | 1 | 2 | 3])[];

const TOP = Number.POSITIVE_INFINITY;

export const RESPIRATION: Bands = [
  [8, 3],
  [11, 1],
  [20, 0],
  [24, 2],
  [TOP, 3],
];
export const SPO2_SCALE_1: Bands = [
  [91, 3],
  [93, 2],
  [95, 1],
  [TOP, 0],
];
/** Scale 2 from 93 % up depends on oxygen: on air it is 0. */
export const SPO2_SCALE_2: Bands = [
  [83, 3],
  [85, 2],
  [87, 1],
  [92, 0],
];
export const SPO2_SCALE_2_ON_OXYGEN: Bands = [
  [94, 1],
  [96, 2],
  [TOP, 3],
];
export const SYSTOLIC: Bands = [
  [90, 3],
  [100, 2],
  [110, 1],
  [219, 0],
  [TOP, 3],
];
export const PULSE: Bands = [
  [40, 3],
  [50, 1],
  [90, 0],
  [110, 1],
  [130, 2],
  [TOP, 3],
];
export const TEMPERATURE: Bands = [
  [35.0, 3],
  [36.0, 1],
  [38.0, 0],
  [39.0, 1],
  [TOP, 2],
];

export const OXYGEN_POINTS = 2;
export const NOT_ALERT_POINTS = 3;

export type Points = 0 | 1 | 2 | 3;

export const pointsIn = (value: number, bands: Bands): Points =>
  bands.find(([upTo]) => value <= upTo)?.[1] ?? 0;

/** Points for a saturation. Scale 2 only where a target of 88 to 92 % was prescribed for hypercapnic failure. */
export function saturationPoints(percent: number, onOxygen: boolean, scale: 1 | 2): Points {
  if (scale === 1) return pointsIn(percent, SPO2_SCALE_1);
  if (percent <= 92) return pointsIn(percent, SPO2_SCALE_2);
  return onOxygen ? pointsIn(percent, SPO2_SCALE_2_ON_OXYGEN) : 0;
}

export type RiskWord = 'low' | 'low-medium' | 'medium' | 'high';

/** Chart 4: 7 or more high, 5 or 6 medium, a single 3 low to medium, else low. */
export const riskOf = (total: number, singleThree: boolean): RiskWord =>
  total >= 7 ? 'high' : total >= 5 ? 'medium' : singleThree ? 'low-medium' : 'low';
