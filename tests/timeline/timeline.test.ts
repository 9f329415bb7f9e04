// The timeline of invented entries.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stands } from '../../src/record/entry.ts';
import type { Statement } from '../../src/terms/index.ts';
import { gaps, inOrder, series, timelineLines, timelineText } from '../../src/timeline/index.ts';
import { record } from '../handoff/arbitrary.ts';
import { clockTime, made, STARTED } from '../handoff/made-up.ts';

const cut: Statement = {
  kind: 'finding',
  site: 'forearm',
  side: 'right',
  finding: 'laceration',
  present: true,
  size: { value: 3, unit: 'cm' },
};

const text = (entries: Parameters<typeof timelineText>[0]['entries']): string =>
  timelineText({ startedAt: STARTED, entries });

describe('a line reads in a second: side first in capitals, a negative ending in NO', () => {
  const rows: readonly [Statement, string][] = [
    [cut, 'RIGHT forearm: laceration 3 cm'],
    [
      { kind: 'finding', site: 'thigh', side: 'left', finding: 'bleeding', present: false },
      'LEFT thigh: bleeding: NO',
    ],
    [
      { kind: 'finding', site: 'knee', side: 'both', finding: 'pain', present: true, severity: 4 },
      'BOTH knees: pain 4 out of 10',
    ],
    [
      { kind: 'finding', site: 'ribs', side: 'both', finding: 'pain', present: true },
      'BOTH SIDES ribs: pain',
    ],
    [
      { kind: 'finding', site: 'wrist', side: null, finding: 'pain', present: true },
      'SIDE NOT SAID wrist: pain',
    ],
    [
      { kind: 'finding', site: 'abdomen', side: null, finding: 'rigidity', present: true },
      'Abdomen: rigidity',
    ],
    [
      { kind: 'finding', site: 'ribs', side: 'left', finding: 'tenderness', present: true, level: 'rib-7' },
      'LEFT ribs, rib 7: tenderness',
    ],
    [
      { kind: 'csm', site: 'foot', side: 'left', aspect: 'circulation', present: false },
      'LEFT foot: circulation intact: NO',
    ],
    [
      {
        kind: 'csm',
        site: 'foot',
        side: 'right',
        aspect: 'circulation',
        present: false,
        pulse: 'dorsalis-pedis',
      },
      'RIGHT foot: circulation intact: NO (no dorsalis pedis pulse)',
    ],
    [
      { kind: 'csm', site: 'hand', side: 'left', aspect: 'circulation', present: true, pulse: 'radial' },
      'LEFT hand: circulation intact (radial pulse present)',
    ],
    [
      { kind: 'csm', site: 'hand', side: 'right', aspect: 'motion', present: true, strength: 4 },
      'RIGHT hand: motion present (strength 4 of 5)',
    ],
    [
      {
        kind: 'vital',
        vital: 'blood-pressure',
        value: { systolic: 90, diastolic: null, method: 'palpation' },
      },
      'Blood pressure 90 by palpation',
    ],
    [
      { kind: 'vital', vital: 'pupils', value: { equal: false, leftMm: 4, rightMm: 6 } },
      'Pupils NOT equal, left 4 mm, right 6 mm',
    ],
    [
      { kind: 'vital', vital: 'oxygen-saturation', value: { percent: 96, onOxygen: false } },
      'Oxygen saturation 96% without oxygen',
    ],
    [{ kind: 'vital', vital: 'oxygen-saturation', value: { percent: 96 } }, 'Oxygen saturation 96%'],
    [{ kind: 'history', topic: 'allergies', text: 'allergies', present: false }, 'Allergies: NO'],
    [{ kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' }, 'LEFT thigh: care, tourniquet'],
    [{ kind: 'visit', site: 'hip', side: 'left' }, 'LEFT hip: looked at or felt'],
    [{ kind: 'mark', text: 'moved him' }, 'MARK: moved him'],
    [{ kind: 'note', text: 'rope\nfrayed' }, 'Note: rope frayed'],
  ];
  test.each(rows)('%j', (statement, line) => {
    expect(text([made('a', statement)])).toBe(`14:06  ${line}`);
  });
});

test('entries stand in the order they were so, and at one time in the order spoken', () => {
  const late = made('late', cut, { time: '14:20' });
  const told = made('told', cut, { time: '14:21', at: clockTime('14:01') });
  const first = made('first', cut);
  const second = made('second', cut);
  expect(inOrder([late, first, second, told]).map(({ id }) => id)).toEqual([
    'told',
    'first',
    'second',
    'late',
  ]);
});

test('a time that was spoken shows when it was said too', () => {
  expect(text([made('a', cut, { time: '14:20', at: clockTime('14:12') })])).toBe(
    '14:12  RIGHT forearm: laceration 3 cm (said at 14:20)',
  );
});

test('what is unconfirmed, was not spoken or is in doubt is marked', () => {
  const entry = made('a', cut, {
    state: 'heard',
    known: { side: 'carried', present: 'inferred' },
    doubt: ['forearm or four arms?'],
  });
  expect(text([entry])).toContain(
    '(unconfirmed; side carried; yes or no inferred; to settle: forearm or four arms?)',
  );
});

test('a struck entry and a replaced one are shown as such, with what stands in its place', () => {
  const entries = [
    made('a', cut, { state: 'struck' }),
    made('b', cut, { state: 'replaced', replacedBy: 'c' }),
    made('c', { ...cut, side: 'left' }),
  ];
  const lines = timelineLines({ startedAt: STARTED, entries });
  expect(lines.map(({ text: said, state }) => [said, state])).toEqual([
    ['STRUCK, does not stand: RIGHT forearm: laceration 3 cm', 'struck'],
    [
      'REPLACED, does not stand: RIGHT forearm: laceration 3 cm; now: LEFT forearm: laceration 3 cm',
      'replaced',
    ],
    ['LEFT forearm: laceration 3 cm', 'confirmed'],
  ]);
});

test('every entry of any record is in one line, and what does not stand never opens like what does', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const lines = timelineLines({ startedAt: STARTED, entries });
      const ids = lines.flatMap((line) => line.entries);
      expect([...ids].sort()).toEqual(entries.map(({ id }) => id).sort());
      for (const entry of entries) {
        const line = lines.find((one) => one.entries.includes(entry.id));
        expect(/^(STRUCK|REPLACED), does not stand: /.test(line?.text ?? '')).toBe(!stands(entry));
        expect(/\bunconfirmed\b/.test(line?.text ?? '')).toBe(entry.state === 'heard');
      }
    }),
  );
});

