// Where the points of a series stand on a small chart: time to the right, greater up; a level course stands in the middle.

import type { SeriesPoint } from '../../clinical/index.ts';

export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly confirmed: boolean;
}

const [LEFT, RIGHT, TOP, BOTTOM] = [6, 114, 6, 30];

const share = (value: number, least: number, most: number): number =>
  most === least ? 0.5 : (value - least) / (most - least);

/** The points on a chart of 120 by 36. */
export function placed(points: readonly SeriesPoint[]): readonly Placed[] {
  const times = points.map(({ at }) => Date.parse(at));
  const values = points.map(({ value }) => value);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  return points.map(({ at, value, confirmed }) => ({
    x: LEFT + share(Date.parse(at), first, last) * (RIGHT - LEFT),
    y: BOTTOM - share(value, least, most) * (BOTTOM - TOP),
    confirmed,
  }));
}
