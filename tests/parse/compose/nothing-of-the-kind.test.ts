// What is looked for, asked of a partner, told of somebody else or said idly is no entry; and what is said behind an order is one.
// All talk here is invented.

import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/record/entry.ts';
import { found, standing } from '../standing.ts';

const STATED: readonly Entry['kind'][] = ['finding', 'csm', 'vital', 'care', 'history'];
const stated = (talk: string) => standing(talk).filter(({ kind }) => STATED.includes(kind));

describe('no entry is made', () => {
  it.each([
    'keep looking at that right hand for swelling',
    'palpate his tummy for guarding',
    'felt along the left femur for any deformity and there is none',
    'monitor the right foot for numbness please',
    'should i dress the right knee',
    'do you want a tourniquet on that leg',
    'ought we to splint it or just go',
    'is it worth putting a collar on her',
    'the lad who crashed into you has a split lip',
    'that skier you hit has a broken wrist',
    'only making sure there is no swelling there',
    'i want to be sure you have no numbness',
    'that was a proper pain in the neck, that tent',
    "right, we're all packed up",
    'having another peek at the left knee',
  ])('of %s', (talk) => expect(stated(talk)).toEqual([]));

  it.each([
    ['felt the right calf for swelling and it is tender', [['lower-leg', 'right', 'tenderness', true]]],
    ['inspected the back for cuts, bruise over the left flank', [['flank', 'left', 'contusion', true]]],
    ['the right wrist has been swollen for an hour', [['wrist', 'right', 'swelling', true]]],
    ["there's a dull pain in his neck", [['neck', null, 'pain', true]]],
  ] as const)('but %s says something', (talk, facts) => expect(found(talk)).toEqual(facts));
});

describe('a sentence begins behind "for me"', () => {
  it.each([
    ['stay still for me left hip is bruised', [['hip', 'left', 'contusion', true]]],
    ['open wide for me two teeth missing', [['teeth', null, 'missing-teeth', true]]],
    ['lie flat for me no pain in the back', [['back', null, 'pain', false]]],
  ] as const)('%s', (talk, facts) => expect(found(talk)).toEqual(facts));

  it('with care and signs, too', () => {
    expect(stated('keep still for us we have put a collar on')).toMatchObject([
      { kind: 'care', care: 'collar' },
    ]);
    expect(stated('hold still for me pulse is eighty four')).toMatchObject([
      { vital: 'pulse', value: { rate: 84 } },
    ]);
  });

  it.each([
    'squeeze my hand for me as hard as you can',
    'wiggle your toes for me both feet',
    'breathe in for me',
  ])('and nothing else does: %s', (talk) => expect(stated(talk)).toEqual([]));
});

describe('whom a question is put to', () => {
  it.each([
    ['right then pavel any pain in your chest | no', [['chest', null, 'pain', false]]],
    ['okay big fella any numbness in the left hand | no', [['hand', 'left', 'numbness', false]]],
  ] as const)('does not answer it: %s', (talk, facts) => expect(found(talk)).toEqual(facts));
});

describe('a check of a limb that is good, or is not', () => {
  const checks = (talk: string) =>
    standing(talk).flatMap((one) =>
      one.kind === 'csm' ? [[one.site, one.side, one.aspect, one.present]] : [],
    );
  it.each([
    ['right hand sensation not great', [['hand', 'right', 'sensation', false]]],
    [
      'left foot sensation fine motion not good',
      [
        ['foot', 'left', 'sensation', true],
        ['foot', 'left', 'motion', false],
      ],
    ],
    [
      'sensation and movement are both gone in the right foot',
      [
        ['foot', 'right', 'sensation', false],
        ['foot', 'right', 'motion', false],
      ],
    ],
    ['no cuts, pulse in the right foot is there', [['foot', 'right', 'circulation', true]]],
    ['no bruising, sensation in the left hand is good', [['hand', 'left', 'sensation', true]]],
    ['no cuts or pulse in the right foot', [['foot', 'right', 'circulation', false]]],
    ['no cuts, pulse in the right foot is absent', [['foot', 'right', 'circulation', false]]],
    [
      'left hand sensation and motion both intact',
      [
        ['hand', 'left', 'sensation', true],
        ['hand', 'left', 'motion', true],
      ],
    ],
  ] as const)('is as it was told: %s', (talk, facts) => expect(checks(talk)).toEqual(facts));
});

describe('what was said is said again', () => {
  it.each([
    ['right shoulder is bruised | no, no, the left shoulder', [['shoulder', 'left', 'contusion', true]]],
    ['left shin is swollen | no i said the right', [['lower-leg', 'right', 'swelling', true]]],
    ['left shin is swollen | No, the right shin, I said right.', [['lower-leg', 'right', 'swelling', true]]],
    ["left elbow is grazed no wait that's the right one", [['elbow', 'right', 'abrasion', true]]],
    ["left elbow is grazed | sorry, that's the right", [['elbow', 'right', 'abrasion', true]]],
    ['any pain in your neck | no i said no', [['neck', null, 'pain', false]]],
    ["left cheek is swollen | strike the swelling of the left cheek that's how his face is", []],
  ] as const)('in %s', (talk, facts) => expect(found(talk)).toEqual(facts));
});

it('takes oxygen that runs for care and no medicine', () => {
  expect(stated('she is on oxygen eight litres')).toMatchObject([{ kind: 'care', care: 'oxygen' }]);
});

describe('nothing is lost', () => {
  const notes = (talk: string) => standing(talk).flatMap((one) => (one.kind === 'note' ? [one.text] : []));

  it.each([
    ['can he feel this hand yes and that one no', 'that one no'],
    ['cut on the left thigh, no exit wound', 'no exit wound'],
    ['no pain in the left hip just a bit in the right', 'just a bit in the right'],
  ] as const)('of %s', (talk, kept) => expect(notes(talk)).toContain(kept));

  it('and an exit wound in a list under one "no" denies with the rest of it', () => {
    const denied = standing('no exit wound, bite mark or swelling in the left hip');
    expect(denied.map((one) => one.kind === 'finding' && [one.site, one.finding, one.present])).toEqual([
      ['hip', 'puncture', false],
      ['hip', 'bite', false],
      ['hip', 'swelling', false],
    ]);
  });

  it('and a denial has no measure of what is said behind it', () => {
    expect(standing('no pain in the belly, a bit in the flank')[0]).not.toHaveProperty('severity');
  });
});

describe('a side that belongs to what was said before', () => {
  it.each([
    ['chest rises well both sides left ribs tender', [['ribs', 'left', 'tenderness', true]]],
    ['no veins standing out', [['neck-veins', null, 'jugular-distension', false]]],
    ['gunshot to the chest', [['chest', null, 'puncture', true]]],
  ] as const)('is not that of the next place: %s', (talk, facts) =>
    expect(found(talk).filter(([site]) => site === facts[0]?.[0] || site === 'ribs')).toEqual(facts),
  );
});
