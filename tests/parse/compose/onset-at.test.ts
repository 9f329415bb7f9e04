// What tells when something began holds its own time. All talk here is invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, line, statementsOf } from '../read.ts';

const MINUTE = 60_000;
const timed = (talk: string): readonly string[] =>
  statementsOf(talk).map(({ statement, at }) =>
    at === undefined ? line(statement) : `${line(statement)} ${(BEGINS - at) / MINUTE} min ago`,
  );

describe('the time in the words of an onset', () => {
  it.each([
    ['started half an hour ago', ['onset: started half an hour ago 30 min ago']],
    ['the pain came on twenty minutes ago', ['onset: the pain came on twenty minutes ago 20 min ago']],
    ['it began at one thirty', ['onset: it began at one thirty 32 min ago']],
    [
      'neck pain started an hour ago, pulse eighty eight',
      ['onset: started an hour ago 60 min ago', 'pain neck', 'pulse rate=88'],
    ],
  ])('is when it began: %s', (talk, expected) => expect(timed(talk)).toEqual(expected));

  it.each([
    'pain started over an hour ago',
    'it started at one thirty yesterday',
    'started between one and two',
    'it started twenty minutes after lunch',
    'it came on at rest',
  ])('is none where it only bounds it or is of something else: %s', (talk) =>
    expect(statementsOf(talk).every(({ at }) => at === undefined)).toBe(true),
  );
});
