// The areas of the skin as two published charts give them, in percent of the body surface.

import type { Source } from '../source.ts';

export const NINES_SOURCE: Source = {
  cite: 'rule of nines: Wallace AB. Lancet 1951;1:501-504',
  mark: 'read',
  note: 'in secondary pages; shares within a limb or the trunk are computed',
};

export const LUND_BROWDER_SOURCE: Source = {
  cite: 'Lund CC, Browder NC. Surg Gynecol Obstet 1944;79:352-358',
  mark: 'read',
  note: 'age rows in a secondary page, fixed rows from memory; each age sums to 100',
};

export const AREAS = [
  'head',
  'neck',
  'chest',
  'abdomen',
  'back',
  'buttock',
  'genitals',
  'upper-arm',
  'forearm',
  'hand',
  'thigh',
  'lower-leg',
  'foot',
] as const;
export type Area = (typeof AREAS)[number];

/** Percent of the front and the back of an area; of one side where the area has two. */
export interface AreaPercent {
  readonly front: number;
  readonly back: number;
}

export type BurnChart = Readonly<Record<Area, AreaPercent>>;

/** Areas of which the charts give one for each side of the body. */
export const TWO_SIDED: ReadonlySet<Area> = new Set([
  'buttock',
  'upper-arm',
  'forearm',
  'hand',
  'thigh',
  'lower-leg',
  'foot',
]);

const same = (percent: number): AreaPercent => ({ front: percent, back: percent });
const front = (percent: number): AreaPercent => ({ front: percent, back: 0 });
const back = (percent: number): AreaPercent => ({ front: 0, back: percent });

/**
 * Head and neck 9, each arm 9, trunk 18 before and 18 behind with the buttocks, each leg 18, perineum 1.
 * The shares of hand, forearm, thigh and so on within each nine are our division of it, after the other chart.
 */
export const RULE_OF_NINES: BurnChart = {
  head: same(3.5),
  neck: same(1),
  chest: front(9),
  abdomen: front(9),
  back: back(13),
  buttock: back(2.5),
  genitals: front(1),
  'upper-arm': same(2),
  forearm: same(1.5),
  hand: same(1),
  thigh: same(4.5),
  'lower-leg': same(3),
  foot: same(1.5),
};

/** Half of the head, of one thigh and of one lower leg at the chart's six ages. */
export const LUND_BROWDER_AGES = [
  { from: 0, head: 9.5, thigh: 2.75, lowerLeg: 2.5 },
  { from: 1, head: 8.5, thigh: 3.25, lowerLeg: 2.5 },
  { from: 5, head: 6.5, thigh: 4, lowerLeg: 2.75 },
  // Many printed charts show 4.5 for the thigh at 10 years, which makes 101.
  { from: 10, head: 5.5, thigh: 4.25, lowerLeg: 3 },
  { from: 15, head: 4.5, thigh: 4.5, lowerLeg: 3.25 },
  { from: 16, head: 3.5, thigh: 4.75, lowerLeg: 3.5 },
] as const;

/** The chart for an age in years: the column of the last of the ages 0, 1, 5, 10, 15 and adult (16) reached. */
export function lundBrowder(years: number): BurnChart {
  const column = LUND_BROWDER_AGES.findLast((each) => years >= each.from) ?? LUND_BROWDER_AGES[0];
  return {
    head: same(column.head),
    neck: same(1),
    // 13 for each face of the trunk; chest and abdomen as halves of the front are our division.
    chest: front(6.5),
    abdomen: front(6.5),
    back: back(13),
    buttock: back(2.5),
    genitals: front(1),
    'upper-arm': same(2),
    forearm: same(1.5),
    hand: same(1.25),
    thigh: same(column.thigh),
    'lower-leg': same(column.lowerLeg),
    foot: same(1.75),
  };
}
