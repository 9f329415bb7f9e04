// The problem list and what the responder does to it, on invented entries.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import type { ProblemChange, SaidProblemChange } from '../../src/terms/index.ts';
import { cared, clock, csm, denied, entry, found, minute, pressure } from './build.ts';

const said = (change: ProblemChange, at = 20): SaidProblemChange => ({ ...change, heardAt: minute(at) });

const reckoned = (entries: readonly Entry[], changes: readonly ProblemChange[] = []) =>
  reckon(entries, { now: clock(0), problems: changes.map((change, index) => said(change, 20 + index)) });

const list = (entries: readonly Entry[], changes: readonly ProblemChange[] = []) =>
  reckoned(entries, changes).problems.map((problem) => `${problem.struck ? 'struck ' : ''}${problem.id}`);

const exam: readonly Entry[] = [
  found('knee', 'right', 'abrasion'),
  found('forearm', 'left', 'laceration'),
  found('wrist', 'left', 'deformity'),
  found('abdomen', null, 'tenderness'),
  found('thigh', 'left', 'puncture'),
  found('thigh', 'left', 'bleeding'),
  denied('ankle', 'left', 'swelling'),
];

const WORST_FIRST = ['left thigh', 'abdomen', 'left wrist', 'left forearm', 'right knee'];

describe('the problem list', () => {
  it('groups by site and puts the worst first', () => {
    expect(list(exam)).toEqual(WORST_FIRST);
    expect(reckoned(exam).problems.map((problem) => problem.rank)).toEqual([1, 2, 3, 4, 5]);
    expect(reckoned(exam).problems[0]?.text).toBe('left thigh: puncture, bleeding');
  });
  it('names no problem where something was denied', () => {
    expect(list([denied('ankle', 'left', 'swelling')])).toEqual([]);
  });
  it('names what to watch for', () => {
    expect(reckoned([found('head', null, 'contusion')]).problems[0]?.watchFor).toContain('falling GCS');
  });
  it('marks what nobody has confirmed', () => {
    const heard = entry(
      { kind: 'finding', site: 'nose', side: null, finding: 'bleeding', present: true },
      { state: 'heard' },
    );
    expect(reckoned([heard]).problems[0]?.unconfirmed).toEqual([heard.id]);
  });
  it.each([
    ['fracture', 'left forearm: fracture'],
    ['open-fracture', 'left forearm: open fracture'],
  ])('calls a %s by its name and ranks it as a bone', (quality, text) => {
    const broken = found('forearm', 'left', 'abnormality', {}, { quality: [quality] });
    expect(reckoned([broken]).problems[0]).toMatchObject({ text, rank: 3 });
  });
  it('ranks what a red criterion rests on first, though no finding there says so', () => {
    const entries = [...exam, csm('foot', 'right', 'circulation', false), pressure(80, 40)];
    expect(reckoned(entries).problems[0]?.id).toBe('left thigh');
    expect(reckoned(entries).problems[1]).toMatchObject({ id: 'right foot', rank: 1 });
  });
  it('puts lost feeling, movement or circulation of a limb before tenderness and wounds of head and trunk', () => {
    const entries = [found('ribs', 'left', 'tenderness'), found('jaw', null, 'laceration')];
    for (const aspect of ['circulation', 'sensation', 'motion'] as const) {
      const lost = csm('foot', 'left', aspect, false);
      expect(list([...entries, lost])[0]).toBe('left foot');
    }
    expect(list([...entries, found('leg', 'right', 'paralysis')])[0]).toBe('right leg');
  });
  it('does not so where it came back, is less and not lost, is of one digit, or is below a tourniquet', () => {
    const ribs = found('ribs', 'left', 'tenderness');
    const lost = csm('foot', 'left', 'motion', false);
    const back = csm('foot', 'left', 'motion', true, { at: minute(9) });
    const less = csm('foot', 'right', 'sensation', false, {}, { quality: ['decreased'] });
    const toe = csm('foot', 'right', 'sensation', false, {}, { digit: 'little-toe' });
    const tied = cared('tourniquet', 'thigh', 'left');
    for (const others of [[lost, back], [less], [toe], [lost, tied]])
      expect(list([ribs, ...others])[0]).toBe('left ribs');
  });
  it('puts a leg out of shape before mere tenderness, and an arm after it', () => {
    const hip = found('hip', 'right', 'tenderness');
    expect(list([hip, found('leg', 'left', 'deformity')])).toEqual(['left leg', 'right hip']);
    expect(list([hip, found('lower-leg', 'left', 'deformity')])).toEqual(['left lower leg', 'right hip']);
    expect(list([hip, found('wrist', 'left', 'deformity')])).toEqual(['right hip', 'left wrist']);
  });
  it('lists a weak grip and a decreased sensation as such', () => {
    const weak = csm('hand', 'left', 'motion', true, {}, { strength: 'weak' });
    const less = csm('foot', 'right', 'sensation', false, {}, { quality: ['decreased'] });
    expect(reckoned([weak, less]).problems.map((problem) => problem.text)).toEqual([
      'left hand: motion weak',
      'right foot: sensation decreased',
    ]);
  });
});

