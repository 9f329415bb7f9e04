// What a short radio report keeps when words run out: the worst, each by its worst finding; the entries are invented.

import { describe, expect, test } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import { type HandoffInput, radio, SERIOUS_WORDS } from '../../src/handoff/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { readTalk } from '../../src/record/talk/index.ts';
import { endOf, examine } from '../../src/replay/examine.ts';
import { handoffInput } from '../../src/replay/record-json.ts';
import type { Statement } from '../../src/terms/index.ts';
import { realReader } from '../talk-case.ts';
import { demoInput } from './demo-input.ts';
import { clockTime, input, made, nothingExamined } from './made-up.ts';

const textOf = (report: HandoffInput): string =>
  radio(report)
    .chunks.map(({ text }) => text.replace(/ (?:break|over)$/, ''))
    .join(' ');

const worked = (entries: readonly Entry[], more: Partial<HandoffInput> = {}): HandoffInput => {
  const { flags, problems, scores } = reckon(entries, { now: Date.parse(clockTime('14:40')) });
  return input(entries, { flags, problems, scores, ...more });
};

const wordsIn = (report: HandoffInput): number =>
  radio(report).chunks.flatMap(({ text }) => text.split(' ')).length;

const finding = (id: string, statement: Omit<Extract<Statement, { kind: 'finding' }>, 'kind' | 'present'>) =>
  made(id, { kind: 'finding', present: true, ...statement });

describe('a finding of which the side was not said', () => {
  const leg = finding('leg', { site: 'leg', side: null, finding: 'bleeding', severity: 'severe' });
  const thigh = finding('thigh', { site: 'thigh', side: 'right', finding: 'bleeding', severity: 'severe' });
  test('comes after all others where it was also said with its side', () => {
    const said = textOf(
      worked([leg, thigh, finding('toe', { site: 'big-toe', side: 'left', finding: 'contusion' })]),
    );
    expect(said.indexOf('Right thigh')).toBeGreaterThan(-1);
    expect(said.indexOf('Right thigh')).toBeLessThan(said.indexOf('Left big toe'));
    expect(said.indexOf('Left big toe')).toBeLessThan(said.indexOf('Leg, side not said'));
  });
  test('keeps its place where nothing else tells of it', () => {
    const said = textOf(
      worked([leg, finding('toe', { site: 'big-toe', side: 'left', finding: 'contusion' })]),
    );
    expect(said.indexOf('Leg, side not said: severe bleeding')).toBeGreaterThan(-1);
    expect(said.indexOf('Leg, side not said')).toBeLessThan(said.indexOf('Left big toe'));
  });
});

describe('the invented fall', () => {
  const said = textOf(demoInput('ridge-fall'));
  test.each([
    'Left upper quadrant: guarding',
    'Right thigh: controlled bleeding',
    'spine at C five: tenderness',
  ])('tells of %s', (words) => expect(said).toContain(words));
  test('and its sure allergy in one word, the rest on request', () => {
    expect(said).toMatch(/Allergies: Penicillin\. (?!I come out)/);
  });
});

describe('with eight red criteria', () => {
  const reader = realReader();
  const talk = readTalk(
    [
      '@start 2026-06-02T22:10:00-06:00',
      'thirty two year old female driver, rollover at highway speed',
      'eyes two, verbal two, motor four',
      'pulse one thirty six',
      'respirations thirty four',
      'blood pressure seventy eight over forty',
      'sats eighty eight percent on room air',
      'chest, paradoxical movement on the left side',
      'abdomen rigid',
      'pelvis unstable',
      'left foot, no pulse',
      'penicillin allergy',
    ].join('\n'),
    { startedAt: 0, zone: 'UTC' },
  );
  if (talk.kind === 'error') throw new Error(talk.why);
  const { state } = examine(reader, talk);
  const report = handoffInput(state, state.startedAt ?? '', endOf(talk));
  const said = textOf(report);
  test('the report stays within its words and still says how it happened', () => {
    expect(report.flags?.filter(({ level, state: is }) => level === 'red' && is === 'met')).toHaveLength(8);
    expect(wordsIn(report)).toBeLessThanOrEqual(SERIOUS_WORDS);
    expect(said).not.toContain('Long report');
    expect(said).toContain('ollover at highway speed');
  });
  test('each criterion is said early and asked back', () => {
    const [early = '', late = ''] = said.split('Read back:');
    for (const words of [
      'unstable chest wall',
      'pelvic fracture suspected',
      'crushed or pulseless limb',
      'unable to follow commands',
      'breathing rate',
      'low saturation',
      'low systolic',
      'pulse above systolic',
    ]) {
      expect(early).toContain(words);
      expect(late).toContain(words);
    }
  });
  test('what was not examined is said in two words where there is no room for its regions', () => {
    expect(said).toContain('Examination incomplete.');
  });
});

test('regions that were not examined are named where there is room, and then not in two words besides', () => {
  const said = textOf(
    worked([finding('a', { site: 'knee', side: 'left', finding: 'abrasion' })], {
      coverage: nothingExamined.map((row) =>
        row.site === 'knee' ? { ...row, state: 'found' as const } : row,
      ),
    }),
  );
  expect(said).toMatch(/Not examined: head/);
  expect(said).not.toContain('Examination incomplete');
});

test('an incident with its time is not told a second time by how long ago it was', () => {
  const said = textOf(
    worked([
      made(
        'fall',
        { kind: 'history', topic: 'mechanism', text: 'stung on the neck fifteen minutes ago' },
        { time: '13:51', heardAt: clockTime('14:06') },
      ),
    ]),
  );
  expect(said).toMatch(/Incident one three five one, four niner minutes ago\. Stung on the neck\./);
});

test('a weak limb is a problem and never called intact', () => {
  const said = textOf(
    worked([
      made('m', {
        kind: 'csm',
        site: 'hand',
        side: 'right',
        aspect: 'motion',
        present: true,
        strength: 'weak',
      }),
    ]),
  );
  expect(said).toContain('Motion present in the right hand: strength weak');
  expect(said).not.toMatch(/intact/);
});

test('what was denied of a place is not told in the room of a finding that did not fit', () => {
  const places = [
    'forearm',
    'upper-arm',
    'thigh',
    'knee',
    'lower-leg',
    'wrist',
    'elbow',
    'hand',
    'foot',
    'ankle',
    'shoulder',
  ] as const;
  const bruises = places.flatMap((site) =>
    (['left', 'right'] as const).map((side) =>
      finding(`${site} ${side}`, { site, side, finding: 'contusion' }),
    ),
  );
  const no = made('no', { kind: 'finding', site: 'neck', side: null, finding: 'pain', present: false });
  const said = textOf(worked([...bruises, no]));
  expect(said).toContain('More findings');
  expect(said).not.toContain('No pain');
  expect(textOf(worked([...bruises.slice(0, 2), no]))).toContain('No pain of the neck');
});
