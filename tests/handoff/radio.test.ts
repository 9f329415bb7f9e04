// The radio script; the entries are invented.

import { describe, expect, test } from 'vitest';
import { type HandoffInput, radio, sayFigures, spell } from '../../src/handoff/index.ts';
import { chunks } from '../../src/handoff/radio/chunks.ts';
import { speak } from '../../src/handoff/radio/speak.ts';
import type { Entry } from '../../src/record/entry.ts';
import { input, made, nothingExamined } from './made-up.ts';

const whole = (entries: readonly Entry[], more: Partial<HandoffInput> = {}): string =>
  radio(input(entries, more))
    .chunks.map(({ text }) => text.replace(/ (break|over)$/, ''))
    .join(' ');

describe('figures are spoken digit by digit', () => {
  const rows = [
    ['112', 'one one two'],
    ['9', 'niner'],
    ['0', 'zero'],
    ['104', 'one zero four'],
    ['36.8', 'three six decimal eight'],
    ['0.5', 'zero decimal five'],
    ['2000', 'two thousand'],
    ['16,000', 'one six thousand'],
    ['16500', 'one six five zero zero'],
    ['007', 'zero zero seven'],
    ['000', 'zero zero zero'],
  ] as const;
  test.each(rows)('%s is %s', (figures, words) => {
    expect(sayFigures(figures)).toBe(words);
  });
});

describe('written prose becomes words to read aloud', () => {
  const rows = [
    ['Pulse: 112 at 14:10 (unconfirmed).', 'Pulse: one one two at one four one zero, unconfirmed.'],
    [
      'Blood pressure: 118/76 at 09:00.',
      'Blood pressure: one one eight over seven six at zero niner zero zero.',
    ],
    ['Temperature: 36.8 °C.', 'Temperature: three six decimal eight degrees Celsius.'],
    ['Oxygen saturation: 96% on oxygen.', 'Oxygen saturation: niner six percent on oxygen.'],
    ['GCS: E3, V4, M6, total 13.', 'GCS: eye three, verbal four, motor six, total one three.'],
    ['GCS: E4, V not testable, M6, no total.', 'GCS: eye four, verbal not testable, motor six, no total.'],
    [
      'Pupils: left 4 mm, right 5.5 mm.',
      'Pupils: left four millimetres, right five decimal five millimetres.',
    ],
    ['Right forearm: 3 cm laceration.', 'Right forearm: three centimetre laceration.'],
    ['Right hip: pain (6 out of 10) (unconfirmed).', 'Right hip: pain, six out of ten, unconfirmed.'],
    ['Cervical spine at C5: tenderness.', 'Cervical spine at C five: tenderness.'],
    ['Glucose: 104 mg/dL.', 'Glucose: one zero four milligrams per decilitre.'],
    [
      'Medication: ibuprofen 400 mg, at 14:20.',
      'Medication: ibuprofen four zero zero milligrams, at one four two zero.',
    ],
    ['Noted: 3, 4 or 7-8 times', 'Noted: three, four or seven to eight times'],
    [
      'RR < 10 or > 29 breaths/min, SBP <90 mm Hg',
      'RR less than one zero or more than two niner breaths per minute, SBP less than niner zero millimetres of mercury',
    ],
    ['In 2 in of snow', 'In two in of snow'],
    [
      'Age over 65, SBP <110 [Guide, 2021].',
      'Age over six five, SBP less than one one zero, Guide, two zero two one.',
    ],
  ] as const;
  test.each(rows)('%s', (written, spoken) => {
    expect(speak(written)).toBe(spoken);
  });
});

describe('a report is cut where a listener can answer', () => {
  const sentence = (words: number, id: string) => ({
    text: `${Array.from({ length: words }, (_, index) => `${id}${index}`).join(' ')}.`,
    entries: [id],
  });
  test('between sentences where each fits', () => {
    const cut = chunks([sentence(20, 'a'), sentence(19, 'b'), sentence(1, 'c')]);
    expect(cut.map(({ entries }) => entries)).toEqual([['a', 'b'], ['c']]);
    expect(cut[0]?.text.split(' ')).toHaveLength(40);
  });
  test('within a sentence only where it fits no piece, and what is left says that it goes on', () => {
    const cut = chunks([sentence(50, 'a')]);
    expect(cut).toHaveLength(2);
    expect(cut[0]?.text).toMatch(/^a0 .* break$/);
    expect(cut[1]?.text).toMatch(/^continuing, .* over$/);
    expect(cut.every(({ entries }) => entries.includes('a'))).toBe(true);
  });
  test('at a comma rather than between two words of one thought', () => {
    const text = `${'a '.repeat(29)}a, ${'b '.repeat(20)}b.`;
    expect(chunks([{ text, entries: [] }])[0]?.text).toMatch(/a, break$/);
  });
  test('a single piece is over at once', () => {
    expect(chunks([sentence(3, 'a')]).map(({ text }) => text)).toEqual(['a0 a1 a2. over']);
  });
});

