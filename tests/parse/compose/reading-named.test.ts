// A correction that names an earlier reading of a sign puts that one right, and not the last. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { standing as entriesStanding } from '../standing.ts';

const standing = (talk: string): readonly string[] =>
  entriesStanding(talk).map((entry) =>
    entry.kind === 'vital'
      ? `${entry.at.slice(11, 16)} ${entry.vital} ${Object.values(entry.value).join('/')}`
      : `${entry.kind}${entry.doubt === undefined ? '' : ' asked about'}`,
  );
const TWO_PULSES = 'pulse ninety six | [00:06:00] pulse one eighteen | [00:08:00]';

describe('a reading that is named by its place', () => {
  it.each([
    ['correction, first pulse was eighty six', ['14:08 pulse 118', '14:02 pulse 86']],
    ['correction, the initial pulse was eighty six', ['14:08 pulse 118', '14:02 pulse 86']],
    ['correction, the earlier pulse was eighty six', ['14:08 pulse 118', '14:02 pulse 86']],
    ['no, the first pulse was eighty six', ['14:08 pulse 118', '14:02 pulse 86']],
    ['correction, first reading was eighty six', ['14:08 pulse 118', '14:02 pulse 86']],
    ['correction, second pulse was one twelve', ['14:02 pulse 96', '14:08 pulse 112']],
    ['correction, last pulse was one twelve', ['14:02 pulse 96', '14:08 pulse 112']],
    ['correction, pulse was one twelve', ['14:02 pulse 96', '14:08 pulse 112']],
  ])('is the one put right: %s', (said, expected) => {
    expect(standing(`${TWO_PULSES} ${said}`)).toEqual(expected);
  });

  it.each([
    [
      'pulse ninety six | pulse one eighteen | pulse one twenty | correction, the earlier pulse was eighty six',
      3,
    ],
    ['pulse ninety six | pulse one eighteen | correction, third pulse was eighty six', 2],
  ])('stays with the others and is asked about where nobody can tell which: %s', (talk, pulses) => {
    const all = standing(talk);
    expect(all.filter((one) => one.includes('pulse'))).toHaveLength(pulses);
    expect(all.at(-1)).toBe('note asked about');
  });

  it('is that of a pressure, and of the signs beside it none', () => {
    const talk =
      'bp one thirty over eighty, pulse ninety | [00:05:00] bp one hundred over sixty, pulse one ten | correction, first bp was one twenty over seventy';
    expect(standing(talk)).toEqual([
      '14:02 pulse 90',
      '14:07 blood-pressure 100/60',
      '14:07 pulse 110',
      '14:02 blood-pressure 120/70',
    ]);
  });
});
