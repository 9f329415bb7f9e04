// Burns against the rule of nines and the chart by age; the burned patients are invented.

import { describe, expect, it } from 'vitest';
import { LUND_BROWDER_AGES, lundBrowder, RULE_OF_NINES } from '../../src/clinical/burns/charts.ts';
import { depthIn } from '../../src/clinical/burns/depth.ts';
import { patchesOf } from '../../src/clinical/burns/patches.ts';
import { burnsOf, chartOf, scores } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { age, clock, denied, found, minute } from '../clinical/build.ts';

const sum = (chart: Parameters<typeof patchesOf>[0]): number =>
  patchesOf(chart).reduce((total, patch) => total + patch.percent, 0);
const percent = (...entries: readonly Entry[]): number | null =>
  scores(entries, { now: clock(0) }).burnPercent;

describe('the charts', () => {
  // Read: age rows in a secondary page; fixed rows from memory: Lund CC, Browder NC. Surg Gynecol Obstet 1944;79:352-358.
  it.each(LUND_BROWDER_AGES)('sum to 100 from $from years', ({ from }) =>
    expect(sum(lundBrowder(from))).toBeCloseTo(100, 9),
  );
  it.each([
    [0.9, 9.5],
    [1, 8.5],
    [4.9, 8.5],
    [5, 6.5],
    [9.9, 6.5],
    [10, 5.5],
    [14.9, 5.5],
    [15, 4.5],
    [16, 3.5],
  ])('give at %f years half a head %f', (years, half) => expect(lundBrowder(years).head.front).toBe(half));
  // Half of the head (A), of one thigh (B) and of one lower leg (C) at each age, both edges of each column: the same page.
  // From memory: many printed charts show 4.5 for the thigh at 10 years, which makes 101.
  it.each([
    [0, 0.99, 9.5, 2.75, 2.5],
    [1, 4.99, 8.5, 3.25, 2.5],
    [5, 9.99, 6.5, 4, 2.75],
    [10, 14.99, 5.5, 4.25, 3],
    [15, 15.99, 4.5, 4.5, 3.25],
    [16, 90, 3.5, 4.75, 3.5],
  ])('give from %f to %f years A %f, B %f, C %f', (from, to, a, b, c) => {
    for (const years of [from, to]) {
      const chart = lundBrowder(years);
      expect([chart.head, chart.thigh, chart['lower-leg']]).toEqual(
        [a, b, c].map((half) => ({ front: half, back: half })),
      );
    }
  });
  // From memory: the rows that are the same at every age; with the age rows they make 60 + 2A + 4B + 4C = 100.
  it.each([
    ['neck', 1, 1],
    ['back', 0, 13],
    ['buttock', 0, 2.5],
    ['genitals', 1, 0],
    ['upper-arm', 2, 2],
    ['forearm', 1.5, 1.5],
    ['hand', 1.25, 1.25],
    ['foot', 1.75, 1.75],
  ] as const)('give at every age for the %s %f before and %f behind', (area, front, back) => {
    for (const { from } of LUND_BROWDER_AGES) expect(lundBrowder(from)[area]).toEqual({ front, back });
  });
  it('give the front of the trunk 13 at every age', () => {
    for (const { from } of LUND_BROWDER_AGES) {
      const { chest, abdomen } = lundBrowder(from);
      expect(chest.front + abdomen.front).toBe(13);
    }
  });
  it('sum to 100 by the rule of nines', () => expect(sum(RULE_OF_NINES)).toBeCloseTo(100, 9));
});

