// The small chart of a sign: later to the right, greater up, level drawn level, and a small change drawn small.

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
    const [points = []] = placed([[at(0, 80), at(5, 100), at(20, 120)]]);
    const [first, middle, last] = points;
    expect([first?.x, first?.y, last?.x, last?.y]).toEqual([6, 30, 114, 6]);
    expect(middle).toMatchObject({ x: 33, y: 18, confirmed: false });
    expect(first?.confirmed).toBe(true);
  });

  it('of one value stands in the middle', () => {
    expect(placed([[at(0, 80), at(5, 80)]])[0]?.map(({ y }) => y)).toEqual([18, 18]);
  });

  it('of a small change is nearly level', () => {
    const [points = []] = placed([[at(0, 98), at(5, 96)]]);
    expect(Math.abs((points[0]?.y ?? 0) - (points[1]?.y ?? 0))).toBeLessThan(4);
  });

  it('of two pressures is on one scale', () => {
    const [upper = [], lower = []] = placed([
      [at(0, 120), at(5, 100)],
      [at(0, 80), at(5, 60)],
    ]);
    expect(upper[0]?.y).toBeLessThan(lower[0]?.y ?? 0);
    expect(upper[1]?.y).toBeLessThan(lower[0]?.y ?? 0);
    expect([upper[0]?.y, lower[1]?.y]).toEqual([6, 30]);
  });
});
