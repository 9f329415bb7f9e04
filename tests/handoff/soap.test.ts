// The SOAP note as a whole; the entries are invented.

import { describe, expect, test } from 'vitest';
import { type HandoffInput, imistAmbo, mist, sbar, soap, textOf } from '../../src/handoff/index.ts';
import { isPaired, SITES } from '../../src/terms/index.ts';
import { clockTime, input, made, nothingExamined } from './made-up.ts';

const texts = (given: HandoffInput): readonly string[] => soap(given).lines.map(({ text }) => text);

test('the four parts stand in the order subjective, objective, assessment, plan', () => {
  const parts = texts(input([])).filter((text) => /^[A-Z]{4,}$/.test(text));
  expect(parts).toEqual(['SUBJECTIVE', 'OBJECTIVE', 'ASSESSMENT', 'PLAN']);
});

test('the text of a report is its lines and nothing else', () => {
  const report = soap(input([made('a', { kind: 'note', text: 'the rope\nis frayed' })]));
  expect(textOf(report).split('\n')).toEqual(report.lines.map(({ text }) => text));
});

test('a record of nothing says so in each part and invents nothing', () => {
  const said = texts(input([], { coverage: nothingExamined, flags: [] }));
  expect(said).toContain('Chief complaint: not recorded.');
  expect(said).toContain('Allergies: not recorded.');
  expect(said).toContain(
    'Not recorded: pulse, respirations, blood pressure, oxygen saturation, temperature and GCS.',
  );
  expect(said).toContain('No present finding recorded; that clears nothing.');
  expect(said).toContain('No criterion is known to be met; that clears nothing.');
  expect(said).toContain('Care given: not recorded.');
  expect(said.join(' ')).not.toMatch(/\bnormal\b|unremarkable|\bclear\b/i);
});

describe('what was not examined is named, the widest words first', () => {
  const except = (...clear: readonly string[]): HandoffInput['coverage'] =>
    nothingExamined.map((row) =>
      clear.includes(`${row.side ?? ''} ${row.site}`.trim()) ? { ...row, state: 'clear' } : row,
    );
  const line = (coverage: HandoffInput['coverage']): string | undefined =>
    texts(input([], { coverage })).find((text) => text.startsWith('Not examined: '));
  test('nothing examined is every region', () => {
    expect(line(nothingExamined)).toBe(
      'Not examined: head, neck, both shoulders, both arms, chest, abdomen, pelvis, both legs and back.',
    );
  });
  test('a limb of which little was examined is named with its exceptions, and the other whole', () => {
    expect(line(except('left wrist'))).toContain(
      'both shoulders, right arm, left arm except the wrist, chest',
    );
  });
  test('a hand of which only the thumb was examined is not left out whole', () => {
    expect(line(except('left thumb'))).toContain('right arm, left arm except the thumb, chest');
  });
  test('a limb of which much was examined is named by the parts that were not', () => {
    const said = line(except('left elbow', 'left wrist', 'left forearm', 'left palm', 'left thumb'));
    expect(said).toContain('left upper arm');
    expect(said).toContain('left hand except the palm and thumb');
    expect(said).not.toContain('left arm except');
  });
  test('a single pair that was left out is both of it', () => {
    const all = SITES.flatMap((site) =>
      (isPaired(site) ? (['left', 'right'] as const) : [null]).map((side) => ({
        site,
        side,
        state: site === 'knee' ? ('not-examined' as const) : ('clear' as const),
      })),
    );
    expect(line(all)).toBe('Not examined: both knees.');
  });
  test('a place that was only touched is told as touched', () => {
    const touched = nothingExamined.map((row) =>
      row.site === 'knee' && row.side === 'left' ? { ...row, state: 'touched' as const } : row,
    );
    expect(texts(input([], { coverage: touched }))).toContain(
      'Touched, with nothing found or denied there: left knee.',
    );
  });
  test('no coverage at all is not taken for everything examined', () => {
    expect(texts(input([]))).toContain('What was not examined was not worked out.');
  });
});