describe('the rule of nines', () => {
  // Read in several pages: Wallace AB. Lancet 1951;1:501-504.
  it.each([
    ['head and neck', 9, [found('head', null, 'burn')]],
    ['head with the neck named too', 9, [found('head', null, 'burn'), found('neck', null, 'burn')]],
    ['one arm', 9, [found('arm', 'left', 'burn')]],
    ['both arms', 18, [found('arm', 'both', 'burn')]],
    ['the front of the trunk', 18, [found('chest', null, 'burn'), found('abdomen', null, 'burn')]],
    ['the back of the trunk', 18, [found('back', null, 'burn')]],
    ['one leg', 18, [found('leg', 'right', 'burn')]],
    ['the perineum', 1, [found('genitals', null, 'burn')]],
    [
      'the whole body',
      100,
      [
        ...(['head', 'chest', 'abdomen', 'back', 'genitals'] as const).map((site) =>
          found(site, null, 'burn'),
        ),
        found('arm', 'both', 'burn'),
        found('leg', 'both', 'burn'),
      ],
    ],
    ['the front of one leg', 9, [found('leg', 'left', 'burn', {}, { part: ['anterior'] })]],
    [
      'an arm and, in it, the hand, counted once',
      9,
      [found('arm', 'left', 'burn'), found('hand', 'left', 'burn')],
    ],
  ] as const)('gives %s %f', (_, expected, entries) => expect(percent(...entries)).toBe(expected));
});

describe('by age', () => {
  // Computed from the chart's rows.
  it.each([
    ['the head at 1 year', 17, [age(1), found('head', null, 'burn')]],
    ['the face at 6 months', 9.5, [age(0.5), found('face', null, 'burn')]],
    ['one thigh at 5 years', 8, [age(5), found('thigh', 'left', 'burn')]],
    ['one leg at 10 years', 18, [age(10), found('leg', 'left', 'burn')]],
    ['one arm at 3 years', 9.5, [age(3), found('arm', 'left', 'burn')]],
  ] as const)('gives %s %f', (_, expected, entries) => expect(percent(...entries)).toBe(expected));

  it('both methods are shown where they differ', () => {
    const burns = burnsOf(chartOf([age(30), found('arm', 'left', 'burn')]));
    expect(burns?.differ).toBe(true);
    expect(burns?.text).toContain('9 % by rule of nines');
    expect(burns?.text).toContain('9.5 % by Lund-Browder');
  });
});

describe('palms', () => {
  // Read: about 1 % for a palm with its fingers, Murari A, Singh KN. Acute Crit Care 2019;34:276-281.
  it('count one percent each', () => {
    expect(percent(found('flank', 'left', 'burn', {}, { quality: ['about three palms'] }))).toBe(3);
    expect(percent(found('shoulder', 'left', 'burn', { heard: 'burn on the left shoulder two palms' }))).toBe(
      2,
    );
  });
  it('told of several places at once are those of all of them together', () => {
    const told = { heard: 'twenty percent of the body, arms and chest' };
    const quality = ['20 percent'];
    expect(
      percent(
        found('arm', 'both', 'burn', told, { quality }),
        found('chest', null, 'burn', told, { quality }),
        found('chest', null, 'burn', told, { quality: ['partial-thickness'] }),
      ),
    ).toBe(20);
    expect(
      percent(
        found('arm', 'left', 'burn', { at: minute(1) }, { quality: ['3 palms'] }),
        found('leg', 'left', 'burn', { at: minute(2) }, { quality: ['3 palms'] }),
      ),
    ).toBe(6);
  });
  it('are not read from words that two burns share', () => {
    const heard = 'burns to left shoulder and right flank two palms';
    expect(
      percent(found('shoulder', 'left', 'burn', { heard }), found('flank', 'right', 'burn', { heard })),
    ).toBeNull();
  });
});