describe('a gap in talk', () => {
  const at = (time: string, id = time) => made(id, cut, { time });
  test('is named where it is longer than five minutes', () => {
    expect(gaps([at('14:06'), at('14:17')])).toEqual([
      { from: clockTime('14:06'), to: clockTime('14:17'), minutes: 11 },
    ]);
    expect(text([at('14:06'), at('14:17')])).toContain(
      '\n14:06  Nothing heard for 11 minutes, until 14:17\n',
    );
  });
  test('is none at five minutes', () => {
    expect(gaps([at('14:06'), at('14:11')])).toEqual([]);
  });
  test('goes by when words were heard, not by the times they tell of', () => {
    expect(gaps([at('14:06'), made('told', cut, { time: '14:07', at: clockTime('13:00') })])).toEqual([]);
  });
  test('is as long as the reader asks', () => {
    const entries = [at('14:06'), at('14:08')];
    expect(timelineLines({ startedAt: STARTED, entries, gapMinutes: 1 }).map(({ state }) => state)).toContain(
      'gap',
    );
  });
  test('is none in a record of nothing', () => {
    expect(text([])).toBe('');
  });
});

describe('a stretch in which nothing could be heard', () => {
  const why = 'the page was hidden';
  const lines = (from: string, to: string) =>
    timelineLines({
      startedAt: STARTED,
      entries: [made('late', cut, { time: '14:20' })],
      unheard: [{ from: clockTime(from), to: clockTime(to), why }],
    });
  test('stands in the timeline where it began, with its length and why', () => {
    expect(lines('14:18', '14:19')[0]).toEqual({
      at: clockTime('14:18'),
      text: 'NOT LISTENING for 60 s, until 14:19: the page was hidden',
      entries: [],
      state: 'gap',
    });
  });
  test('is told in minutes where it was long', () => {
    expect(lines('14:10', '14:19')[0]?.text).toContain('for 9 min,');
  });
});

