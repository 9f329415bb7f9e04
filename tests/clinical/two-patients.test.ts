// Two ages or two sexes in one record: asked, told as not settled, and nothing rests on either. All entries are invented.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { mist, radio, sbar, soap, textOf } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { age, clock, minute, pressure, pulse, told } from './build.ts';

const worked = (entries: readonly Entry[]) => reckon(entries, { now: clock(30) });
const asked = (entries: readonly Entry[]): readonly string[] =>
  worked(entries).conflicts.map((one) => one.conflict);
const flagOf = (entries: readonly Entry[], rule: string) => {
  const flag = worked(entries).flags.find((one) => one.rule === rule);
  return [flag?.state, flag?.missing.join()];
};

describe('two ages', () => {
  it.each([
    [40, 20],
    [8, 12],
    [70, 17],
  ])('%d and %d are asked about, and what rests on the age is unknown', (one, other) => {
    const all = [age(one), pulse(90), age(other), pressure(60, 40)];
    expect(asked(all)).toContain('two-ages');
    for (const rule of ['systolic-10-to-64', 'pulse-over-systolic', 'systolic-65-up'])
      expect(flagOf(all, rule)).toEqual(['unknown', `which age holds: ${one} or ${other}`]);
  });
  it('near each other are asked about, and leave what holds for both', () => {
    const all = [age(40), age(43), pressure(80, 50)];
    expect(asked(all)).toContain('two-ages');
    expect(flagOf(all, 'systolic-10-to-64')[0]).toBe('met');
    expect(flagOf([age(63), age(66), pressure(100, 60)], 'systolic-65-up')[0]).toBe('unknown');
  });
  it('that are the same are one', () => {
    const all = [age(40), age(40), pressure(80, 50)];
    expect(asked(all)).not.toContain('two-ages');
    expect(flagOf(all, 'systolic-10-to-64')[0]).toBe('met');
  });
});

describe('two sexes', () => {
  it('are asked about, and rule no pregnancy out', () => {
    const all = [told('sex', 'female'), told('sex', 'male')];
    expect(asked(all)).toEqual(['two-sexes']);
    expect(flagOf(all, 'pregnancy-over-20-weeks')[0]).toBe('unknown');
    expect(flagOf([told('sex', 'male')], 'pregnancy-over-20-weeks')[0]).toBe('not-met');
  });
  it('in other words of one are one', () => {
    expect(asked([told('sex', 'male'), told('sex', 'man')])).toEqual([]);
  });
});

it('reports tell both and that which holds is not settled', () => {
  const entries = [age(40), told('sex', 'male'), age(20), told('sex', 'female')];
  const input = { startedAt: minute(0), entries, coverage: [], now: clock(30) };
  for (const report of [soap, mist, sbar]) {
    const text = textOf(report(input));
    expect(text).toContain('Age: 40 years; 20 years; which holds is not settled');
    expect(text).toContain('Sex: male; female; which holds is not settled');
  }
  const said = radio(input)
    .chunks.map(({ text }) => text)
    .join(' ');
  expect(said).toMatch(/Age four zero, age two zero, male, female, which holds is not settled/);
});