describe('a size that is told again', () => {
  const nine = { quality: ['9 percent'] };
  const note = (text: string, m: number): Entry =>
    ({ ...found('arm', 'left', 'burn', { at: minute(m) }), id: `n${m}`, kind: 'note', text }) as never;
  it('counts once where the same burn is named again', () => {
    const first = found('arm', 'left', 'burn', { at: minute(1) }, { quality: ['2 percent'] });
    expect(percent(first, found('arm', 'left', 'burn', { at: minute(5) }))).toBe(2);
    // Another place is another burn.
    expect(percent(first, found('arm', 'right', 'burn', { at: minute(5) }))).toBe(11);
  });
  it('is the larger one where two were told of one place, and is asked about', () => {
    const talk = [
      found('leg', 'left', 'burn', { at: minute(1) }, { quality: ['4 percent'] }),
      found('leg', 'left', 'burn', { at: minute(9) }, { quality: ['6 percent'] }),
    ];
    expect(percent(...talk)).toBe(6);
    expect(burnsOf(chartOf(talk))?.missing).toContain('which size holds: left leg, 4 % or 6 %');
  });
  it('is that of each place where it was told of each', () => {
    expect(percent(found('arm', 'both', 'burn', {}, { quality: ['9 percent each'] }))).toBe(18);
    expect(percent(found('arm', 'both', 'burn', {}, nine))).toBe(9);
  });
  it('in all takes the place of the parts that were found until then', () => {
    const parts = [
      found('arm', 'left', 'burn', { at: minute(1) }, nine),
      found('chest', null, 'burn', { at: minute(2) }, nine),
    ];
    expect(percent(...parts, note('total burn eighteen percent', 3))).toBe(18);
    expect(percent(...parts, note('correction, burns are twenty percent', 3))).toBe(20);
    expect(
      percent(
        ...parts,
        note('total burn eighteen percent', 3),
        found('leg', 'left', 'burn', { at: minute(4) }, nine),
      ),
    ).toBe(27);
    // No figure that can be counted with, and no burns.
    expect(percent(...parts, note('total burn over twenty percent', 3))).toBe(18);
    expect(percent(...parts, note('battery twenty percent in total', 3))).toBe(18);
  });
});

describe('words of depth', () => {
  // Read: a health board's definitions, and the terms of NEMSIS (redness, blistering, white or waxy, charring); fourth
  // degree from memory.
  it.each([
    ['superficial', 'superficial'],
    ['first degree', 'superficial'],
    ['redness', 'superficial'],
    ['erythema', 'superficial'],
    ['superficial partial thickness', 'partial'],
    ['deep partial thickness', 'partial'],
    ['partial-thickness', 'partial'],
    ['second degree', 'partial'],
    ['blistering', 'partial'],
    ['blistered', 'partial'],
    ['full thickness', 'full'],
    ['full-thickness', 'full'],
    ['third degree', 'full'],
    ['leathery', 'full'],
    ['white', 'full'],
    ['waxy', 'full'],
    ['charring', 'full'],
    ['charred', 'full'],
    ['fourth-degree', 'full'],
    ['circumferential', 'not said'],
    ['3 palms', 'not said'],
  ])('%s is %s', (word, depth) => expect(depthIn([word])).toBe(depth));
});

describe('depth', () => {
  // Read: "estimates of burn area exclude areas of erythema" (forensicmed.co.uk).
  it('leaves superficial redness out', () => {
    expect(percent(found('arm', 'left', 'burn', {}, { quality: ['superficial'] }))).toBe(0);
    expect(
      percent(
        found('arm', 'left', 'burn', {}, { quality: ['red'] }),
        found('hand', 'left', 'burn', {}, { quality: ['blistered'] }),
      ),
    ).toBe(2);
  });
  it('keeps superficial partial thickness in', () => {
    expect(percent(found('arm', 'left', 'burn', {}, { quality: ['superficial', 'partial thickness'] }))).toBe(
      9,
    );
  });
  it('is full where the skin beside it is white or leathery, and stays open where it is red', () => {
    const depth = (...quality: readonly string[]) =>
      burnsOf(
        chartOf([
          found('forearm', 'left', 'burn'),
          found('forearm', 'left', 'discoloration', {}, { quality }),
        ]),
      )?.regions.map((region) => region.depth);
    expect(depth('white', 'leathery')).toEqual(['full']);
    expect(depth('red')).toEqual(['not said']);
  });
  it('counts a burn of which the depth was not said, and asks', () => {
    expect(burnsOf(chartOf([found('arm', 'left', 'burn')]))?.missing).toContain('depth at: left arm');
  });
});

describe('what cannot be sized', () => {
  it('is null with no burn found, even where burns were denied', () => {
    expect(percent()).toBeNull();
    expect(percent(denied('arm', 'left', 'burn'))).toBeNull();
  });
  it('is null where only a site smaller than the chart was burned, and asks for palms', () => {
    expect(percent(found('nose', null, 'burn'))).toBeNull();
    expect(burnsOf(chartOf([found('nose', null, 'burn')]))?.missing).toContain('how many palms at: nose');
  });
});
