// Patients of an incident stand worst first by the stated rules, and nobody who is unknown stands among the well.

import { describe, expect, it } from 'vitest';
import { type RankedPatient, rankOfPatient, worstFirst } from '../../src/clinical/incident/index.ts';
import type { Reckoning } from '../../src/clinical/index.ts';

const flag = (level: 'red' | 'yellow', state: 'met' | 'not-met' | 'unknown') =>
  ({ level, state }) as unknown as Reckoning['flags'][number];
const taken = [{ vitals: ['pulse', 'respirations'] }] as unknown as Reckoning['sets'];
const trend = [{ pattern: 'gcs-falling' }] as unknown as Reckoning['patterns'];

describe('a patient', () => {
  it.each([
    [
      'with a red criterion',
      { flags: [flag('red', 'met'), flag('yellow', 'met')], patterns: [], sets: taken },
      1,
      '1 red triage criterion met',
    ],
    [
      'with two',
      { flags: [flag('red', 'met'), flag('red', 'met')], patterns: [], sets: taken },
      1,
      '2 red triage criteria met',
    ],
    [
      'with a trend',
      { flags: [flag('yellow', 'met')], patterns: trend, sets: taken },
      2,
      'a trend for the worse',
    ],
    [
      'of whom no pulse was taken',
      { flags: [flag('yellow', 'met')], patterns: [], sets: [] },
      3,
      'nothing is known',
    ],
    [
      'with a yellow criterion',
      { flags: [flag('yellow', 'met'), flag('red', 'unknown')], patterns: [], sets: taken },
      4,
      '1 yellow triage criterion met',
    ],
    [
      'with criteria that cannot be decided',
      { flags: [flag('red', 'unknown')], patterns: [], sets: taken },
      5,
      'cannot be decided',
    ],
    [
      'with none met',
      { flags: [flag('red', 'not-met'), flag('yellow', 'not-met')], patterns: [], sets: taken },
      6,
      'that clears nothing',
    ],
  ] as const)('%s has the rank of its rule', (_name, looked, rank, why) => {
    const found = rankOfPatient(looked);
    expect(found.rank).toBe(rank);
    expect(found.why).toContain(why);
  });
});

const patient = (record: string, more: Partial<RankedPatient> = {}): RankedPatient => ({
  record,
  rank: 4,
  why: '',
  reds: 0,
  overdueMinutes: 0,
  heardAt: 0,
  closed: false,
  ...more,
});

describe('the order', () => {
  it('is by rank, then red criteria, then what is overdue, then who was not heard of for longest; closed ones stand last', () => {
    const all = [
      patient('closed', { rank: 1, closed: true }),
      patient('later', { heardAt: 9 }),
      patient('earlier', { heardAt: 3 }),
      patient('overdue', { overdueMinutes: 4, heardAt: 9 }),
      patient('red', { rank: 1, reds: 1 }),
      patient('redder', { rank: 1, reds: 3 }),
    ];
    const names = ['redder', 'red', 'overdue', 'earlier', 'later', 'closed'];
    expect(worstFirst(all).map(({ record }) => record)).toEqual(names);
    expect(worstFirst([...all].reverse()).map(({ record }) => record)).toEqual(names);
  });
});
