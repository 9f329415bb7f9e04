// The small chart of a measure: later to the right, greater up, and a level course is drawn level.

import { describe, expect, it } from 'vitest';
import { placed } from '../../src/screens/signs/chart-points.ts';

const at = (minute: number, value: number) => ({
  at: `2031-04-05T10:${String(minute).padStart(2, '0')}:00+02:00`,
  value,
  entry: `e${minute}`,
  confirmed: minute === 0,
});

describe('the course', () => {
  it('goes to the right with time and up with the value', () => {
    const [first, middle, last] = placed([at(0, 80), at(5, 100), at(20, 120)]);
    expect([first?.x, first?.y, last?.x, last?.y]).toEqual([6, 30, 114, 6]);
    expect(middle).toMatchObject({ x: 33, y: 18, confirmed: false });
    expect(first?.confirmed).toBe(true);
  });

  it('of one value stands in the middle', () => {
    expect(placed([at(0, 80), at(5, 80)]).map(({ y }) => y)).toEqual([18, 18]);
  });
});
