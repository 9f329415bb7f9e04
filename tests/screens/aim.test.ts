// A press counts for what the thumb set out for, before and after the page has drawn what moved under it.

import { describe, expect, it } from 'vitest';
import { createAim, ON_ITS_WAY, type Spots } from '../../src/screens/steady/aim.ts';

/** Buttons under each other, each 100 high. */
const column = (...names: readonly string[]): Spots =>
  new Map(
    names.map((name, index) => [name, { left: 0, right: 100, top: index * 100, bottom: index * 100 + 90 }]),
  );
const first = { x: 50, y: 50 };

describe('a press', () => {
  it('on a list that stands counts', () => {
    const aim = createAim();
    aim.drawn(column('a', 'b'), 0);
    expect(aim.missed('a', first, 10)).toBe(false);
  });

  it('on another button than stood there a moment ago is refused, and later counts', () => {
    const aim = createAim();
    aim.drawn(column('a', 'b'), 0);
    aim.changing();
    aim.drawn(column('new', 'a', 'b'), 1000);
    expect(aim.missed('new', first, 1000 + ON_ITS_WAY / 2)).toBe(true);
    expect(aim.missed('a', { x: 50, y: 150 }, 1000 + ON_ITS_WAY / 2)).toBe(true);
    expect(aim.missed('new', first, 1001 + ON_ITS_WAY)).toBe(false);
  });

  it('that comes before what changed is drawn is held to what is still seen', () => {
    const aim = createAim();
    aim.drawn(column('a', 'b'), 0);
    aim.changing();
    expect(aim.missed('new', first, 5000)).toBe(true);
    expect(aim.missed('a', first, 5000)).toBe(false);
    aim.drawn(column('a', 'b'), 5001);
    expect(aim.missed('new', first, 5002)).toBe(false);
  });

  it('after several moves in a row is held to where things stood before the first', () => {
    const aim = createAim();
    aim.drawn(column('a', 'b'), 0);
    aim.drawn(column('x', 'a', 'b'), 1000);
    aim.drawn(column('y', 'x', 'a', 'b'), 1100);
    expect(aim.missed('x', first, 1200)).toBe(true);
    expect(aim.missed('a', first, 1200)).toBe(false);
  });
});
