// Answers that name which: of two sides or places, with more said behind it. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

describe('a side that answers which', () => {
  it.each([
    ['which hip is it that hurts | the left one i slipped on it', [['hip', 'left', 'pain', true]]],
    ['and which elbow hurts love | my right one he kicked me', [['elbow', 'right', 'pain', true]]],
    ['do your hands hurt | just the left one', [['hand', 'left', 'pain', true]]],
    ['are your ears sore | only the right', [['ear', 'right', 'pain', true]]],
    ['which shin hurts | the left one i banged it on the step', [['lower-leg', 'left', 'pain', true]]],
    ['where does it hurt | my left heel no the right sorry', [['heel', 'right', 'pain', true]]],
  ] as const)('in %s', (talk, means) => expect(found(talk)).toEqual(means));

  it.each([
    'do your hands hurt | the left one next',
    'are your knees okay | just the left one',
    'can you move your feet | just the left one',
  ])('and none where it goes on or says nothing of it: %s', (talk) => expect(found(talk)).toEqual([]));

  it('keeps what happened behind it', () =>
    expect(standing('which hip hurts | the left one i slipped on it').map(({ kind }) => kind)).toEqual([
      'visit',
      'finding',
      'history',
    ]));
});

describe('"neither"', () => {
  it.each([
    [
      'any pain in your jaw or your chest | no neither',
      [
        ['jaw', null, 'pain', false],
        ['chest', null, 'pain', false],
      ],
    ],
    [
      'any pain in your jaw or your chest | neither of them',
      [
        ['jaw', null, 'pain', false],
        ['chest', null, 'pain', false],
      ],
    ],
    ['does either wrist hurt | neither', [['wrist', 'both', 'pain', false]]],
    ['neither wrist is swollen', [['wrist', 'both', 'swelling', false]]],
  ] as const)('denies both: %s', (talk, means) => expect(found(talk)).toEqual(means));
});

describe('a second place behind an "or"', () => {
  it.each([
    [
      'any pain in your jaw at all, mrs lane, or in your ear | no',
      [
        ['jaw', null, 'pain', false],
        ['ear', null, 'pain', false],
      ],
    ],
    [
      'does your left wrist hurt or your right wrist | no',
      [
        ['wrist', 'left', 'pain', false],
        ['wrist', 'right', 'pain', false],
      ],
    ],
    ['any pain in either wrist | no', [['wrist', 'both', 'pain', false]]],
  ] as const)('is asked after as well: %s', (talk, means) => expect(found(talk)).toEqual(means));
});

describe('one place of many', () => {
  it.each([
    [
      'are any of your toes sore | only the little toe on my left foot, the others are fine',
      [['little-toe', 'left', 'pain', true]],
    ],
    ['does your arm hurt | just my wrist the rest is fine', [['wrist', null, 'pain', true]]],
    ['are any of your fingers numb | the others are fine', []],
    [
      'do you feel dizzy | no i feel all right it is just my right heel that hurts',
      [['heel', 'right', 'pain', true]],
    ],
  ] as const)('is told beside the others: %s', (talk, means) => expect(found(talk)).toEqual(means));
});
