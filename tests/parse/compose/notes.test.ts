// Words of substance that found no place are kept as a note; courtesies and instructions are not. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('what the grammar does not place', () => {
  it.each([
    ['the left boot lace is snagged', ['note: the left boot lace is snagged']],
    ['he says it feels like glimmering', ['note: he says it feels like glimmering']],
    ['his helmet is cracked', ['note: his helmet is cracked']],
    ['right upper, left lower', ['note: right upper, left lower']],
    ["there's a zorble on his left knee", ['visit left knee', 'note: zorble']],
    ['swelling on the left knee and a weird flimmer', ['swelling left knee', 'note: weird flimmer']],
  ])('is kept in words: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each(['okay', 'good man, stay still', 'wriggle those toes for me', 'bend your left knee for me'])(
    'makes no note where it is a courtesy or an instruction: %s',
    (talk) => {
      expect(read(talk)).toEqual([]);
    },
  );
});
