// A hand is offered the changes that make sense for an entry, and what it makes is judged by the record and the grammar.

import { describe, expect, it } from 'vitest';
import { createReader } from '../../src/parse/index.ts';
import { grammarFiles } from '../../src/replay/grammar-files.ts';
import {
  gcsWords,
  hasAnswer,
  hasTime,
  levelOf,
  numberToChange,
  pressureWords,
  pupilsOf,
  sidesToChoose,
} from '../../src/screens/entries/changes.ts';
import type { Statement } from '../../src/terms/index.ts';
import { entry, swelling } from './made-up.ts';

describe('the sides to choose', () => {
  it.each<[Statement, readonly string[]]>([
    [swelling, ['left', 'right', 'both']],
    [{ ...swelling, site: 'chest' }, ['left', 'midline', 'right']],
    [{ kind: 'vital', vital: 'pulse', value: { rate: 92 } }, []],
    [{ kind: 'care', care: 'oxygen' }, []],
  ])('of %j', (statement, sides) => {
    expect(sidesToChoose(entry(statement))).toEqual(sides);
  });
});

describe('yes or no', () => {
  it('can be changed in findings, limb checks and history, and in nothing else', () => {
    expect(hasAnswer(entry(swelling))).toBe(true);
    expect(hasAnswer(entry({ kind: 'note', text: 'odd words' }))).toBe(false);
    expect(hasAnswer(entry({ kind: 'vital', vital: 'pulse', value: { rate: 92 } }))).toBe(false);
  });
});

describe('the number to change', () => {
  it.each<[Statement, unknown]>([
    [
      { ...swelling, size: { value: 3, unit: 'cm' } },
      { kind: 'single', label: 'Size', value: 3, unit: 'cm' },
    ],
    [swelling, null],
    [
      {
        kind: 'vital',
        vital: 'blood-pressure',
        value: { systolic: 90, diastolic: null, method: 'palpation' },
      },
      { kind: 'pressure', upper: 90, lower: null },
    ],
    [{ kind: 'vital', vital: 'skin', value: { color: 'pink' } }, null],
    [
      { kind: 'vital', vital: 'gcs', value: { eye: 4, verbal: 'NT', motor: 6 } },
      { kind: 'gcs', eye: 4, verbal: null, motor: 6 },
    ],
    [
      { ...swelling, site: 'cervical-spine', side: null, level: 'C5' },
      { kind: 'level', name: 'Neck bone C', prefix: 'C', value: 5 },
    ],
    [
      { ...swelling, site: 'ribs', level: 'rib-7' },
      { kind: 'level', name: 'Rib', prefix: 'rib-', value: 7 },
    ],
    [
      { kind: 'vital', vital: 'pupils', value: { reactive: true, leftMm: 4, rightMm: 3 } },
      { kind: 'pupils', left: 4, right: 3 },
    ],
    [{ kind: 'vital', vital: 'pupils', value: { reactive: true } }, null],
  ])('of %j', (statement, number) => {
    expect(numberToChange(entry(statement))).toEqual(number);
  });
});

describe('a number put by hand', () => {
  it.each([
    ['C', 4, 'C4'],
    ['C', 8, null],
    ['rib-', 12, 'rib-12'],
    ['rib-', 13, null],
    ['T', 2.5, null],
  ] as const)('makes of %s and %s the level %s', (prefix, value, level) => {
    expect(levelOf(prefix, value)).toBe(level);
  });

  it('makes pupils of two sizes unequal, and equal ones of one size only where that was said', () => {
    expect(pupilsOf({ equal: true, leftMm: 4, rightMm: 4 }, 4, 6)).toEqual({
      equal: false,
      leftMm: 4,
      rightMm: 6,
    });
    expect(pupilsOf({ leftMm: 4, rightMm: 6 }, 4, 4)).toEqual({ leftMm: 4, rightMm: 4 });
  });
});

describe('the time to change', () => {
  it('is offered where the clock matters or a time was spoken', () => {
    expect(hasTime(entry({ kind: 'care', care: 'tourniquet' }))).toBe(true);
    expect(hasTime(entry(swelling))).toBe(false);
    expect(hasTime(entry(swelling, { at: '2031-04-05T09:50:00+02:00' }))).toBe(true);
  });
});

describe('numbers that belong together', () => {
  const made = createReader(grammarFiles());
  if (made.kind !== 'reader') throw new Error('the grammar has faults');
  const { reader } = made;
  const statements = (text: string) =>
    reader
      .read({ text, heardAt: 0, zone: '+00:00' }, reader.begin())
      .frames.flatMap((frame) => (frame.frame === 'statement' ? [frame.statement] : []));

  it.each([
    [
      pressureWords(120, 70),
      [{ kind: 'vital', vital: 'blood-pressure', value: { systolic: 120, diastolic: 70 } }],
    ],
    [
      pressureWords(84, null),
      [
        {
          kind: 'vital',
          vital: 'blood-pressure',
          value: { systolic: 84, diastolic: null, method: 'palpation' },
        },
      ],
    ],
    [gcsWords(3, 4, 6), [{ kind: 'vital', vital: 'gcs', value: { eye: 3, verbal: 4, motor: 6, total: 13 } }]],
  ])('are said as “%s” and read back as they are', (words, expected) => {
    expect(statements(words)).toEqual(expected);
  });

  it('that cannot be make no vital', () => {
    expect(statements(pressureWords(1200, 70)).some(({ kind }) => kind === 'vital')).toBe(false);
    expect(statements(pressureWords(60, 90)).some(({ kind }) => kind === 'vital')).toBe(false);
  });
});
