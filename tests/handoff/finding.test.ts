// How findings read; the entries are invented.

import { describe, expect, test } from 'vitest';
import { soap } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { FindingStatement } from '../../src/terms/index.ts';
import { clockTime, input, made } from './made-up.ts';

const say = (more: Partial<FindingStatement>): FindingStatement => ({
  kind: 'finding',
  site: 'wrist',
  side: 'right',
  finding: 'swelling',
  present: true,
  ...more,
});

const texts = (entries: readonly Entry[]): readonly string[] =>
  soap(input(entries)).lines.map(({ text }) => text);

describe('one finding reads with everything that was said of it', () => {
  const rows: readonly [Partial<FindingStatement>, string][] = [
    [{}, 'Right wrist: swelling.'],
    [{ side: 'left', severity: 'mild' }, 'Left wrist: mild swelling.'],
    [{ side: 'both' }, 'Both wrists: swelling.'],
    [{ side: null }, 'Wrist (side not said): swelling.'],
    [{ finding: 'laceration', size: { value: 3, unit: 'cm' } }, 'Right wrist: 3 cm laceration.'],
    [{ finding: 'laceration', count: 2, quality: ['jagged'] }, 'Right wrist: 2 jagged lacerations.'],
    [{ finding: 'bite', count: 1 }, 'Right wrist: 1 bite.'],
    [{ finding: 'missing-teeth', site: 'teeth', side: null, count: 2 }, '2 missing teeth.'],
    [{ site: 'forearm', part: ['distal'] }, 'Right distal forearm: swelling.'],
    [
      { site: 'cervical-spine', side: null, finding: 'tenderness', level: 'C5' },
      'Cervical spine at C5: tenderness.',
    ],
    [{ site: 'ribs', side: 'left', level: 'rib-7' }, 'Left rib 7: swelling.'],
    [{ site: 'ribs', side: 'both' }, 'Ribs on both sides: swelling.'],
    [{ site: 'chest', side: 'left' }, 'Left side of the chest: swelling.'],
    [{ site: 'upper-quadrant', side: 'right' }, 'Right upper quadrant of the abdomen: swelling.'],
    [{ site: 'behind-ear', side: 'left', finding: 'contusion' }, 'Area behind the left ear: contusion.'],
    [{ present: false }, 'No swelling of the right wrist.'],
    [{ present: false, severity: 'severe' }, 'No severe swelling of the right wrist.'],
    [{ present: false, side: 'both' }, 'No swelling of either wrist.'],
    [{ present: false, side: 'both', site: 'ribs' }, 'No swelling of the ribs on both sides.'],
    [{ present: false, site: 'back', side: null }, 'Back: no swelling.'],
    [{ present: false, site: 'teeth', side: null, finding: 'loose-teeth' }, 'No loose teeth.'],
    [
      { present: false, site: 'trachea', side: null, finding: 'tracheal-deviation' },
      'No tracheal deviation.',
    ],
    [{ site: 'trachea', side: 'left', finding: 'tracheal-deviation' }, 'Tracheal deviation to the left.'],
    [
      { present: false, site: 'neck-veins', side: null, finding: 'jugular-distension' },
      'No jugular distension (side not said).',
    ],
    [
      { site: 'chest', side: 'left', finding: 'paradoxical-motion' },
      'Paradoxical motion on the left side of the chest.',
    ],
    [{ site: 'arm', part: ['upper'] }, 'Upper part of the right arm: swelling.'],
    [{ site: 'leg', part: ['lower'], present: false }, 'No swelling of the lower part of the right leg.'],
    [{ present: false, side: null }, 'No swelling of the wrist (side not said).'],
    [{ present: false, site: 'chest', side: null }, 'No swelling of the chest.'],
    [{ finding: 'pain', severity: 6 }, 'Right wrist: pain (6 out of 10).'],
  ];
  test.each(rows)('%j', (facts, text) => {
    expect(texts([made('a', say(facts))])).toContain(text);
  });
});

test('absent findings of one place and minute stand under one no', () => {
  const entries = (['deformity', 'swelling', 'tenderness'] as const).map((finding) =>
    made(finding, say({ finding, present: false })),
  );
  const line = soap(input(entries)).lines.find(({ text }) => text.startsWith('No deformity'));
  expect(line).toMatchObject({
    text: 'No deformity, swelling or tenderness of the right wrist.',
    entries: ['deformity', 'swelling', 'tenderness'],
    role: 'line',
  });
});

describe('two findings keep sentences of their own where they differ in', () => {
  const rows: readonly [string, Entry][] = [
    ['side', made('b', say({ side: 'left', finding: 'deformity', present: false }))],
    ['yes or no', made('b', say({ finding: 'deformity', present: true }))],
    ['part', made('b', say({ finding: 'deformity', present: false, part: ['distal'] }))],
    ['spoken time', made('b', say({ finding: 'deformity', present: false }), { at: clockTime('13:40') })],
    ['confirmation', made('b', say({ finding: 'deformity', present: false }), { state: 'heard' })],
  ];
  test.each(rows)('%s', (_, other) => {
    const { lines } = soap(input([made('a', say({ present: false })), other]));
    expect(lines.filter(({ entries }) => entries.includes('a') && entries.includes('b'))).toEqual([]);
  });
});

