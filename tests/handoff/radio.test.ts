// The short radio report and its further details; the entries are invented.

import { describe, expect, test } from 'vitest';
import { flags, reckon } from '../../src/clinical/index.ts';
import {
  CLEAN_WORDS,
  type HandoffInput,
  radio,
  radioDetails,
  SERIOUS_WORDS,
  wordBudget,
} from '../../src/handoff/index.ts';
import { chunks } from '../../src/handoff/radio/chunks.ts';
import type { RadioLine } from '../../src/handoff/radio/line.ts';
import type { Entry } from '../../src/record/entry.ts';
import { isPaired, SITES, type Statement } from '../../src/terms/index.ts';
import { clockTime, input, made, nothingExamined } from './made-up.ts';

const textsOf = (report: ReturnType<typeof radio>): string =>
  report.chunks.map(({ text }) => text.replace(/ (break|over)$/, '')).join(' ');

const whole = (entries: readonly Entry[], more: Partial<HandoffInput> = {}): string =>
  textsOf(radio(input(entries, more)));

const details = (entries: readonly Entry[], more: Partial<HandoffInput> = {}): string =>
  textsOf(radioDetails(input(entries, more)));

const wordsIn = (text: string): number => text.split(' ').length;

describe('a report is cut where a listener can answer', () => {
  const line = (words: number, id: string, more: Partial<RadioLine> = {}): RadioLine => ({
    words: Array.from({ length: words }, (_, index) => `${id}${index}`).join(' '),
    entries: [id],
    trust: 'confirmed',
    ...more,
  });
  test('between lines where each fits', () => {
    const cut = chunks([line(20, 'a'), line(19, 'b'), line(1, 'c')]);
    expect(cut.map(({ entries }) => entries)).toEqual([['a', 'b'], ['c']]);
    expect(cut[0]?.text.split(' ')).toHaveLength(40);
  });
  test('within a line only where it fits no piece, and what is left says that it goes on', () => {
    const cut = chunks([line(50, 'a')]);
    expect(cut).toHaveLength(2);
    expect(cut[0]?.text).toMatch(/^a0 .* break$/);
    expect(cut[1]?.text).toMatch(/^continuing, .* over$/);
    expect(cut.every(({ entries }) => entries.includes('a'))).toBe(true);
  });
  test('at a comma rather than between two words of one thought', () => {
    const words = `${'a '.repeat(25)}a, ${'b '.repeat(20)}b`;
    expect(chunks([{ words, entries: [], trust: 'confirmed' }])[0]?.text).toMatch(/a\. break$/);
  });
  test('before a block that would not fit the piece whole', () => {
    const block = { block: 'one' };
    const cut = chunks([line(20, 'a'), line(10, 'b', block), line(15, 'c', block)]);
    expect(cut.map(({ entries }) => entries)).toEqual([['a'], ['b', 'c']]);
  });
  test('a single piece is over at once', () => {
    expect(chunks([line(3, 'a')]).map(({ text }) => text)).toEqual(['a0 a1 a2. over']);
  });
  test('a piece of which nothing is confirmed says so once, at its start', () => {
    const heard = { trust: 'unconfirmed' } as const;
    const cut = chunks([line(20, 'a', heard), line(2, 'b', heard), line(30, 'c', heard)]);
    expect(cut.map(({ text }) => text.match(/unconfirmed/gi))).toEqual([['unconfirmed'], ['Unconfirmed']]);
    expect(cut[0]?.text).toMatch(/^All unconfirmed\. a0/);
    expect(cut[1]?.text).toMatch(/^Unconfirmed: c0/);
  });
  test('a piece of which some is confirmed marks each line that is not', () => {
    const [piece] = chunks([
      line(1, 'a'),
      line(1, 'b', { trust: 'unconfirmed' }),
      line(1, 'c', { trust: 'in part' }),
    ]);
    expect(piece?.text).toBe('a0. b0, unconfirmed. c0, unconfirmed in part. over');
  });
});

const vital = (id: string, statement: Statement, time: string): Entry => made(id, statement, { time });

