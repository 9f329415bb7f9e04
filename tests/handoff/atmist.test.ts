// The ATMIST handover; the entries are invented.

import { describe, expect, test } from 'vitest';
import { mist } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { clockTime, input, made } from './made-up.ts';

const texts = (entries: readonly Entry[]): readonly string[] =>
  mist(input(entries)).lines.map(({ text }) => text);

test('the parts stand in the order age, time, mechanism, injuries, signs, treatment', () => {
  const headings = mist(input([]))
    .lines.filter(({ role }) => role === 'heading')
    .map(({ text }) => text.charAt(0));
  expect(headings.join('').slice(1)).toBe('ATMIST');
});

test('what nobody said is not recorded', () => {
  const said = texts([]);
  expect(said).toEqual(
    expect.arrayContaining([
      'Age: not recorded.',
      'Sex: not recorded.',
      'Name: not recorded.',
      'Time of incident: not recorded.',
      'Mechanism: not recorded.',
      'Not recorded.',
    ]),
  );
});

describe('the time of the incident', () => {
  const fall = (at?: string) =>
    made('a', { kind: 'history', topic: 'mechanism', text: 'fell' }, at === undefined ? {} : { at });
  test('is the time spoken with the mechanism', () => {
    expect(texts([fall(clockTime('13:20'))])).toContain(
      'Time of incident: 13:20, 1 hour 20 minutes before this report.',
    );
  });
  test('is not the time at which the mechanism was told', () => {
    expect(texts([fall()])).toContain('Time of incident: not recorded.');
  });
  test('is not the time told of a complaint, which is given as that', () => {
    const told = made('b', { kind: 'history', topic: 'time', text: 'about an hour' });
    expect(texts([told])).toEqual(
      expect.arrayContaining([
        'Time of incident: not recorded.',
        'Time told of the complaint: about an hour.',
      ]),
    );
  });
});

test('many readings are told by the first, the extremes and the last, and all of them are evidence', () => {
  const rates = [92, 124, 80, 118, 112];
  const entries = rates.map((rate, index) =>
    made(`p${index}`, { kind: 'vital', vital: 'pulse', value: { rate } }, { time: `14:1${index}` }),
  );
  const line = mist(input(entries)).lines.find(({ text }) => text.startsWith('Pulse'));
  expect(line?.text).toBe(
    'Pulse, 5 readings: first 92 at 14:10; highest 124 at 14:11; lowest 80 at 14:12; last 112 at 14:14.',
  );
  expect(line?.entries).toEqual(['p0', 'p1', 'p2', 'p3', 'p4']);
});

test('a steady rise has no lowest or highest besides its first and last', () => {
  const entries = [92, 100, 112].map((rate, index) =>
    made(`p${index}`, { kind: 'vital', vital: 'pulse', value: { rate } }, { time: `14:1${index}` }),
  );
  expect(texts(entries)).toContain('Pulse, 3 readings: first 92 at 14:10; last 112 at 14:12.');
});

test('an answer against an injury stands beside it, once', () => {
  const at = (id: string, present: boolean, time: string) =>
    made(id, { kind: 'finding', site: 'thigh', side: 'left', finding: 'bleeding', present }, { time });
  const said = texts([at('a', true, '14:08'), at('b', false, '14:20')]);
  expect(said.filter((text) => text.includes('bleeding'))).toEqual([
    'Left thigh: bleeding at 14:08; also said: no bleeding of the left thigh at 14:20.',
  ]);
});

describe('when help arrives and what is needed', () => {
  const rows = [
    ['the aircraft is twelve minutes out', 'Arrival, said at 14:06: “the aircraft is twelve minutes out”.'],
    ['ETA ten', 'Arrival, said at 14:06: “ETA ten”.'],
    ['we need a stretcher', 'Needed, said at 14:06: “we need a stretcher”.'],
  ] as const;
  test.each(rows)('is quoted where %j was said', (text, line) => {
    expect(texts([made('a', { kind: 'note', text })])).toContain(line);
  });
  test.each(['the rope is frayed', 'he kneeled down', 'no need to worry about the metal'])(
    'is not made out of %j',
    (text) => {
      const said = texts([made('a', { kind: 'note', text })]);
      expect(said.filter((line) => /^(Arrival|Needed)/.test(line))).toEqual([]);
    },
  );
  test('has no part of its own where nothing was said', () => {
    expect(texts([]).filter((text) => /^[ER] {2}/.test(text))).toEqual([]);
  });
});