describe('a denied history says so without turning what is denied into what is told', () => {
  const rows = [
    ['allergies', 'no allergies', 'Allergies: “no allergies”.'],
    ['allergies', 'allergies', 'Allergies: denied.'],
    ['allergies', '', 'Allergies: denied.'],
    ['symptoms', 'nausea', 'Symptoms: denies nausea.'],
    ['events', 'i remember it', 'Events: denied (“I remember it”).'],
    ['past-history', 'nothing much', 'Past history: “nothing much”.'],
    ['events', "wasn't knocked out", "Events: “wasn't knocked out”."],
    ['events', 'she wasnt knocked out', 'Events: “she wasnt knocked out”.'],
    ['medications', 'isn’t on blood thinners', 'Medications: “isn’t on blood thinners”.'],
    ['symptoms', 'never vomited', 'Symptoms: “never vomited”.'],
    ['events', 'denies being knocked out', 'Events: “denies being knocked out”.'],
    ['medications', 'none', 'Medications: “none”.'],
    ['events', 'knocked out', 'Events: denies knocked out.'],
    ['past-history', 'hypertension', 'Past history: denies hypertension.'],
    ['medications', 'Any blood thinners: No', 'Medications: denies blood thinners.'],
  ] as const;
  test.each(rows)('%s %j', (topic, text, line) => {
    expect(texts(input([made('a', { kind: 'history', topic, text, present: false })]))).toContain(line);
  });
});

test('two answers to one question are both told', () => {
  const said = texts(
    input([
      made('a', { kind: 'history', topic: 'age', text: 'thirty four', years: 34 }),
      made('b', { kind: 'history', topic: 'age', text: 'forty three', years: 43 }),
    ]),
  );
  expect(said).toContain('Age: 34 years; 43 years; which holds is not settled.');
});

test('vitals are told each with its time, and an unconfirmed one among confirmed ones is marked by itself', () => {
  const pulse = (id: string, rate: number, time: string, state: 'heard' | 'confirmed') =>
    made(id, { kind: 'vital', vital: 'pulse', value: { rate } }, { time, state });
  expect(texts(input([pulse('a', 92, '14:10', 'confirmed'), pulse('b', 112, '14:30', 'heard')]))).toContain(
    'Pulse: 92 at 14:10; 112 at 14:30 (unconfirmed).',
  );
  expect(texts(input([pulse('a', 92, '14:10', 'heard'), pulse('b', 112, '14:30', 'heard')]))).toContain(
    'Pulse: 92 at 14:10; 112 at 14:30 (all unconfirmed).',
  );
});

test('a part of the GCS that is not testable leaves no total', () => {
  const gcs = made('a', { kind: 'vital', vital: 'gcs', value: { eye: 4, verbal: 'NT', motor: 6 } });
  expect(texts(input([gcs]))).toContain('GCS: E4, V not testable, M6, no total at 14:06.');
});

test('a criterion that is met stands with its publication, its evidence and who decides', () => {
  const bleeding = made(
    'a',
    { kind: 'finding', site: 'thigh', side: 'left', finding: 'bleeding', present: true },
    { state: 'heard' },
  );
  const flag = {
    rule: 'made-up',
    level: 'red',
    state: 'met',
    text: 'An invented criterion',
    evidence: ['a'],
    source: 'Invented 2021',
  } as const;
  const open = { ...flag, rule: 'other', state: 'unknown', text: 'Another one', evidence: [] } as const;
  const unmet = { ...flag, rule: 'third', state: 'not-met', text: 'A third one' } as const;
  const { lines } = soap(input([bleeding], { flags: [flag, open, unmet] }));
  expect(lines).toContainEqual({
    text: 'Red criterion met: An invented criterion [Invented 2021] (unconfirmed).',
    entries: ['a'],
    role: 'line',
  });
  const said = lines.map(({ text }) => text);
  expect(said).toContain('Cannot be decided from what was said: Another one.');
  expect(said).toContain('Local protocol decides.');
  expect(said.join(' ')).not.toContain('A third one');
  // The handovers that are read aloud name it too, once; where nothing is met they name none.
  const source = 'Source of the criteria: Invented 2021.';
  for (const tell of [mist, imistAmbo, sbar]) {
    const told = (flags: NonNullable<HandoffInput['flags']>) => textOf(tell(input([bleeding], { flags })));
    expect(told([flag, { ...flag, rule: 'fourth' }]).split(source)).toHaveLength(2);
    expect(told([open, unmet])).not.toContain('Source of the criteria');
  }
});

