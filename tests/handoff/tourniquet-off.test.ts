// A tourniquet that was said to be off is told with that, and counts no further; the talk is invented.

import { beforeAll, describe, expect, test } from 'vitest';
import { compareReadBack, criticalValues } from '../../src/handoff/index.ts';
import type { Reader } from '../../src/parse/index.ts';
import { realReader } from '../talk-case.ts';
import { toldOf } from './talk-told.ts';

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

const told = (...lines: readonly string[]) => toldOf(reader, lines);
const clocks = ({ reckoning }: ReturnType<typeof told>) =>
  reckoning.clocks
    .filter(({ clock }) => clock === 'tourniquet')
    .map(({ of, minutes, running, remark }) => [of, minutes, running, remark]);

describe('taken off', () => {
  test('and put on again, each time is told beside what was said between', () => {
    const talk = told(
      '[00:00:10] tourniquet on the left thigh at nine eleven',
      '[00:05:00] tourniquet off',
      '[00:07:00] tourniquet on the left thigh at nine seventeen',
    );
    expect(talk.soap).toMatch(
      /Tourniquet to the left thigh at 09:11; said off at 09:15: “tourniquet off” \(unconfirmed\)\.\nTourniquet to the left thigh at 09:17 \(/,
    );
    expect(talk.soap).toMatch(/thigh, on at 09:11; said off at 09:15: “tourniquet off”/);
    expect(talk.soap).toMatch(/thigh, on since 09:17, 23 minutes/);
    expect(talk.soap).not.toMatch(/on since 09:11/);
    expect(talk.mist).toMatch(/at 09:11; said off at 09:15/);
    expect(talk.radio).toMatch(
      /Tourniquet left thigh, zero niner one one, said off zero niner one five\. Tourniquet left thigh, zero niner one seven\./,
    );
    expect(clocks(talk)).toEqual([
      ['left thigh', 4, false, 'said off at 09:15: “tourniquet off”'],
      ['left thigh', 23, true, null],
    ]);
  });

  test.each([
    'tourniquet removed from the left thigh',
    'tourniquet off the left thigh',
    'took the tourniquet off the left leg',
    'released the left tourniquet',
    'the tourniquet has been taken off',
    'left thigh tourniquet undone',
  ])('“%s” stops its count', (off) => {
    const talk = told('[00:00:10] tourniquet on the left thigh', `[00:05:00] ${off}`);
    expect(talk.soap).toContain(`thigh at 09:10; said off at 09:15: “${off}”`);
    expect(talk.soap).not.toMatch(/on since/);
    expect(talk.radio).toMatch(/zero niner one zero, said off zero niner one five/);
  });

  test('in the breath in which it was told to be on', () => {
    const talk = told('[00:10:00] tourniquet on the right arm at nine twelve, off at nine twenty');
    expect(talk.soap).toContain('right arm at 09:12; said off at 09:20: “off at nine twenty”');
  });

  test('of two, the one that is named is off and the other counts on', () => {
    const talk = told(
      '[00:00:10] tourniquet on the left thigh',
      '[00:02:00] tourniquet on the right upper arm',
      '[00:06:00] took the tourniquet off the arm',
    );
    expect(talk.soap).toMatch(/on the left thigh, on since 09:10, 29 minutes \(/);
    expect(talk.soap).toMatch(/on the right upper arm, on at 09:12; said off at 09:16/);
  });
});

describe('where it is not clear', () => {
  test('which of two came off, both count on beside the words', () => {
    const talk = told(
      '[00:00:10] tourniquet on the left thigh',
      '[00:02:00] tourniquet on the right thigh',
      '[00:06:00] tourniquet off',
    );
    const words = 'said at 09:16, not clear of which: “tourniquet off”';
    expect(talk.soap).toContain(`left thigh, on since 09:10, 29 minutes; ${words}`);
    expect(talk.soap).toContain(`right thigh, on since 09:12, 28 minutes; ${words}`);
    expect(talk.radio).toMatch(/zero niner one zero, unclear which was said off zero niner one six/);
  });

  test('since the other side is named, it counts on beside the words', () => {
    const talk = told(
      '[00:00:10] tourniquet on the left thigh',
      '[00:06:00] removed the tourniquet from the right thigh',
    );
    expect(talk.soap).toMatch(/on since 09:10, 29 minutes; said at 09:16, not clear of which: “removed/);
  });

  test('whether it still holds, it counts on beside the words', () => {
    const talk = told('[00:00:10] tourniquet on the left thigh', '[00:06:00] loosened the tourniquet');
    expect(clocks(talk)).toEqual([
      ['left thigh', 29, true, 'said at 09:16, not clear whether it is off: “loosened the tourniquet”'],
    ]);
    expect(talk.radio).toMatch(/zero niner one zero, perhaps off zero niner one six/);
  });
});

test.each([
  "don't take the tourniquet off",
  'tourniquet is not off',
  'is the tourniquet off',
  'took another tourniquet off my belt',
  'jacket off and the tourniquet is holding',
  'tourniquet retightened',
])('“%s” takes none off', (words) => {
  const talk = told('[00:00:10] tourniquet on the left thigh', `[00:05:00] ${words}`);
  expect(talk.soap).toMatch(/left thigh, on since 09:10, 29 minutes \(/);
  expect(talk.soap).not.toMatch(/said off|not clear/);
});

test('said again without a word of its being off, it is one, with the time said first', () => {
  const talk = told(
    '[00:00:10] tourniquet on the left thigh at nine eleven',
    '[00:07:00] tourniquet on the left thigh',
  );
  expect(clocks(talk)).toEqual([['left thigh', 29, true, null]]);
});

test('read back without the time it came off, that time is asked for', () => {
  const { input } = told(
    '[00:00:10] tourniquet on the left thigh at nine eleven',
    '[00:05:00] tourniquet off',
  );
  const kinds = (heard: string) =>
    compareReadBack(
      criticalValues(input).filter(({ name }) => name === 'tourniquet'),
      heard,
    ).map(({ kind }) => kind);
  expect(kinds('tourniquet left thigh zero nine one one, said off zero nine one five')).toEqual(['matched']);
  expect(kinds('tourniquet left thigh zero nine one one')).toEqual(['missing']);
  expect(kinds('tourniquet left thigh zero nine one one, said off zero nine one six')).toEqual(['differs']);
});

test.each(['right', 'left'])('off the %s thigh is off', (side) => {
  const talk = told(
    `[00:00:10] tourniquet on the ${side} thigh at nine eleven`,
    `[00:05:00] tourniquet off the ${side} thigh`,
  );
  expect(talk.soap).toMatch(/on at 09:11; said off at 09:15/);
});