describe('repeats of a vital', () => {
  const pulse = (
    id: string,
    rate: number,
    time: string,
    state: 'heard' | 'confirmed' | 'struck' = 'confirmed',
  ) => made(id, { kind: 'vital', vital: 'pulse', value: { rate } }, { time, state });
  test('stand as a series in the order they were true, without struck ones', () => {
    const entries = [pulse('b', 112, '14:20'), pulse('a', 92, '14:10'), pulse('x', 200, '14:15', 'struck')];
    expect(series(entries).map(({ readings }) => readings.map(({ id }) => id))).toEqual([['a', 'b']]);
  });
  test('are listed after the lines, unconfirmed ones marked', () => {
    const said = text([pulse('a', 92, '14:10'), pulse('b', 112, '14:12', 'heard')]);
    expect(said.split('\n').slice(-2)).toEqual(['Series', 'Pulse: 14:10 92; 14:12 112 (unconfirmed)']);
    expect(said).toContain('14:12  Pulse 112 (last taken 14:10; unconfirmed)');
  });
  test('make no series where there is one reading', () => {
    expect(text([pulse('a', 92, '14:10')])).not.toContain('Series');
  });
});

describe('what needs no line of its own', () => {
  const look = (facts: Parameters<typeof made>[2] = {}) =>
    made('look', { kind: 'visit', site: 'forearm', side: 'right' }, facts);
  const lines = (entries: Parameters<typeof timelineText>[0]['entries']) =>
    timelineLines({ startedAt: STARTED, entries }).map((line) => [line.text, line.entries]);
  test('a look stands with what was found there', () => {
    expect(lines([look(), made('cut', cut)])).toEqual([['RIGHT forearm: laceration 3 cm', ['cut', 'look']]]);
  });
  test('the same said again in its minute stands with the first', () => {
    expect(lines([made('one', cut), made('two', cut)])).toEqual([
      ['RIGHT forearm: laceration 3 cm', ['one', 'two']],
    ]);
  });
  const own: readonly [string, Parameters<typeof timelineText>[0]['entries']][] = [
    [
      'a look at another side',
      [made('look', { kind: 'visit', site: 'forearm', side: 'left' }), made('cut', cut)],
    ],
    [
      'a look at a wider place',
      [made('look', { kind: 'visit', site: 'arm', side: 'right' }), made('cut', cut)],
    ],
    ['a look some minutes away', [look(), made('cut', cut, { time: '14:09' })]],
    ['a look that is not confirmed, at what is', [look({ state: 'heard' }), made('cut', cut)]],
    ['a look that is in doubt', [look({ doubt: ['which arm?'] }), made('cut', cut)]],
    ['a look that was struck', [look({ state: 'struck' }), made('cut', cut)]],
    ['a look at what was struck', [look(), made('cut', cut, { state: 'struck' })]],
    ['the same said a minute later', [made('one', cut), made('two', cut, { time: '14:07' })]],
    ['the same said with another mark', [made('one', cut), made('two', cut, { known: { side: 'carried' } })]],
    ['the same said with the other answer', [made('one', cut), made('two', { ...cut, present: false })]],
  ];
  test.each(own)('is not %s', (_, entries) => {
    const said = timelineLines({ startedAt: STARTED, entries }).filter(({ state }) => state !== 'gap');
    expect(said.map((line) => line.entries.length)).toEqual([1, 1]);
  });
  test('is not a second reading of a vital with another value', () => {
    const pulse = (id: string, rate: number) => made(id, { kind: 'vital', vital: 'pulse', value: { rate } });
    expect(text([pulse('a', 92), pulse('b', 94)])).toContain('Pulse: 14:06 92; 14:06 94');
    expect(text([pulse('a', 92), pulse('b', 92)])).toContain('Pulse: 14:06 92');
  });
});