test('care is told with its place, side and time, and what it binds is to be looked at again', () => {
  const said = texts(
    input([
      made('a', { kind: 'care', care: 'tourniquet', site: 'thigh', side: 'left' }, { time: '14:12' }),
      made('b', { kind: 'care', care: 'medication', text: 'ibuprofen 400 mg' }, { time: '14:20' }),
      made('c', { kind: 'care', care: 'splint', site: 'forearm', side: null }, { time: '14:25' }),
    ]),
  );
  expect(said).toContain('Tourniquet to the left thigh at 14:12.');
  expect(said).toContain('Medication: ibuprofen 400 mg, at 14:20.');
  expect(said).toContain('Splint to the forearm (side not said) at 14:25.');
  expect(said).toContain(
    'Recheck circulation, sensation and motion beyond the tourniquet on the left thigh, on since 14:12, 28 minutes.',
  );
});

test('the worst problem comes first: what a red criterion rests on, then what was called severe', () => {
  const at = (id: string, site: 'thigh' | 'knee' | 'ankle', severity?: 'severe') =>
    made(id, {
      kind: 'finding',
      site,
      side: 'left',
      finding: 'abrasion',
      present: true,
      ...(severity === undefined ? {} : { severity }),
    });
  const flags = [
    { rule: 'r', level: 'red', state: 'met', text: 'Invented', evidence: ['red'], source: 'Invented' },
  ] as const;
  const said = texts(
    input([at('plain', 'thigh'), at('severe', 'knee', 'severe'), at('red', 'ankle')], { flags }),
  );
  const assessment = said.slice(said.indexOf('ASSESSMENT') + 1);
  expect(assessment.slice(0, 3)).toEqual([
    'Left ankle: abrasion.',
    'Left knee: severe abrasion.',
    'Left thigh: abrasion.',
  ]);
});

describe('a report of which nothing is confirmed', () => {
  const note = (state: 'heard' | 'confirmed', id = 'a') => made(id, { kind: 'note', text: 'x' }, { state });
  const warning = 'UNCONFIRMED: nothing in this report has been confirmed.';
  test('says so at the top and on the line', () => {
    const said = texts(input([note('heard')]));
    expect(said[1]).toBe(warning);
    expect(said).toContain('As said at 14:06: “x” (unconfirmed).');
  });
  test('does not say so where one entry is confirmed', () => {
    expect(texts(input([note('heard'), note('confirmed', 'b')]))).not.toContain(warning);
  });
});

test('a day other than that of the start is written out', () => {
  const late = made('a', { kind: 'note', text: 'x' }, { at: '2026-05-04T01:10:00-06:00' });
  expect(texts(input([late]))).toContain('As said at 2026-05-04 01:10: “x”.');
});

test('the report is timed by the clock of the place, whatever clock this machine has', () => {
  expect(texts(input([]))[0]).toContain('made at 14:40; examination from 14:02.');
  const zulu = input([], { startedAt: '2026-05-03T20:02:00Z', now: Date.parse(clockTime('14:40')) });
  expect(texts(zulu)[0]).toContain('made at 20:40; examination from 20:02.');
});

test('what is in doubt is to be settled until it is confirmed', () => {
  const doubt = ['which hip?'];
  const hip = (state: 'heard' | 'confirmed') =>
    made('a', { kind: 'visit', site: 'hip', side: null }, { state, doubt });
  const line = 'To settle, heard as “words of a”: which hip? (unconfirmed).';
  expect(texts(input([hip('heard')]))).toContain(line);
  expect(texts(input([hip('confirmed')]))).not.toContain(line);
});
