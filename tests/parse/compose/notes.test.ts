// Words of substance that found no place are kept as a note; courtesies and instructions are not. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('what the grammar does not place', () => {
  it.each([
    ['the left boot lace is snagged', ['note: the left boot lace is snagged']],
    ['he says it feels like glimmering', ['note: he says it feels like glimmering']],
    ['his jacket is torn', ['note: his jacket is torn']],
    ["that's an old injury", ["note: that's an old injury"]],
    ['right upper, left lower', ['note: right upper, left lower']],
    ["there's a zorble on his left knee", ['visit left knee', "note: there's a zorble on his left knee"]],
    ['swelling on the left knee and a weird flimmer', ['swelling left knee', 'note: a weird flimmer']],
  ])('is kept in words: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    'okay',
    'log rolling on three',
    'good man, stay still',
    'wriggle those toes for me',
    'bend your left knee for me',
  ])('makes no note where it is a courtesy or an instruction: %s', (talk) => {
    expect(read(talk)).toEqual([]);
  });
});

describe('what was not looked at', () => {
  it.each([
    "haven't looked at the left hip",
    'pelvis not examined',
    'still to do the back',
    'skipping the abdomen',
    'unable to assess the right foot',
    "we'll come back to the left arm",
    'everything but the head',
    'not the abdomen yet',
  ])('is kept as said and leaves no look: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });
});

describe('a no that reached no entry', () => {
  it.each([
    ['she can feel me touch the index finger on the left but not the thumb', 'note: but not the thumb'],
    ['no cap refill that I see', 'note: no cap refill that I see'],
    ['right arm, all intact', 'note: right arm, all intact'],
  ])('is kept in words: %s', (talk, expected) => {
    expect(read(talk)).toContain(expected);
  });
});