const scene: readonly Entry[] = [
  made('age', { kind: 'history', topic: 'age', text: 'thirty four', years: 34 }),
  made('sex', { kind: 'history', topic: 'sex', text: 'female' }),
  made('fall', { kind: 'history', topic: 'mechanism', text: 'fell off a rock step' }),
  vital('p1', { kind: 'vital', vital: 'pulse', value: { rate: 92 } }, '14:10'),
  vital('p2', { kind: 'vital', vital: 'pulse', value: { rate: 112, quality: ['weak'] } }, '14:30'),
  vital('b1', { kind: 'vital', vital: 'blood-pressure', value: { systolic: 86, diastolic: 50 } }, '14:10'),
  vital('b2', { kind: 'vital', vital: 'blood-pressure', value: { systolic: 118, diastolic: 76 } }, '14:30'),
  made('g', { kind: 'vital', vital: 'gcs', value: { eye: 3, verbal: 4, motor: 6, total: 13 } }),
  made('cut', { kind: 'finding', site: 'forearm', side: 'right', finding: 'laceration', present: true }),
  made('no', { kind: 'finding', site: 'wrist', side: 'right', finding: 'deformity', present: false }),
  made('ear', { kind: 'finding', site: 'ear', side: 'left', finding: 'fluid', present: false }),
  made('care', { kind: 'care', care: 'dressing', site: 'forearm', side: 'right' }, { time: '14:15' }),
  made('on', { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' }, { time: '14:12' }),
  made('drug', { kind: 'history', topic: 'allergies', text: 'penicillin' }),
];

const reckoned = (entries: readonly Entry[]): Partial<HandoffInput> => ({
  flags: flags(entries, { now: Date.parse(clockTime('14:40')) }),
});

test('the script goes from who, by the headline and the worst, to mechanism, treatment and the read-back', () => {
  const said = whole(scene, { coverage: nothingExamined, ...reckoned(scene) });
  const places = [
    'Age three four, female.',
    'Red criteria: tourniquet or packing needed,',
    'Tourniquet left thigh, one four one two.',
    'Pressure one one eight over seven six.',
    'Lowest pressure eight six over five zero.',
    'GCS one three.',
    'Pulse one one two.',
    'Right forearm: laceration.',
    'Fell off a rock step.',
    'Nothing examined head to toe.',
    'Dressing to the right forearm.',
    'Allergies: penicillin.',
    'urther details on request.',
    'Read back:',
  ].map((words) => said.indexOf(words));
  expect(places, said).not.toContain(-1);
  expect(places).toEqual([...places].sort((one, other) => one - other));
});

test('the values that get lost are asked back: pressure with its lowest, GCS, pulse, tourniquet and red criteria', () => {
  const said = whole(scene, reckoned(scene));
  expect(said.slice(said.indexOf('Read back'))).toBe(
    'Read back: Pressure one one eight over seven six. Lowest pressure eight six over five zero. GCS one three. Pulse one one two. Tourniquet left thigh, one four one two. Red criteria: tourniquet or packing needed, low systolic, pulse above systolic.',
  );
});

test('a red criterion that has no short form is told by its text', () => {
  const flag = { rule: 'r', level: 'red', state: 'met', evidence: ['cut'], source: 'Invented' } as const;
  const said = whole(scene, {
    flags: [{ ...flag, text: 'Invented criterion: a reason. Local protocol decides.' }],
  });
  expect(said).toContain('Red criterion: Invented criterion.');
  expect(said).not.toMatch(/decides\.?,/);
});

describe('the words of a report', () => {
  const many = Array.from({ length: 40 }, (_, index) =>
    made(`f${index}`, {
      kind: 'finding',
      site: SITES.filter(isPaired)[Math.floor(index / 2)] ?? 'knee',
      side: index % 2 === 0 ? 'left' : 'right',
      finding: (['swelling', 'abrasion', 'contusion', 'tenderness', 'pain'] as const)[index % 5] ?? 'pain',
      present: true,
    }),
  );
  test('are 60 where nothing is serious', () => {
    const clean = [...many, made('g', { kind: 'vital', vital: 'gcs', value: { total: 15 } })];
    expect(wordBudget(input(clean))).toBe(CLEAN_WORDS);
    expect(
      wordsIn(
        radio(input(clean))
          .chunks.map(({ text }) => text)
          .join(' '),
      ),
    ).toBeLessThanOrEqual(60);
  });
  const grave: readonly [string, Statement][] = [
    ['a tourniquet', { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' }],
    ['a GCS under 15', { kind: 'vital', vital: 'gcs', value: { total: 14 } }],
    ['a patient who is not alert', { kind: 'vital', vital: 'responsiveness', value: { avpu: 'V' } }],
    [
      'anything severe',
      { kind: 'finding', site: 'hip', side: 'left', finding: 'pain', present: true, severity: 'severe' },
    ],
  ];
  test.each(grave)('are 120 with %s', (_, statement) => {
    const serious = [...many, made('x', statement)];
    expect(wordBudget(input(serious))).toBe(SERIOUS_WORDS);
    const { chunks: cut } = radio(input(serious));
    const words = wordsIn(cut.map(({ text }) => text).join(' '));
    expect(words).toBeLessThanOrEqual(120);
    expect(words).toBeGreaterThan(60);
  });
  test('that do not reach for all that was found say that there is more', () => {
    expect(whole(many)).toContain('More findings, details on request.');
    expect(whole(scene)).not.toContain('More findings');
  });
  test('are exceeded only where what may never be left out takes more, and the report says so', () => {
    const allergies = Array.from({ length: 30 }, (_, index) =>
      made(`a${index}`, { kind: 'history', topic: 'allergies', text: `invented drug number ${index}` }),
    );
    const said = whole([...scene, ...allergies]);
    expect(said).toMatch(/^Long report\./);
    expect(said).toContain('invented drug number two niner');
    expect(wordsIn(said)).toBeGreaterThan(120);
  });
});

describe('however many injuries there are, a report keeps', () => {
  const wounds = Array.from({ length: 30 }, (_, index) =>
    made(`w${index}`, {
      kind: 'finding',
      site: 'chest',
      side: null,
      finding: 'laceration',
      present: true,
      size: { value: index + 1, unit: 'cm' },
    }),
  );
  const said = whole([...wounds, ...scene], reckoned(scene));
  test.each([
    'pulse above systolic',
    'Allergies: penicillin',
    'Tourniquet left thigh, one four one two',
    'Pulse one one two',
    'Age three four, female',
  ])('%s', (words) => {
    expect(said).toContain(words);
  });
});

test('problems come in the order they were reckoned or given, whatever the report thinks of them', () => {
  const at = (id: string, site: 'knee' | 'elbow', finding: 'abrasion' | 'amputation') =>
    made(id, { kind: 'finding', site, side: 'left', finding, present: true });
  const entries = [at('a', 'elbow', 'amputation'), at('b', 'knee', 'abrasion')];
  const reckonedFirst = reckon(entries, {
    now: Date.parse(clockTime('14:40')),
    problems: [{ change: 'first', problem: { site: 'knee', side: 'left' }, heardAt: clockTime('14:07') }],
  });
  const said = whole(entries, { problems: reckonedFirst.problems });
  expect(said.indexOf('Left knee')).toBeLessThan(said.indexOf('Left elbow'));
  const own = whole(entries);
  expect(own.indexOf('Left elbow')).toBeLessThan(own.indexOf('Left knee'));
});

describe('unconfirmed entries', () => {
  test('are spoken of as such once where nothing is confirmed', () => {
    const said = radio(input(scene.map((entry) => ({ ...entry, state: 'heard' as const })))).chunks;
    expect(said[0]?.text).toMatch(/^All unconfirmed\. /);
    for (const { text } of said.slice(1)) expect(text).toMatch(/^Unconfirmed: /);
    expect(said.every(({ text }) => text.match(/unconfirmed/gi)?.length === 1)).toBe(true);
  });
  test('are marked one by one among confirmed ones', () => {
    const said = whole(
      scene.map((entry) => (entry.id === 'cut' ? { ...entry, state: 'heard' as const } : entry)),
    );
    expect(said).toContain('Right forearm: laceration, unconfirmed.');
    expect(said).toContain('Fell off a rock step.');
  });
  test('say which of side and yes or no nobody spoke', () => {
    const said = whole(
      scene.map((entry) =>
        entry.id === 'cut'
          ? { ...entry, state: 'heard' as const, known: { side: 'carried' as const } }
          : entry,
      ),
    );
    expect(said).toContain('Right forearm: laceration, side to be confirmed, unconfirmed.');
  });
});

test('a finding that was denied later is told with both times', () => {
  const at = (id: string, present: boolean, time: string) =>
    made(id, { kind: 'finding', site: 'thigh', side: 'left', finding: 'bleeding', present }, { time });
  expect(whole([at('a', true, '14:08'), at('b', false, '14:20')])).toContain(
    'Left thigh: bleeding at one four zero eight but denied at one four two zero.',
  );
});

describe('what was not examined is said in one phrase', () => {
  const except = (state: 'clear' | 'touched', ...sites: readonly string[]): HandoffInput['coverage'] =>
    nothingExamined.map((row) => (sites.includes(row.site) ? { ...row, state } : row));
  const rows: readonly [string, HandoffInput['coverage'], string][] = [
    ['nothing at all', nothingExamined, 'Nothing examined head to toe.'],
    [
      'some of it',
      except('clear', 'wrist', 'abdomen', 'upper-quadrant', 'lower-quadrant'),
      'Not examined: head, neck, both shoulders, chest, pelvis, both legs and back, examined in part: both arms.',
    ],
    ['a place only looked at', except('touched', 'abdomen'), 'only looked at: abdomen'],
    ['what nobody worked out', [], 'What was not examined was not worked out.'],
  ];
  test.each(rows)('%s', (_, coverage, words) => {
    expect(whole([], { coverage })).toContain(words);
  });
});

test('a record of nothing still makes a script that invents nothing', () => {
  const said = whole([]);
  expect(said).toContain('No present finding recorded.');
  expect(said).toContain('Not recorded: pulse, pressure and GCS.');
  expect(said).not.toContain('Read back');
  expect(said).not.toMatch(/\bAge\b|\bnormal\b/);
});

describe('further details', () => {
  const all = details([
    ...scene,
    made('name', { kind: 'history', topic: 'name', text: 'Zoë Imagi' }),
    made('note', { kind: 'note', text: 'the rope is frayed' }),
  ]);
  test.each([
    'No fluid of the left ear',
    'As said at one four zero six: the rope is frayed',
    'Zoë, I spell: Zulu Oscar Echo',
    'penicillin, I spell: Papa Echo November India Charlie India Lima Lima India November',
    'Pulse: niner two at one four one zero, one one two, weak at one four three zero',
  ])('have %s', (words) => {
    expect(all).toContain(words);
  });
  test('do not tell again what the short report said in the same words', () => {
    expect(whole(scene)).toContain('Right forearm: laceration.');
    expect(details(scene)).not.toContain('Right forearm: laceration.');
  });
});

describe('the order chosen', () => {
  const entries = [
    ...scene.filter(({ id }) => !['b1', 'b2', 'p1', 'p2', 'on'].includes(id)),
    made('eta', { kind: 'note', text: 'ETA ten minutes' }),
  ];
  const at = (order: 'atmist' | 'imist-ambo' | 'sbar', words: string): number =>
    textsOf(radio(input(entries), order)).indexOf(words);
  test('of SBAR has the allergies before the treatment', () => {
    expect(at('sbar', 'Allergies')).toBeLessThan(at('sbar', 'Dressing'));
    expect(at('sbar', 'Allergies')).toBeGreaterThan(-1);
  });
  test.each(['atmist', 'imist-ambo'] as const)('of %s has the treatment before the allergies', (order) => {
    expect(at(order, 'Dressing')).toBeLessThan(at(order, 'Allergies'));
    expect(at(order, 'Dressing')).toBeGreaterThan(-1);
  });
});
