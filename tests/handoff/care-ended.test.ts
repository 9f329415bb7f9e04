// Care that goes on is told with what was said of its end, and is not told as if it went on; the talk is invented.

import { beforeAll, describe, expect, test } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { realReader } from '../talk-case.ts';
import { toldOf } from './talk-told.ts';

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

const told = (...lines: readonly string[]) => toldOf(reader, lines);

describe('care that was ended', () => {
  test('is told with what was said, and when', () => {
    const talk = told(
      '[00:00:10] oxygen at six litres',
      '[00:01:00] collar on',
      '[00:05:00] stopped the oxygen',
      '[00:06:00] collar has come off',
    );
    expect(talk.soap).toMatch(/Oxygen, at six litres, at 09:10; said stopped at 09:15: “stopped the oxygen”/);
    expect(talk.mist).toMatch(/Collar at 09:11; said off at 09:16: “collar has come off”/);
    expect(talk.radio).toMatch(/Oxygen, at six litres, said stopped at zero niner one five/);
    expect(talk.radio).toMatch(/Collar, said off at zero niner one six/);
  });

  test('on one side is ended on that side alone', () => {
    const { soap } = told(
      '[00:00:10] splint on the left forearm, splint on the right lower leg',
      '[00:04:00] splint on the right leg removed',
    );
    expect(soap).toMatch(/Splint to the right lower leg at 09:10; said off at 09:14/);
    expect(soap).toMatch(/Splint to the left forearm at 09:10 \(/);
    expect(soap).toMatch(/splint on the left forearm, on since 09:10/);
    expect(soap).toMatch(/splint on the right lower leg, on at 09:10/);
  });

  test('is not clear where it may be either', () => {
    const { soap } = told(
      '[00:00:10] splint on the left forearm, splint on the left lower leg',
      '[00:04:00] splint removed',
    );
    expect(soap.match(/said at 09:14, not clear of which: “splint removed”/g)).toHaveLength(2);
  });

  test('and begun again goes on', () => {
    const { soap } = told(
      '[00:00:10] oxygen at six litres',
      '[00:03:00] oxygen off',
      '[00:08:00] oxygen at two litres',
    );
    expect(soap).toMatch(/Oxygen, at six litres, at 09:10; said stopped at 09:13/);
    expect(soap).toMatch(/Oxygen, at two litres, at 09:18 \(/);
  });

  test.each([
    'don’t take the collar off',
    'collar off in a minute?',
    'keep the collar on',
    'we will remove the collar at the hut',
  ])('is not where that is denied, asked or meant for later: %s', (said) => {
    const { soap } = told('[00:00:10] collar on', `[00:02:00] ${said}`);
    expect(soap).toMatch(/Collar at 09:10 \(/);
  });

  test('or done once, as a reduction is, is on since no time', () => {
    const { soap } = told('[00:00:10] reduced the left ankle');
    expect(soap).toMatch(/beyond the reduction on the left ankle, at 09:10/);
    expect(soap).not.toMatch(/on since/);
  });
});