const at = (site: 'wrist' | 'knee' | 'thigh' | 'arm' | 'jaw', side: 'left' | 'right' | null = null) => ({
  site,
  side,
});

const CHANGES: readonly (readonly [string, readonly ProblemChange[], readonly string[]])[] = [
  [
    'puts first the one that is named',
    [{ change: 'first', problem: at('knee', 'right') }],
    ['right knee', 'left thigh', 'abdomen', 'left wrist', 'left forearm'],
  ],
  [
    'puts foremost the one put first last',
    [
      { change: 'first', problem: at('knee', 'right') },
      { change: 'first', problem: at('wrist', 'left') },
    ],
    ['left wrist', 'right knee', 'left thigh', 'abdomen', 'left forearm'],
  ],
  [
    'takes the only one at a site whose side was not said',
    [{ change: 'first', problem: at('wrist') }],
    ['left wrist', 'left thigh', 'abdomen', 'left forearm', 'right knee'],
  ],
  [
    'keeps what is struck at the end, marked',
    [{ change: 'strike', problem: at('thigh', 'left') }],
    ['abdomen', 'left wrist', 'left forearm', 'right knee', 'struck left thigh'],
  ],
  [
    'takes back a strike of what is then put first',
    [
      { change: 'strike', problem: at('wrist', 'left') },
      { change: 'first', problem: at('wrist', 'left') },
    ],
    ['left wrist', 'left thigh', 'abdomen', 'left forearm', 'right knee'],
  ],
  ['adds one in the words said', [{ change: 'add', text: 'very cold' }], [...WORST_FIRST, 'very cold']],
  [
    'adds the same words once',
    [
      { change: 'add', text: 'very cold' },
      { change: 'add', text: 'Very cold' },
    ],
    [...WORST_FIRST, 'very cold'],
  ],
  [
    'puts first, by its words, one that was added',
    [
      { change: 'add', text: 'very cold' },
      { change: 'first', problem: { words: 'cold' } },
    ],
    ['very cold', ...WORST_FIRST],
  ],
];

describe('the responder', () => {
  it.each(CHANGES)('%s', (_, changes, expected) => {
    expect(list(exam, changes)).toEqual(expected);
    expect(reckoned(exam, changes).problemQuestions).toEqual([]);
  });

  const OPEN: readonly (readonly [string, ProblemChange, string])[] = [
    [
      'where nothing was found there',
      { change: 'strike', problem: at('jaw') },
      'jaw: no such problem. Which is meant?',
    ],
    [
      'where the other side was meant',
      { change: 'strike', problem: at('wrist', 'right') },
      'right wrist: no such problem. Which is meant?',
    ],
    [
      'where a wide site holds two',
      { change: 'strike', problem: at('arm', 'left') },
      'left arm: left forearm or left wrist. Which is meant?',
    ],
    [
      'where the words are of none',
      { change: 'first', problem: { words: 'hypothermia' } },
      'hypothermia: no such problem. Which is meant?',
    ],
  ];
  it.each(OPEN)('is asked, and nothing changes, %s', (_, change, question) => {
    expect(list(exam, [change])).toEqual(WORST_FIRST);
    expect(reckoned(exam, [change]).problemQuestions).toEqual([question]);
  });

  it('finds a struck problem back on the list when more is found there', () => {
    const strike = said({ change: 'strike', problem: at('wrist', 'left') }, 20);
    const more = found('wrist', 'left', 'swelling', { at: minute(25) });
    const after = reckon([...exam, more], { now: clock(30), problems: [strike] });
    expect(after.problems.find((problem) => problem.id === 'left wrist')?.struck).toBe(false);
  });
});