test('a thing said again with the other answer is told both ways, each with its time', () => {
  const entries = [
    made('yes', say({ finding: 'bleeding' }), { time: '14:08' }),
    made('no', say({ finding: 'bleeding', present: false }), { time: '14:20' }),
  ];
  const said = texts(entries);
  expect(said).toContain('Right wrist: bleeding at 14:08.');
  expect(said).toContain('No bleeding of the right wrist at 14:20.');
  expect(said).toContain(
    'Right wrist: bleeding at 14:08; also said: no bleeding of the right wrist at 14:20.',
  );
});

test('a side that nobody spoke is shown as carried until it is confirmed', () => {
  const known = { side: 'carried' } as const;
  expect(texts([made('a', say({}), { state: 'heard', known })])).toContain(
    'Right wrist: swelling (unconfirmed; side carried).',
  );
  expect(texts([made('a', say({}), { known })])).toContain('Right wrist: swelling.');
});

describe('what is told together', () => {
  const no = (id: string, more: Partial<FindingStatement>, facts: Parameters<typeof made>[2] = {}): Entry =>
    made(id, say({ present: false, ...more }), facts);
  const rows: readonly [string, readonly Entry[], string][] = [
    [
      'the same denied of several places of one side',
      [no('a', { site: 'elbow' }), no('b', { site: 'forearm' }), no('c', {})],
      'No swelling of the right elbow, forearm or wrist.',
    ],
    [
      'the same denied of places of different sides, each with its own',
      [no('a', { site: 'elbow', side: 'left' }), no('b', {}), no('c', { site: 'hand', side: 'both' })],
      'No swelling of the left elbow, right wrist or either hand.',
    ],
    [
      'the same denied of both sides of several places',
      [no('a', { site: 'clavicle', side: 'both' }), no('b', { site: 'scapula', side: 'both' })],
      'No swelling of either clavicle or scapula.',
    ],
    [
      'what was found beside what the other side is like',
      [made('a', say({})), no('b', { side: 'left' })],
      'Right wrist: swelling; left wrist: no swelling.',
    ],
    [
      'ribs of one side of which the same was found',
      ['7', '8'].map((number) =>
        made(number, say({ site: 'ribs', side: 'left', finding: 'crepitus', level: `rib-${number}` })),
      ),
      'Left ribs 7 and 8: crepitus.',
    ],
    [
      'findings of a place, of which one has a part of its own',
      [made('a', say({ part: ['distal'] })), made('b', say({ finding: 'deformity' }))],
      'Right wrist: deformity; distal swelling.',
    ],
    [
      'findings of one part of a place',
      [made('a', say({ part: ['distal'] })), made('b', say({ finding: 'deformity', part: ['distal'] }))],
      'Right distal wrist: swelling and deformity.',
    ],
    [
      'the same said three times, once with its latest time',
      ['14:06', '14:09', '14:20'].map((time) => made(time, say({}), { time })),
      'Right wrist: swelling last at 14:20.',
    ],
    [
      'a bare word within the minute of a fuller one',
      [made('a', say({ finding: 'bleeding' })), made('b', say({ finding: 'bleeding', quality: ['active'] }))],
      'Right wrist: active bleeding.',
    ],
  ];
  test.each(rows)('%s', (_, entries, text) => {
    const line = soap(input(entries)).lines.find((one) => one.text === text);
    expect(line?.entries, texts(entries).join('\n')).toEqual(
      expect.arrayContaining(entries.map(({ id }) => id)),
    );
  });
  test('has a clause for each thing said, with its own entries', () => {
    const { lines } = soap(input([made('a', say({})), no('b', { side: 'left' })]));
    expect(lines.find(({ text }) => text.startsWith('Right wrist'))?.clauses).toEqual([
      { text: 'Right wrist: swelling.', entries: ['a'] },
      { text: 'left wrist: no swelling.', entries: ['b'] },
    ]);
  });
});

describe('what is never told together', () => {
  const no = (id: string, more: Partial<FindingStatement>): Entry =>
    made(id, say({ present: false, ...more }));
  const rows: readonly [string, Entry, Entry][] = [
    ['different denials', no('a', {}), no('b', { site: 'elbow', finding: 'pain' })],
    ['the same of different regions', no('a', {}), no('b', { site: 'knee' })],
    [
      'a wound and another of another size',
      made('a', say({ finding: 'laceration', size: { value: 3, unit: 'cm' } })),
      made('b', say({ finding: 'laceration', size: { value: 5, unit: 'cm' } })),
    ],
    [
      'a bare word and a fuller one of another minute',
      made('a', say({})),
      made('b', say({ severity: 'mild' }), { time: '14:20' }),
    ],
  ];
  test.each(rows)('%s', (_, one, other) => {
    const { lines } = soap(input([one, other]));
    const clauses = lines.flatMap((line) => line.clauses ?? [line]);
    const words = clauses
      .filter(({ entries }) => entries.includes('a') && entries.includes('b'))
      .map(({ text }) => text);
    // A list of two wounds of one place is no merger: each keeps its own words.
    for (const text of words)
      expect(text).toMatch(/3 cm laceration and 5 cm laceration|swelling at .* and mild swelling at/);
  });
});

test('confirmed findings of a region come before unconfirmed ones', () => {
  const said = texts([
    made('a', say({ site: 'elbow' }), { state: 'heard' }),
    made('b', say({ site: 'hand' })),
  ]);
  expect(said.indexOf('Right hand: swelling.')).toBeLessThan(
    said.indexOf('Right elbow: swelling (unconfirmed).'),
  );
});
