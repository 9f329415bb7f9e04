// A spoken time says when what is said with it was so, and nothing else. All talk here is invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, framesOf, statementsOf } from '../read.ts';

const MINUTE = 60_000;
const minutesBefore = (talk: string) =>
  statementsOf(talk).map(({ at }) => (at === undefined ? null : (BEGINS - at) / MINUTE));

const corrected = (talk: string): readonly (number | undefined)[] =>
  framesOf(talk).flatMap((frame) => (frame.frame === 'correction' ? [frame.at] : []));

describe('a spoken time', () => {
  it.each([
    ['tourniquet on the right thigh at fourteen oh one', [1]],
    ['tourniquet left arm, fourteen oh one', [1]],
    ['pulse eighty ten minutes ago', [10]],
    ['pressure at thirteen fifty was one ten over seventy', [12]],
    ['at noon he was alert', [122]],
    ['bruise on the left hip two days ago', [2 * 24 * 60]],
  ])('sets when it was so: %s', (talk, expected) => {
    expect(minutesBefore(talk)).toEqual(expected);
  });

  it.each([
    ['fentanyl fifty micrograms at thirteen fifty, splint on the left wrist at thirteen fifty six', [12, 6]],
    ['left thigh bleeding, tourniquet on at fourteen oh one', [null, 1]],
    ['pelvic binder on, tightened at fourteen oh one', [1, null]],
    ['pulse one thirty, correction one oh four', [null]],
    ['fell half an hour ago, pulse eighty', [30, null]],
    ['pulse eighty, resps sixteen at thirteen fifty', [12, 12]],
    ['at thirteen fifty pulse eighty, resps sixteen', [12, 12]],
    ['pulse eighty, resps sixteen, at thirteen fifty', [12, 12]],
    ['pulse eighty, ten minutes ago pulse was one ten', [null, 10]],
  ])(
    'goes with what stands between the same commas, or with the whole set of readings: %s',
    (talk, expected) => {
      expect(minutesBefore(talk)).toEqual(expected);
    },
  );

  it('does not run over a comma into the next number', () => {
    expect(minutesBefore('TXA one gram at thirteen fifty, two units of plasma running')).toEqual([12, null]);
  });

  it('holds for its own sentence only', () => {
    expect(minutesBefore('splint on the left wrist five minutes ago. pulse eighty')).toEqual([5, null]);
  });

  it.each([['pulse eighty'], ['fourteen twelve'], ['he broke his left wrist years ago']])(
    'is none where none was said of the patient now: %s',
    (talk) => {
      expect(minutesBefore(talk)).toEqual([null]);
    },
  );
});

describe('a time said by itself', () => {
  it.each([
    ['collar on | that was at fourteen oh one', 1],
    ['tourniquet on the right arm. time on, fourteen oh one', 1],
    ['gave fifty micrograms of fentanyl | ten minutes ago', 10],
    ['fell off a ladder. about an hour ago', 60],
  ])('says when what was done or happened was so: %s', (talk, ago) => {
    const [last] = corrected(talk);
    expect(last === undefined ? null : Math.round((BEGINS - last) / MINUTE)).toBe(ago);
  });

  it.each([
    'collar on | fourteen oh one',
    'collar on | not at fourteen oh one',
    'pulse eighty | at fourteen oh one',
  ])('times nothing where it may be something else: %s', (talk) => {
    expect(corrected(talk)).toEqual([]);
  });
});

describe('a bare time behind a question after it', () => {
  it.each([
    ['tourniquet right arm | what time did it go on | thirteen forty', 22],
    ['splint on the left ankle | when was that | half past one', 32],
    ['dressing on the left thigh | what time did you put it on | thirteen fifty', 12],
  ])('says when the care was given: %s', (talk, before) => {
    expect(corrected(talk)).toEqual([BEGINS - before * MINUTE]);
  });

  it.each([
    ['tourniquet right arm | what time did it go on | ninety two'],
    ['tourniquet right arm | pulse now | thirteen forty'],
    ['tourniquet right arm | when did it go on | pulse eighty'],
  ])('is no time where none was asked or said: %s', (talk) => {
    expect(corrected(talk)).toEqual([]);
  });
});
