// The lowest GCS where a part could not be tested; the readings are invented.

import { describe, expect, test } from 'vitest';
import { compareReadBack, criticalValues, radio } from '../../src/handoff/index.ts';
import { shortSeries } from '../../src/handoff/sentences/vitals.ts';
import type { Entry } from '../../src/record/entry.ts';
import { series } from '../../src/timeline/index.ts';
import { input, made, STARTED } from './made-up.ts';

type Value = Extract<Entry, { vital: 'gcs' }>['value'];

const reading = (id: string, time: string, value: Value): Entry =>
  made(id, { kind: 'vital', vital: 'gcs', value }, { time });

const total = (id: string, time: string, sum: number): Entry => reading(id, time, { total: sum });
/** Eight at the most were its parts 1 and 2, ten were they 1 and 4. */
const untested = (id: string, time: string, eye: number, motor: number): Entry =>
  reading(id, time, { eye, verbal: 'NT', motor });

const spoken = (...entries: readonly Entry[]): readonly string[] =>
  criticalValues(input(entries)).map((one) => one.spoken);

describe('a reading without a total', () => {
  test('that is lower whatever its untested part leaves no total as the lowest', () => {
    expect(spoken(total('a', '14:06', 12), untested('b', '14:20', 1, 4))).toEqual([
      'GCS eye one, verbal not testable, motor four, no total',
    ]);
  });

  test('is the lowest itself where another was read since', () => {
    expect(spoken(total('a', '14:06', 14), untested('b', '14:20', 1, 4), total('c', '14:30', 13))).toEqual([
      'GCS one three',
      'lowest GCS eye one, verbal not testable, motor four, no total',
    ]);
  });

  test('that may be lower or not leaves the lowest of the totals, named so', () => {
    expect(spoken(total('a', '14:06', 12), untested('b', '14:20', 3, 6))).toEqual([
      'GCS eye three, verbal not testable, motor six, no total',
      'lowest GCS with a total one two',
    ]);
  });

  test('that cannot be lower changes nothing', () => {
    expect(spoken(untested('a', '14:06', 3, 6), total('b', '14:20', 7), total('c', '14:30', 14))).toEqual([
      'GCS one four',
      'lowest GCS seven',
    ]);
  });
});

describe('a reading of which a part was not said', () => {
  const lowestOnAir = (value: Value): string | undefined =>
    spoken(total('a', '14:06', 15), reading('b', '14:20', value), total('c', '14:30', 15)).find((one) =>
      one.startsWith('lowest'),
    );

  test('is the lowest where its parts fell below every total', () => {
    expect(lowestOnAir({ eye: 2, verbal: 3 })).toMatch(/^lowest GCS eye two, verbal three/);
  });

  test('that may be lower or not leaves no total as simply the lowest', () => {
    expect(lowestOnAir({ motor: 6 }) ?? '').not.toMatch(/^lowest GCS one five/);
  });
});

test('totals alone are compared as they were', () => {
  expect(spoken(total('a', '14:06', 9), total('b', '14:20', 13))).toEqual([
    'GCS one three',
    'lowest GCS niner',
  ]);
  expect(spoken(total('a', '14:06', 13), total('b', '14:20', 9))).toEqual(['GCS niner']);
});

test('the trend of a long series calls no total the lowest beside a lower reading', () => {
  const [gcs] = series([
    total('a', '14:06', 14),
    total('b', '14:10', 12),
    untested('c', '14:15', 1, 4),
    total('d', '14:20', 13),
    total('e', '14:30', 15),
  ]);
  if (gcs === undefined) throw new Error('no series');
  const { text } = shortSeries(gcs, STARTED.slice(0, 10));
  expect(text).toMatch(/lowest E1, V not testable, M4, no total at 14:15/);
  expect(text).not.toMatch(/lowest total 12/);
});

test('read back as it was said it is right', () => {
  const critical = criticalValues(input([total('a', '14:06', 12), untested('b', '14:20', 3, 6)]));
  const heard = 'GCS eye three, verbal not testable, motor six, no total. Lowest GCS with a total one two';
  expect(compareReadBack(critical, heard).map(({ kind }) => kind)).toEqual(['matched', 'matched']);
});

test('the first reading without a total is told by its parts', () => {
  const text = radio(input([untested('a', '14:06', 3, 6), total('b', '14:20', 14)])).chunks.map(
    (one) => one.text,
  );
  expect(text.join(' ')).toMatch(/GCS at first eye three, verbal not testable, motor six, no total at/);
});
