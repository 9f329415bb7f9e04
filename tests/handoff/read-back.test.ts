// What the other end read back, held against the record; the values are invented.

import { describe, expect, test } from 'vitest';
import { CRITERIA, flags } from '../../src/clinical/index.ts';
import { compareReadBack, criticalValues, radio } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { clockTime, input, made } from './made-up.ts';

const scene: readonly Entry[] = [
  made('age', { kind: 'history', topic: 'age', text: 'forty', years: 40 }),
  made('p', { kind: 'vital', vital: 'pulse', value: { rate: 112 } }),
  made('b', { kind: 'vital', vital: 'blood-pressure', value: { systolic: 104, diastolic: 62 } }),
  made('g', { kind: 'vital', vital: 'gcs', value: { eye: 3, verbal: 4, motor: 6, total: 13 } }),
  made('on', { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'right' }, { time: '13:51' }),
];

const critical = criticalValues(
  input(scene, { flags: flags(scene, { now: Date.parse(clockTime('14:40')) }) }),
);

const RIGHT =
  'I read back. Pressure one zero four over six two. GCS one three. Pulse one one two. Tourniquet right thigh, one three five one. Red criteria: tourniquet or packing needed, pulse above systolic. Over';

const kinds = (heard: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    compareReadBack(critical, heard).map(({ kind, value }) => [
      value.name === 'red-criterion' ? value.spoken : value.name,
      kind,
    ]),
  );

test('the critical values are pressure, GCS, pulse, tourniquets and red criteria, each with its entries', () => {
  expect(critical.map(({ name, numbers, side, entries }) => [name, numbers, side, entries])).toEqual([
    ['blood-pressure', [104, 62], null, ['b']],
    ['gcs', [13], null, ['g']],
    ['pulse', [112], null, ['p']],
    ['tourniquet', [1351], 'right', ['on']],
    ['red-criterion', [], null, expect.arrayContaining(['on'])],
    ['red-criterion', [], null, expect.arrayContaining(['p', 'b'])],
  ]);
});

describe('read back right in other words, every value is matched', () => {
  test.each([
    RIGHT,
    'pressure 104/62, GCS 13, pulse 112, tourniquet right thigh 13:51, red criteria tourniquet or packing needed and heart rate over systolic',
    'blood pressure one oh four over sixty two gcs thirteen pulse one twelve tourniquet on the right thigh at thirteen fifty one red criteria tourniquet or packing needed pulse above systolic pressure',
    'BP 104 over 62. Glasgow coma scale 13. Heart rate one hundred and twelve. Tourniquet, right thigh, at thirteen fifty one. Red criteria: packing or tourniquet needed, pulse above systolic.',
  ])('%s', (heard) => {
    expect(new Set(Object.values(kinds(heard))), JSON.stringify(kinds(heard))).toEqual(new Set(['matched']));
  });
});

describe('one word changed is one value that differs', () => {
  const rows = [
    ['Pulse one one two', 'Pulse one one zero', 'pulse'],
    ['Pulse one one two', 'no pulse', 'pulse'],
    ['one zero four over six two', 'one four zero over six two', 'blood-pressure'],
    ['one zero four over six two', 'one zero four over seven two', 'blood-pressure'],
    ['one zero four over six two', 'one zero four', 'blood-pressure'],
    ['GCS one three', 'GCS one five', 'gcs'],
    ['right thigh', 'left thigh', 'tourniquet'],
    ['right thigh', 'both thighs', 'tourniquet'],
    ['one three five one', 'one three one five', 'tourniquet'],
    ['Tourniquet right', 'No tourniquet right', 'tourniquet'],
    ['pulse above', 'pulse not above', 'pulse above systolic'],
  ] as const;
  test.each(rows)('%s as %s', (right, wrong, name) => {
    const found = kinds(RIGHT.replace(right, wrong));
    const others = Object.entries(found).filter(([other]) => other !== name);
    expect(found[name]).toBe('differs');
    // A criterion is told in one stretch: a "no" in it puts all that was said in it in doubt.
    if (!name.includes('above'))
      expect(new Set(others.map(([, kind]) => kind))).toEqual(new Set(['matched']));
  });
});

describe('what was not said is missing', () => {
  const rows = [
    ['Pulse one one two. ', '', 'pulse'],
    ['GCS one three', 'GCS', 'gcs'],
    ['right thigh', 'thigh', 'tourniquet'],
    [', pulse above systolic', '', 'pulse above systolic'],
  ] as const;
  test.each(rows)('%s as %j', (right, wrong, name) => {
    expect(kinds(RIGHT.replace(right, wrong))[name]).toBe('missing');
  });
  test('of silence, all of it', () => {
    expect(new Set(Object.values(kinds('')))).toEqual(new Set(['missing']));
  });
  test('and a criterion is not read back by vitals that happen to be named', () => {
    const heard = 'pressure 104 over 62, pulse 112, above all GCS 13, systolic';
    expect(kinds(heard)['pulse above systolic']).toBe('missing');
  });
});

test('the sentence says what they said and what the record says, digit by digit', () => {
  const [row] = compareReadBack(critical, 'pulse one one zero').filter(({ kind }) => kind === 'differs');
  expect(row?.sentence).toBe('They said pulse one one zero, the record says one one two.');
  const [figure] = compareReadBack(critical, 'pulse 110').filter(({ kind }) => kind === 'differs');
  expect(figure?.sentence).toBe('They said pulse one one zero, the record says one one two.');
});

test('every red criterion there is, read back as it was said, is matched', () => {
  const all = CRITERIA.filter(({ level }) => level === 'red').map(({ rule, text }) => ({
    rule,
    text,
    level: 'red' as const,
    state: 'met' as const,
    evidence: ['p'],
    source: 'invented',
  }));
  expect(all.length).toBe(17);
  const report = input(scene, { flags: all });
  const values = criticalValues(report);
  const said = radio(report).chunks.map(({ text }) => text.replace(/ (?:break|over)$/, ''));
  const heard = said.join(' ');
  const rows = compareReadBack(values, heard.slice(heard.indexOf('Read back')));
  expect(rows.filter(({ kind }) => kind !== 'matched').map(({ sentence }) => sentence)).toEqual([]);
});

test('nothing was critical, nothing is compared', () => {
  expect(compareReadBack([], RIGHT)).toEqual([]);
});
