// Patterns over time, on invented readings: each has numbers that make it and numbers just short of it.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { breaths, celsius, clock, csm, gcs, minute, pressure, pulse, vital } from './build.ts';

const names = (entries: readonly Entry[]): readonly string[] =>
  reckon(entries, { now: clock(60) }).patterns.map((pattern) => pattern.pattern);
const sets = (...rows: readonly (readonly [number, number, number])[]): readonly Entry[] =>
  rows.flatMap(([rate, systolic, diastolic], index) => [
    pulse(rate, index * 10),
    pressure(systolic, diastolic, index * 10),
  ]);
const skin = (temperature: string, at: number): Entry =>
  vital({ vital: 'skin', value: { temperature } }, { at: minute(at) });
const radial = (present: boolean, at: number): Entry =>
  csm('hand', 'left', 'circulation', present, { at: minute(at) });

const rows: readonly [string, readonly Entry[], readonly string[]][] = [
  ['pulse up ten and systolic down ten', sets([90, 120, 80], [100, 110, 75]), ['pulse-up-pressure-down']],
  ['pulse up nine', sets([90, 120, 80], [99, 110, 75]), []],
  ['systolic down nine', sets([90, 120, 80], [100, 111, 75]), []],
  ['both up', sets([90, 120, 80], [110, 140, 80]), []],
  ['a single set', sets([130, 80, 50]), []],
  [
    'down again since a middle set',
    sets([100, 120, 80], [80, 130, 85], [96, 112, 78]),
    ['pulse-up-pressure-down'],
  ],
  ['pulse pressure wider and pulse slower', sets([90, 130, 80], [70, 150, 80]), ['pulse-pressure-widening']],
  ['pulse pressure wider, pulse not slower', sets([90, 130, 80], [88, 150, 80]), []],
  ['GCS 15 to 14', [gcs(4, 5, 6, 0), gcs(4, 4, 6, 10)], ['gcs-falling']],
  ['GCS 13 to 15', [gcs(3, 4, 6, 0), gcs(4, 5, 6, 10)], []],
  ['GCS 15 and then not testable', [gcs(4, 5, 6, 0), gcs(4, 'NT', 6, 10)], []],
  ['half a degree colder', [celsius(36.5, 0), celsius(36.0, 20)], ['cooling']],
  ['four tenths colder', [celsius(36.4, 0), celsius(36.0, 20)], []],
  ['skin warm to cool', [skin('warm', 0), skin('cool', 10)], ['skin-cooling']],
  ['skin cool to warm', [skin('cool', 0), skin('warm', 10)], []],
  ['a pulse lost', [radial(true, 0), radial(false, 10)], ['limb-pulse-lost']],
  ['a pulse regained', [radial(false, 0), radial(true, 10)], []],
  ['a pulse never there', [radial(false, 10)], []],
  [
    'a pulse lost and a hand gone cold',
    [
      csm('hand', 'left', 'circulation', true, { at: minute(0) }, { pulse: 'radial' }),
      csm('hand', 'left', 'circulation', false, { at: minute(10) }, { pulse: 'radial' }),
      csm('hand', 'left', 'circulation', false, { at: minute(10) }, { warmth: 'cold' }),
    ],
    ['limb-pulse-lost'],
  ],
  [
    'a pulse lost and a hand still warm',
    [
      csm('hand', 'left', 'circulation', true, { at: minute(0) }, { pulse: 'radial' }),
      csm('hand', 'left', 'circulation', false, { at: minute(10) }, { pulse: 'radial' }),
      csm('hand', 'left', 'circulation', true, { at: minute(12) }, { warmth: 'warm' }),
    ],
    ['limb-pulse-lost'],
  ],
  [
    'a pulse and a cold hand at once',
    [
      csm('hand', 'left', 'circulation', true, { at: minute(0) }, { pulse: 'radial' }),
      csm('hand', 'left', 'circulation', false, { at: minute(0) }, { warmth: 'cold' }),
    ],
    [],
  ],
  [
    'a pulse lost and all well since',
    [radial(true, 0), radial(false, 10), csm('hand', 'left', 'circulation', true, { at: minute(20) })],
    [],
  ],
];

describe('patterns', () => {
  it.each(rows)('%s', (_, entries, expected) => {
    expect(names(entries)).toEqual(expected);
  });

  it('start with trend, carry their numbers and entries, and no diagnosis', () => {
    const entries = sets([90, 120, 80], [118, 96, 60]);
    const pattern = reckon(entries, { now: clock(60) }).patterns[0];
    expect(pattern?.text).toBe('trend: pulse up 90 to 118, systolic down 120 to 96, 14:00 to 14:10');
    expect(pattern?.evidence).toEqual(entries.map((entry) => entry.id));
    expect(pattern?.text).not.toMatch(/shock|bleed|hernia|hypotherm/i);
  });

  it('ask whether breathing is regular, or say that it is not', () => {
    const widening = sets([90, 130, 80], [70, 150, 80]);
    expect(reckon(widening, { now: clock(60) }).patterns[0]?.missing).toEqual([
      'whether breathing is regular',
    ]);
    expect(
      reckon([...widening, breaths(12, 10, ['irregular'])], { now: clock(60) }).patterns[0]?.text,
    ).toContain('breathing irregular');
  });
});
