// What stopped at a time that is said is not there then. All talk here is invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, line, statementsOf } from '../read.ts';

const MINUTE = 60_000;
const timed = (talk: string): readonly string[] =>
  statementsOf(talk).map(({ statement, at }) =>
    at === undefined ? line(statement) : `${line(statement)} ${(BEGINS - at) / MINUTE} min ago`,
  );

describe('what stopped at a time', () => {
  it.each([
    [
      'bleeding from the right shin, stopped ten minutes ago',
      ['bleeding right lower-leg quality=controlled 10 min ago'],
    ],
    [
      'the bleeding on his left arm stopped about ten minutes ago',
      ['bleeding left arm quality=controlled 10 min ago'],
    ],
    ['pain in the left hip, it went away at ten to two', ['no pain left hip 12 min ago']],
    ['tingling in the right hand, gone ten minutes ago', ['no tingling right hand 10 min ago']],
  ])('is over then: %s', (talk, expected) => {
    expect(timed(talk)).toEqual(expected);
  });

  it.each([
    [
      'bleeding from the right shin, tourniquet on ten minutes ago',
      ['bleeding right lower-leg', 'tourniquet right lower-leg 10 min ago'],
    ],
    ['left elbow has gone swollen', ['swelling left elbow']],
    ['cut on the chin, stopped the bus at ten to two', null],
  ])('is nothing else: %s', (talk, expected) => {
    const all = timed(talk);
    if (expected === null) expect(all[0]).toBe('laceration jaw');
    else expect(all).toEqual(expected);
  });
});
