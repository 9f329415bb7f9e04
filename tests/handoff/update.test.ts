// A second report on an invented record: what changed since the first.

import { describe, expect, test } from 'vitest';
import { radioUpdate, updateSince } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { Statement } from '../../src/terms/index.ts';
import { clockTime, input, made } from './made-up.ts';

const SINCE = clockTime('14:15');
const texts = (entries: readonly Entry[]): readonly string[] =>
  updateSince(input(entries), SINCE).lines.map(({ text }) => text);

const pulse = (id: string, rate: number, time: string): Entry =>
  made(id, { kind: 'vital', vital: 'pulse', value: { rate } }, { time });
const bleeding = (id: string, present: boolean, time: string): Entry =>
  made(id, { kind: 'finding', site: 'thigh', side: 'left', finding: 'bleeding', present }, { time });

test('the heading says since when and when it was made, by the clock of the place', () => {
  expect(texts([])[0]).toContain('Update since 14:15, made at 14:40.');
  const zulu = updateSince(input([]), new Date(Date.parse(SINCE)).toISOString());
  expect(zulu.lines[0]?.text).toContain('Update since 14:15,');
});

test('nothing new is said to be nothing new', () => {
  expect(texts([pulse('a', 92, '14:10')])).toContain('Nothing new was said.');
  expect(radioUpdate(input([pulse('a', 92, '14:10')]), SINCE).chunks.map(({ text }) => text)).toEqual([
    'Update since one four one five. Nothing new was said. over',
  ]);
});

test('a sign is told with what it was before, each with its time', () => {
  const { lines } = updateSince(input([pulse('a', 92, '14:10'), pulse('b', 112, '14:30')]), SINCE);
  expect(lines).toContainEqual({
    text: 'Pulse: now 112 at 14:30; was 92 at 14:10.',
    entries: ['b', 'a'],
    role: 'line',
  });
});

describe('a finding', () => {
  test('that turned is told both ways', () => {
    expect(texts([bleeding('a', true, '14:08'), bleeding('b', false, '14:20')])).toContain(
      'No bleeding of the left thigh at 14:20; before that: Left thigh: bleeding at 14:08.',
    );
  });
  test('that was told already is not told again', () => {
    expect(texts([bleeding('a', true, '14:08')]).join()).not.toContain('bleeding');
  });
});

test('a limb that is not intact any more is told with what it was', () => {
  const at = (id: string, present: boolean, time: string): Entry =>
    made(id, { kind: 'csm', site: 'foot', side: 'left', aspect: 'circulation', present }, { time });
  expect(texts([at('a', true, '14:08'), at('b', false, '14:20')])).toContain(
    'Circulation NOT intact in the left foot; before that, at 14:08: Circulation intact in the left foot.',
  );
});

describe('what was told and does not stand any more is taken back', () => {
  const wrong = (more: object): Entry => ({ ...bleeding('a', true, '14:08'), ...more });
  test('where it was struck', () => {
    expect(texts([wrong({ state: 'struck' })])).toContain('Does not stand any more: LEFT thigh: bleeding.');
  });
  test('where another took its place since, with that', () => {
    const heir: Statement = {
      kind: 'finding',
      site: 'thigh',
      side: 'right',
      finding: 'bleeding',
      present: true,
    };
    const said = texts([wrong({ state: 'replaced', replacedBy: 'b' }), made('b', heir, { time: '14:20' })]);
    expect(said).toContain('Does not stand any more: LEFT thigh: bleeding; now: RIGHT thigh: bleeding.');
  });
  test('but not where the first report had the right one already', () => {
    const said = texts([wrong({ state: 'replaced', replacedBy: 'b' }), bleeding('b', false, '14:09')]);
    expect(said).toContain('Nothing new was said.');
  });
});

test('care, history and words kept since are told, and what came before is not', () => {
  const said = texts([
    made('old', { kind: 'care', care: 'dressing', site: 'knee', side: 'left' }, { time: '14:10' }),
    made('new', { kind: 'care', care: 'splint', site: 'knee', side: 'left' }, { time: '14:20' }),
    made('drug', { kind: 'history', topic: 'allergies', text: 'penicillin' }, { time: '14:21' }),
    made('note', { kind: 'note', text: 'it began to rain' }, { time: '14:22' }),
  ]);
  expect(said).toEqual(
    expect.arrayContaining([
      'Splint to the left knee at 14:20.',
      'Allergies: penicillin.',
      'As said at 14:22: “it began to rain”.',
    ]),
  );
  expect(said.join()).not.toContain('Dressing');
});

test('a criterion is told where it rests on something said since', () => {
  const flag = {
    rule: 'pulse-over-systolic',
    level: 'red',
    state: 'met',
    text: 'Invented',
    source: 'Invented',
  } as const;
  const met = (evidence: readonly string[]): readonly string[] =>
    updateSince(
      input([pulse('a', 92, '14:10'), pulse('b', 130, '14:30')], { flags: [{ ...flag, evidence }] }),
      SINCE,
    ).lines.map(({ text }) => text);
  expect(met(['b'])).toContain('Red criterion met: heart rate above systolic.');
  expect(met(['a']).join()).not.toContain('criterion');
});

describe('what was confirmed since', () => {
  const heard = (entry: Entry): Entry => ({ ...entry, state: 'heard' });
  const update = (entries: readonly Entry[], confirmed: readonly string[]): readonly string[] =>
    updateSince(input(entries), SINCE, { confirmed: new Set(confirmed) }).lines.map(({ text }) => text);
  test('is told with its words while something else still waits', () => {
    const said = update([bleeding('a', true, '14:08'), heard(pulse('b', 92, '14:09'))], ['a']);
    expect(said).toContain('Confirmed now: Left thigh: bleeding.');
    expect(said.join()).not.toContain('Pulse');
  });
  test('is told in one sentence where it is all that was told', () => {
    expect(update([bleeding('a', true, '14:08'), pulse('b', 92, '14:09')], ['a', 'b'])).toContain(
      'All that was told before is confirmed now.',
    );
  });
  test('is counted where it is much', () => {
    const many = Array.from({ length: 9 }, (_, index) =>
      made(`k${index}`, { kind: 'note', text: `invented ${index}` }, { time: `14:0${index}` }),
    );
    const said = update(
      [...many, heard(pulse('b', 92, '14:09'))],
      many.map(({ id }) => id),
    );
    expect(said).toContain('Confirmed now: 9 of 10 statements.');
  });
  test('is not told of what was struck, nor of what is new', () => {
    const struck: Entry = { ...bleeding('a', true, '14:08'), state: 'struck' };
    const said = update([struck, pulse('b', 92, '14:30')], ['a', 'b']).join(' ');
    expect(said).not.toMatch(/confirmed now/i);
  });
  test('is part of the radio update too', () => {
    const { chunks } = radioUpdate(input([bleeding('a', true, '14:08')]), SINCE, {
      confirmed: new Set(['a']),
    });
    expect(chunks.map(({ text }) => text).join(' ')).toContain('All that was told before is confirmed now.');
  });
});
