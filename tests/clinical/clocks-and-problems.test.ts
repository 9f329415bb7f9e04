// Clocks and the problem list, on invented entries.

import { describe, expect, it } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { cared, clock, denied, entry, found, minute, pulse, told } from './build.ts';

const clocks = (now: number, entries: readonly Entry[]) =>
  reckon(entries, { now: clock(now) }).clocks.map((each) => [each.clock, each.of, each.minutes]);

describe('clocks', () => {
  it('are without a time before anything is said, and say what lacks', () => {
    expect(clocks(0, [])).toEqual([
      ['injury', 'injury', null],
      ['vitals', 'last vitals', null],
      ['intake', 'last intake', null],
    ]);
  });
  it('take the time of the injury only where it was spoken', () => {
    const told10 = told('mechanism', 'slipped at ten past', undefined, {
      at: minute(10),
      heardAt: minute(20),
    });
    expect(clocks(45, [told10])[0]).toEqual(['injury', 'injury', 35]);
    expect(clocks(45, [told('mechanism', 'slipped')])[0]).toEqual(['injury', 'injury', null]);
  });
  it('run one for each tourniquet from when it was first on', () => {
    const entries = [
      cared('tourniquet', 'thigh', 'left', 12),
      cared('tourniquet', 'thigh', 'left', 30),
      cared('tourniquet', 'arm', 'right', 20),
    ];
    expect(clocks(60, entries).filter(([name]) => name === 'tourniquet')).toEqual([
      ['tourniquet', 'left thigh', 48],
      ['tourniquet', 'right arm', 40],
    ]);
  });
  it('run from the last vitals and from each medication', () => {
    const entries = [
      pulse(80, 10),
      pulse(84, 20),
      cared('medication', undefined, undefined, 25, 'ibuprofen 400 mg'),
    ];
    expect(clocks(30, entries).filter(([name]) => name === 'vitals' || name === 'medication')).toEqual([
      ['vitals', 'last vitals', 10],
      ['medication', 'ibuprofen 400 mg', 5],
    ]);
  });
});

const problems = (entries: readonly Entry[], order = {}) =>
  reckon(entries, { now: clock(0), problems: order }).problems;

describe('the problem list', () => {
  const entries = (): readonly Entry[] => [
    found('knee', 'right', 'abrasion'),
    found('forearm', 'left', 'laceration'),
    found('wrist', 'left', 'deformity'),
    found('abdomen', null, 'tenderness'),
    found('thigh', 'left', 'puncture'),
    found('thigh', 'left', 'bleeding'),
    denied('ankle', 'left', 'swelling'),
  ];
  it('groups by site and puts the worst first', () => {
    expect(problems(entries()).map((problem) => [problem.id, problem.rank])).toEqual([
      ['left thigh', 1],
      ['abdomen', 2],
      ['left wrist', 3],
      ['left forearm', 4],
      ['right knee', 5],
    ]);
    expect(problems(entries())[0]?.text).toBe('left thigh: puncture, bleeding');
  });
  it('names no problem where something was denied', () => {
    expect(problems([denied('ankle', 'left', 'swelling')])).toEqual([]);
  });
  it('names what to watch for', () => {
    expect(problems([found('head', null, 'contusion')])[0]?.watchFor).toContain('falling GCS');
  });
  it('follows the order given, takes what was added, and keeps what was struck at the end', () => {
    const order = {
      order: ['right knee', 'own'],
      added: [{ id: 'own', text: 'very cold' }],
      struck: ['left thigh'],
    };
    const list = problems(entries(), order);
    expect(list.map((problem) => problem.id)).toEqual([
      'right knee',
      'own',
      'abdomen',
      'left wrist',
      'left forearm',
      'left thigh',
    ]);
    expect(list.at(-1)?.struck).toBe(true);
    expect(list[1]?.by).toBe('responder');
  });
  it('marks what nobody has confirmed', () => {
    const heard = entry(
      { kind: 'finding', site: 'nose', side: null, finding: 'bleeding', present: true },
      { state: 'heard' },
    );
    expect(problems([heard])[0]?.unconfirmed).toEqual([heard.id]);
  });
});
