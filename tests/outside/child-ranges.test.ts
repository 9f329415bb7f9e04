// Every cell of the ranges for children as published, at both ends of its age column and both edges of its range.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { CHILD_BREATHS, CHILD_PULSE, childRow } from '../../src/clinical/score/child-ranges.ts';
import { age, breaths, clock, pulse } from '../clinical/build.ts';

// Read: Fleming S et al. Lancet 2011;377:1011-1018, web box 1 (ranges quoted there), in a flattened extract: the columns
// are to be rechecked against the page. Neonatal and first-year columns of breathing are alike and stand as one.
const BREATHS_AGES = [0, 1, 2, 3, 4, 5, 6, 12, 13, 18];
const BREATHS = {
  apls: '30–40 | 25–35 | 25–30 | 25–30 | 25–30 | 20–25 | 20–25 | 15–20 | 15–20',
  pals: '30–60 | 24–40 | 24–40 | 24–40 | 22–34 | 22–34 | 18–30 | 18–30 | 12–16',
  epls: '30–40 | 26–34 | 24–30 | 24–30 | 24–30 | 20–24 | 20–24 | 12–20 | 12–20',
  atls: '<60 | <40 | <40 | <35 | <35 | <35 | <30 | <30 | <30',
} as const;

// The first column holds to three months, where PALS and EPLS change.
const PULSE_AGES = [0, 0.25, 1, 2, 3, 5, 6, 10, 12, 13, 18];
const PULSE = {
  apls: '110–160 | 110–160 | 100–150 | 95–140 | 95–140 | 80–120 | 80–120 | 80–120 | 60–100 | 60–100',
  pals: '85–205 | 100–190 | 100–190 | 60–140 | 60–140 | 60–140 | 60–140 | 60–100 | 60–100 | 60–100',
  epls: '85–205 | 100–180 | 100–180 | 60–140 | 60–140 | 60–140 | 60–140 | 60–100 | 60–100 | 60–100',
  atls: '<160 | <160 | <150 | <150 | <140 | <140 | <120 | <120 | <100 | <100',
} as const;

type Name = keyof typeof PULSE;
interface Cell {
  readonly name: Name;
  readonly from: number;
  readonly to: number;
  readonly low: number | null;
  readonly high: number;
}

const cells = (table: Readonly<Record<Name, string>>, ages: readonly number[]): readonly Cell[] =>
  (Object.keys(table) as Name[]).flatMap((name) =>
    table[name].split(' | ').map((range, column) => {
      const numbers = range.match(/\d+/g)?.map(Number) ?? [];
      const [first = 0, second] = numbers;
      const [from = 0, to = 0] = ages.slice(column, column + 2);
      return second === undefined
        ? { name, from, to, low: null, high: first }
        : { name, from, to, low: first, high: second };
    }),
  );

const LAST = 0.001;

describe.each([
  ['breathing', CHILD_BREATHS, cells(BREATHS, BREATHS_AGES)],
  ['pulse', CHILD_PULSE, cells(PULSE, PULSE_AGES)],
] as const)('the published ranges of %s', (_, rows, published) => {
  it.each(published.map((cell) => [cell.name, cell.from, cell.to, cell] as const))(
    '%s from %f to under %f years',
    (name, from, to, { low, high }) => {
      const range = low === null ? [high] : [low, high];
      expect(childRow(rows, from)?.[name]).toEqual(range);
      expect(childRow(rows, to - LAST)?.[name]).toEqual(range);
    },
  );
});

describe('a reading of a child', () => {
  const standing = (measure: 'pulse' | 'respirations', years: number, rate: number, name: string) =>
    reckon([age(years), measure === 'pulse' ? pulse(rate) : breaths(rate)], { now: clock(0) })
      .childRanges.find((each) => each.measure === measure)
      ?.against.find((each) => each.name === name)?.standing;

  it.each(cells(PULSE, PULSE_AGES).map((cell) => [cell.name.toUpperCase(), cell.from, cell] as const))(
    'of pulse is told from the edges of %s at %f years',
    (name, years, { low, high }) => {
      if (low === null) {
        expect(standing('pulse', years, high - 1, name)).toBe('inside');
        expect(standing('pulse', years, high, name)).toBe('above');
        return;
      }
      expect(standing('pulse', years, low - 1, name)).toBe('below');
      expect(standing('pulse', years, low, name)).toBe('inside');
      expect(standing('pulse', years, high, name)).toBe('inside');
      expect(standing('pulse', years, high + 1, name)).toBe('above');
    },
  );
  it.each(cells(BREATHS, BREATHS_AGES).map((cell) => [cell.name.toUpperCase(), cell.from, cell] as const))(
    'of breathing is told from the edges of %s at %f years',
    (name, years, { low, high }) => {
      const at = (rate: number) => standing('respirations', years, rate, name);
      expect([at(high - 1), at(high), at(high + 1)]).toEqual(
        low === null ? ['inside', 'above', 'above'] : ['inside', 'inside', 'above'],
      );
      if (low !== null) expect([at(low - 1), at(low)]).toEqual(['below', 'inside']);
    },
  );
  it('of 18 years has none', () => {
    expect(reckon([age(18), pulse(80)], { now: clock(0) }).childRanges).toEqual([]);
  });
});
