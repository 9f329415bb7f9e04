// A bare number in a correction: where it goes, in which unit, and when it cannot be. All talk is invented.

import { describe, expect, it } from 'vitest';
import { type Entry, stands } from '../../src/record/index.ts';
import type { Statement, VitalReading } from '../../src/terms/index.ts';
import { finding, hearAll, pulse } from './fake-reader.ts';

function corrected(statement: Statement, value: number, words = 'as first said'): readonly Entry[] {
  return hearAll({ [words]: [{ statement }], 'make that it': [{ change: { change: 'number', value } }] })
    .state.entries;
}

const vital = (reading: VitalReading): Statement => ({ kind: 'vital', ...reading });

const FIT: readonly [title: string, before: Statement, number: number, after: object, words?: string][] = [
  ['a pulse, its quality kept', pulse(92).statement, 94, { value: { rate: 94, quality: ['strong'] } }],
  ['breathing', vital({ vital: 'respirations', value: { rate: 16 } }), 18, { value: { rate: 18 } }],
  [
    'a palpated pressure',
    vital({ vital: 'blood-pressure', value: { systolic: 90, diastolic: null, method: 'palpation' } }),
    96,
    { value: { systolic: 96, diastolic: null, method: 'palpation' } },
  ],
  [
    'saturation',
    vital({ vital: 'oxygen-saturation', value: { percent: 96, onOxygen: true } }),
    94,
    {
      value: { percent: 94, onOxygen: true },
    },
  ],
  [
    'temperature in Celsius',
    vital({ vital: 'temperature', value: { celsius: 37 } }),
    36.2,
    { value: { celsius: 36.2 } },
  ],
  [
    'temperature in Fahrenheit, which the number itself tells',
    vital({ vital: 'temperature', value: { celsius: 37 } }),
    99.5,
    { value: { celsius: 37.5 } },
  ],
  [
    'glucose in the unit of the first one',
    vital({ vital: 'glucose', value: { mgPerDl: 108 } }),
    5,
    { value: { mgPerDl: 90 } },
    'sugar 6 millimoles',
  ],
  ['pain', vital({ vital: 'pain-score', value: { score: 6 } }), 7, { value: { score: 7 } }],
  [
    'capillary refill',
    vital({ vital: 'capillary-refill', value: { seconds: 2 } }),
    3,
    { value: { seconds: 3 } },
  ],
  ['a coma score', vital({ vital: 'gcs', value: { total: 14 } }), 13, { value: { total: 13 } }],
  [
    'both pupils',
    vital({ vital: 'pupils', value: { leftMm: 4, rightMm: 4 } }),
    3,
    { value: { leftMm: 3, rightMm: 3 } },
  ],
  [
    'a size in centimetres',
    finding({ size: { value: 3, unit: 'cm' } }).statement,
    4,
    { size: { value: 4, unit: 'cm' } },
  ],
  [
    'a size in inches',
    finding({ size: { value: 7.62, unit: 'cm' } }).statement,
    4,
    { size: { value: 10.16, unit: 'cm' } },
    'a three inch cut',
  ],
  ['severity', finding({ severity: 6 }).statement, 8, { severity: 8 }],
  ['count', finding({ count: 2 }).statement, 3, { count: 3 }],
  [
    'refill in a limb',
    { kind: 'csm', site: 'hand', side: 'left', aspect: 'circulation', present: true, capRefillSeconds: 2 },
    3,
    { capRefillSeconds: 3 },
  ],
  ['age', { kind: 'history', topic: 'age', text: '52', years: 52 }, 54, { years: 54, text: '54' }],
  ['weight', { kind: 'history', topic: 'weight', text: '80 kg', kg: 80 }, 82, { kg: 82, text: '82 kg' }],
];

describe('a bare number', () => {
  it.each(FIT)('takes the place of %s', (_title, before, number, after, words) => {
    const entries = corrected(before, number, words);
    expect(entries.map((entry) => entry.state)).toEqual(['replaced', 'heard']);
    expect(entries[1]).toMatchObject(after);
  });

  it('keeps the unit over two corrections', () => {
    const entries = hearAll({
      'a three inch cut': [finding({ size: { value: 7.62, unit: 'cm' } })],
      'make that four': [{ change: { change: 'number', value: 4 } }],
      'make that five': [{ change: { change: 'number', value: 5 } }],
    }).state.entries;
    expect(entries.filter(stands)).toMatchObject([{ size: { value: 12.7, unit: 'cm' } }]);
  });

  const CANNOT: readonly [string, Statement, number][] = [
    ['a pulse of 1200', pulse(120).statement, 1200],
    ['a pulse of 92.5', pulse(92).statement, 92.5],
    [
      'a systolic under its diastolic',
      vital({ vital: 'blood-pressure', value: { systolic: 120, diastolic: 80 } }),
      70,
    ],
    ['a saturation of 101', vital({ vital: 'oxygen-saturation', value: { percent: 96 } }), 101],
    ['a pain of eleven', vital({ vital: 'pain-score', value: { score: 6 } }), 11],
    ['a coma score of two', vital({ vital: 'gcs', value: { total: 14 } }), 2],
    ['an age of 400', { kind: 'history', topic: 'age', text: '40', years: 40 }, 400],
  ];
  it.each(CANNOT)('refuses %s: a note is kept and the earlier value stands', (_title, before, number) => {
    const entries = corrected(before, number);
    expect(entries).toMatchObject([{ state: 'heard' }, { kind: 'note', text: 'make that it' }]);
    expect(entries[1]?.doubt?.[0]).toMatch(/cannot be that value/);
  });

  it('that is said of a full pressure is the systolic, with the question left open', () => {
    const entries = corrected(
      vital({ vital: 'blood-pressure', value: { systolic: 120, diastolic: 80 } }),
      130,
    );
    expect(entries[1]).toMatchObject({ value: { systolic: 130, diastolic: 80 } });
    expect(entries[1]?.doubt).toHaveLength(1);
  });

  it('that corrects the sum of a coma scale takes its parts away, with the question left open', () => {
    const entries = corrected(vital({ vital: 'gcs', value: { eye: 4, verbal: 4, motor: 6, total: 14 } }), 13);
    expect(entries[1]).toMatchObject({ value: { total: 13 } });
    expect(entries[1]).not.toHaveProperty('value.eye');
    expect(entries[1]?.doubt).toHaveLength(1);
  });

  it('goes to the last number of a group and leaves the others', () => {
    const standing = hearAll({
      vitals: [pulse(92), { statement: vital({ vital: 'respirations', value: { rate: 16 } }) }],
      'make that 18': [{ change: { change: 'number', value: 18 } }],
    }).state.entries.filter(stands);
    expect(standing).toMatchObject([
      { vital: 'pulse', value: { rate: 92 } },
      { vital: 'respirations', value: { rate: 18 } },
    ]);
  });

  it('makes no sense of a finding without one', () => {
    expect(corrected(finding().statement, 4)).toMatchObject([{ state: 'heard' }, { kind: 'note' }]);
  });
});
