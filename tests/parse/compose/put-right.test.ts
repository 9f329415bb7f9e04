// What is put right: figures called otherwise, a place behind a "no", what was read back, and a correction that only asks. Invented talk.

import { describe, expect, it } from 'vitest';
import { found, standing } from '../standing.ts';

const signs = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'vital' ? [[one.vital, Object.values(one.value)[0]]] : []));

describe('a figure that is called otherwise', () => {
  it.each([
    ['how bad is it out of ten | four. no, call it seven.', [['pain-score', 7]]],
    ['pain out of ten | seven no let us say five', [['pain-score', 5]]],
    ['resps twenty. no, call it twenty four.', [['respirations', 24]]],
    ['pulse sixty eight no what am i saying eighty six', [['pulse', 86]]],
    ['sats ninety, wait, I would say ninety two', [['oxygen-saturation', 92]]],
  ])('takes the place of the first in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it.each([
    ['pulse eighty. no, call two more people.', [['pulse', 80]]],
    ['pulse eighty | does that hurt | no, call it a six', [['pulse', 80]]],
    ['pulse eighty. what am I saying, I need three more dressings', [['pulse', 80]]],
    ['temperature thirty six. no, let us say we meet in twenty minutes', [['temperature', 36]]],
  ])('does not in %s', (talk, means) => expect(signs(talk)).toEqual(means));

  it('is an age too', () => {
    const ages = standing('how old is he | fifty four no what am I saying fifty six in May').flatMap((one) =>
      one.kind === 'history' ? [one.years] : [],
    );
    expect(ages).toEqual([56]);
  });
});

describe('a place behind a "no"', () => {
  it.each([
    ['graze on the left thigh, no, left knee', [['knee', 'left', 'abrasion', true]]],
    [
      'cut to the right elbow - no, wrist, right wrist, too dark here',
      [['wrist', 'right', 'laceration', true]],
    ],
    ['bruised left shin | no, ankle', [['ankle', 'left', 'contusion', true]]],
  ] as const)('is where it was found: %s', (talk, entries) => expect(found(talk)).toEqual(entries));

  it.each([
    'swollen left thigh, no, left knee, no',
    'swollen left thigh, no, left knee, that is fine',
    'swollen left thigh. no left knee',
    'no swelling of the left thigh, no, left knee',
  ])('moves nothing in %s', (talk) => expect(found(talk)[0]?.[0]).toBe('thigh'));
});

describe('what was read back', () => {
  it.each([
    'pulse one ten | copy, pulse one ten | correction, pulse one thirty',
    'pulse one ten | pulse one ten, roger | make that one thirty',
    'pulse one ten | roger | pulse one ten | pulse one ten | correction, one thirty',
  ])('is put right with it: %s', (talk) => expect(signs(talk)).toEqual([['pulse', 130]]));

  it('is moved and struck with it', () => {
    expect(found('left ear bleeding | copy, left ear bleeding | correction, right ear')).toEqual([
      ['ear', 'right', 'bleeding', true],
    ]);
    expect(found('left ear bleeding | left ear bleeding | strike that')).toEqual([]);
  });

  it.each([
    'pulse one ten at ten to two | pulse one ten at five to two | correction, pulse one thirty',
    'pulse one ten | left knee sore | pulse one ten | correction, pulse one thirty',
    'pulse one ten | pulse one twelve | correction, pulse one thirty',
  ])('is not taken for another reading: %s', (talk) => expect(signs(talk)).toHaveLength(2));
});

it('calls a finding otherwise once, though it is told twice', () => {
  expect(
    found('right calf, burn. no, wait, correction, that is a graze, right calf graze, it is mud'),
  ).toEqual([['lower-leg', 'right', 'abrasion', true]]);
});

describe('care whose time is put right', () => {
  it.each([
    'splint on the left forearm at ten to two | correction, splint at five to two',
    'splint on the left forearm at ten to two | sats ninety | correction, splint at five to two',
  ])('keeps its place: %s', (talk) => {
    const care = standing(talk).flatMap((one) => (one.kind === 'care' ? [one] : []));
    expect(care.map(({ site, side, at }) => [site, side, at.slice(11, 16)])).toEqual([
      ['forearm', 'left', '13:55'],
    ]);
  });

  it('has another place where one is said', () => {
    const care = standing('splint on the left forearm | correction, splint on the right wrist').flatMap(
      (one) => (one.kind === 'care' ? [[one.site, one.side]] : []),
    );
    expect(care).toEqual([['wrist', 'right']]);
  });
});

describe('a correction that asks', () => {
  it.each([
    'right ankle swollen | correction, is that the left ankle? | no. right.',
    'right ankle swollen | sorry, all that is the left leg? no',
    'right ankle swollen | strike that? no',
  ])('puts nothing right: %s', (talk) => expect(found(talk)).toEqual([['ankle', 'right', 'swelling', true]]));

  it.each([
    'pulse ninety | correction, pulse seventy? yes',
    'pulse ninety | correction, pulse seventy, okay?',
  ])('does where it is said so: %s', (talk) => expect(signs(talk)).toEqual([['pulse', 70]]));
});
