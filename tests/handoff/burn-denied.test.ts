// The burned share of the body beside what was said against a burn that it counts; the talk is invented.

import { beforeAll, describe, expect, test } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { realReader } from '../talk-case.ts';
import { toldOf } from './talk-told.ts';

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

const told = (...lines: readonly string[]) => toldOf(reader, lines);

describe('a burn that was denied since', () => {
  test('leaves the share without a value, and it is told with what stands against it', () => {
    const talk = told('[00:00:10] burn to the whole right arm', '[00:05:00] the right arm is not burned');
    expect(talk.reckoning.scores.burnPercent).toBeNull();
    expect(talk.reckoning.burns?.missing).toContain('whether it is burned: right arm');
    expect(talk.reckoning.burns?.text).toMatch(
      /9 % by rule of nines; a burn of the right arm was denied at 09:15/,
    );
    expect(talk.soap).toContain(
      "Burns 9% of the body's surface, but a burn of the right arm was denied at 09:15",
    );
    expect(talk.radio).toMatch(
      /Burns about niner percent of the body, but a burn of the right arm was denied/,
    );
  });

  test('in a part of the place does so too, and by a wider place', () => {
    const part = told('[00:00:10] whole right arm burned', '[00:05:00] no burn of the right hand');
    expect(part.reckoning.scores.burnPercent).toBeNull();
    expect(part.soap).toContain('but a burn of the right hand was denied at 09:15');
    const wide = told('[00:00:10] left thigh burned', '[00:05:00] no burns on the left leg');
    expect(wide.reckoning.scores.burnPercent).toBeNull();
    expect(wide.soap).toContain('but a burn of the left leg was denied at 09:15');
  });
});

describe('the share stands', () => {
  test.each([
    ['of a burn found after it was denied', 'no burns on the right arm', 'right arm burned'],
    ['where another place was denied', 'right arm burned', 'no burn of the left arm'],
    ['where a depth alone was denied', 'right arm burned', 'no full thickness burn on the right arm'],
  ])('%s', (_, first, then) => {
    const talk = told(`[00:00:10] ${first}`, `[00:05:00] ${then}`);
    expect(talk.reckoning.scores.burnPercent).toBe(9);
    expect(talk.soap).toMatch(/Burns 9% of the body's surface \(/);
  });

  test('of a burn told again after it was denied', () => {
    const talk = told(
      '[00:00:10] right arm burned',
      '[00:05:00] the right arm is not burned',
      '[00:06:00] right arm burned after all',
    );
    expect(talk.reckoning.scores.burnPercent).toBe(9);
  });
});
