// Where the points of some series stand on one small chart: time to the right, greater up; a level course stands in the
// middle, and a small change is drawn small.

import type { SeriesPoint } from '../../clinical/index.ts';

export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly confirmed: boolean;
}

export const [WIDTH, HEIGHT] = [120, 36];
const [LEFT, RIGHT, TOP, BOTTOM] = [6, 114, 6, 30];
/** The height stands for at least this share of the greatest value, lest a change of two look like a fall. Our choice, no source. */
const LEAST_SPAN = 0.2;

/** The points of each series on a chart of 120 by 36, all on one scale. */
export function placed(series: readonly (readonly SeriesPoint[])[]): readonly (readonly Placed[])[] {
  const all = series.flat();
  const times = all.map(({ at }) => Date.parse(at));
  const values = all.map(({ value }) => value);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const middle = (least + most) / 2;
  const span = Math.max(most - least, most * LEAST_SPAN, Number.EPSILON);
  const across = (time: number): number => (last === first ? 0.5 : (time - first) / (last - first));
  return series.map((points) =>
    points.map(({ at, value, confirmed }) => ({
      x: LEFT + across(Date.parse(at)) * (RIGHT - LEFT),
      y: (TOP + BOTTOM) / 2 - ((value - middle) / span) * (BOTTOM - TOP),
      confirmed,
    })),
  );
}
