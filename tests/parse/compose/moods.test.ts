// Only what is stated of the patient now is stated; the other moods leave words, a visit or nothing. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { framesOf, read } from '../read.ts';

describe('a clause', () => {
  it.each([
    "if there's swelling on the left wrist tell me",
    'his brother broke his left leg',
    'he broke his left wrist years ago',
    "left knee, I'll look at that later",
    "Bram you're bleeding",
  ])('that supposes, puts off, or tells of others or of long ago is kept in words: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });

  it.each([
    ["I'm going to check your left hip now", ['visit left hip']],
    ['going to feel your scalp, no blood there', ['no bleeding skull']],
    ['and your shoulders', ['visit both shoulder']],
  ])('that sets out to look is a visit until something is said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each(['tell me if it hurts when I press your belly', 'squeeze my hand'])(
    'that tells somebody to do something states nothing: %s',
    (talk) => {
      expect(read(talk)).toEqual([]);
    },
  );

  it.each([
    ['mark the time', ['mark: mark the time']],
    ['mark that, chest seal on', ['mark: chest seal on', 'chest-seal']],
  ])('that marks is a mark, and a statement where it says one: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ["what's left", 'whats-left'],
    ['read it back', 'read-back'],
    ['next piece', 'next-piece'],
    ['go back one piece', 'last-piece'],
  ])('that asks the tool for something is a command: %s', (talk, command) => {
    expect(framesOf(talk)).toMatchObject([{ frame: 'command', command }]);
  });
});
