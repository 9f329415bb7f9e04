// A site is normal only where that was said of it; "fine" alone is mere talk. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('a word that calls something normal', () => {
  it.each([
    ['the elbow is fine', 'no abnormality elbow'],
    ['skull unremarkable', 'no abnormality skull'],
    ['left shoulder atraumatic', 'no abnormality left shoulder'],
    ['nothing found on the face', 'no abnormality face'],
    ['head looks good', 'no abnormality head'],
    ['neck is fine, thanks', 'no abnormality neck'],
  ])('is said of its site: %s', (talk, expected) => {
    expect(read(talk)).toEqual([expected]);
  });

  it('is said of the site in mind where it is a whole sentence', () => {
    expect(read('left knee | looks fine')).toEqual(['visit left knee', 'no abnormality left knee']);
  });

  it.each([
    'fine',
    'all good',
    'good | okay great',
    'that looks fine',
    "I'm fine, it's my knee",
    'the weather is fine',
  ])('finds nothing where no site is meant: %s', (talk) => {
    expect(read(talk, 'finding')).toEqual([]);
  });
});
