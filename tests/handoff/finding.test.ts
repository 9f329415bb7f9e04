// How findings read; the entries are invented.

import { describe, expect, test } from 'vitest';
import { soap } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { FindingStatement } from '../../src/terms/index.ts';
import { input, made } from './made-up.ts';

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
    [
      { finding: 'missing-teeth', site: 'teeth', side: null, count: 2 },
      'Teeth: missing teeth (2 in number).',
    ],
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
    [{ present: false, side: 'both' }, 'Both wrists: no swelling.'],
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
  expect(line).toEqual({
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
    ['minute', made('b', say({ finding: 'deformity', present: false }), { time: '14:20' })],
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
  expect(said).toContain('Right wrist: bleeding, at 14:08.');
  expect(said).toContain('No bleeding of the right wrist, at 14:20.');
  expect(said).toContain(
    'Right wrist: bleeding, at 14:08. Also said: No bleeding of the right wrist, at 14:20.',
  );
});

test('a side that nobody spoke is shown as carried until it is confirmed', () => {
  const known = { side: 'carried' } as const;
  expect(texts([made('a', say({}), { state: 'heard', known })])).toContain(
    'Right wrist: swelling (unconfirmed; side carried).',
  );
  expect(texts([made('a', say({}), { known })])).toContain('Right wrist: swelling.');
});