const scene: readonly Entry[] = [
  made('age', { kind: 'history', topic: 'age', text: 'thirty four', years: 34 }),
  made('fall', { kind: 'history', topic: 'mechanism', text: 'fell off a rock step' }),
  made('p1', { kind: 'vital', vital: 'pulse', value: { rate: 92 } }, { time: '14:10' }),
  made('p2', { kind: 'vital', vital: 'pulse', value: { rate: 112 } }, { time: '14:30' }),
  made(
    'b1',
    { kind: 'vital', vital: 'blood-pressure', value: { systolic: 86, diastolic: 50 } },
    { time: '14:10' },
  ),
  made(
    'b2',
    { kind: 'vital', vital: 'blood-pressure', value: { systolic: 118, diastolic: 76 } },
    { time: '14:30' },
  ),
  made('g', { kind: 'vital', vital: 'gcs', value: { eye: 3, verbal: 4, motor: 6, total: 13 } }),
  made('cut', { kind: 'finding', site: 'forearm', side: 'right', finding: 'laceration', present: true }),
  made('no', { kind: 'finding', site: 'wrist', side: 'right', finding: 'deformity', present: false }),
  made('ear', { kind: 'finding', site: 'ear', side: 'left', finding: 'fluid', present: false }),
  made('care', { kind: 'care', care: 'dressing', site: 'forearm', side: 'right' }, { time: '14:15' }),
];

test('the script goes from who, by the worst, to time, mechanism, injuries, signs, treatment and the read-back', () => {
  const said = whole(scene, { coverage: nothingExamined });
  const places = [
    'Age: three four years.',
    'Right forearm: laceration.',
    'Time of incident: not recorded.',
    'Mechanism: fell off a rock step.',
    'No deformity of the right wrist.',
    'Not examined: head,',
    'Pulse first niner two',
    'Dressing to the right forearm',
    'Read back the following.',
  ].map((words) => said.indexOf(words));
  expect(places).not.toContain(-1);
  expect(places).toEqual([...places].sort((one, other) => one - other));
});

test('the values that get lost are asked back: pressure with its lowest, GCS and pulse', () => {
  const said = whole(scene);
  const back = said.slice(said.indexOf('Read back'));
  expect(back).toBe(
    'Read back the following. Blood pressure one one eight over seven six. Lowest pressure eight six over five zero. GCS eye three, verbal four, motor six, total one three. Pulse one one two.',
  );
});

test('a red criterion is told early and asked back', () => {
  const flags = [
    {
      rule: 'r',
      level: 'red',
      state: 'met',
      text: 'Invented criterion',
      evidence: ['cut'],
      source: 'Invented',
    },
  ] as const;
  const said = whole(scene, { flags });
  expect(said.indexOf('Red criterion met: Invented criterion.')).toBeLessThan(
    said.indexOf('Time of incident'),
  );
  expect(said.slice(said.indexOf('Read back'))).toContain('Red criterion: Invented criterion.');
});

test('negatives far from any finding are left to the written report, and the script says so', () => {
  const said = whole(scene);
  expect(said).not.toContain('fluid');
  expect(said).toContain('Other negatives are in the written report.');
  expect(whole(scene.filter(({ id }) => id !== 'ear'))).not.toContain('Other negatives');
});

test('unconfirmed entries are spoken of as unconfirmed, and so is a report of nothing else', () => {
  const said = whole(scene.map((entry) => ({ ...entry, state: 'heard' as const })));
  expect(said).toMatch(/^Nothing in this report is confirmed\./);
  expect(said).toContain('Right forearm: laceration, unconfirmed.');
  expect(said).toContain('Pulse one one two, unconfirmed.');
});

test('a record of nothing still makes a script that invents nothing', () => {
  const said = whole([]);
  expect(said).toContain('Age: not recorded.');
  expect(said).toContain('No present finding recorded.');
  expect(said).toContain('Treatment: not recorded.');
  expect(said).not.toContain('Read back');
});

test('a word is spelt by letters and figures, accents dropped and other signs passed over', () => {
  expect(spell('Zoë-9')).toEqual(['Zulu', 'Oscar', 'Echo', 'niner']);
});
