// A strike of what was not said, or of one that is not named: it takes nothing back and is kept. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { corrections, read } from '../read.ts';

describe('strikes nothing', () => {
  it.each([
    ['right shin scraped, so scratch the clean sheet of nine', ['abrasion right lower-leg']],
    ['left wrist sore | cancel the three', ['pain left wrist', 'note: cancel the three']],
    [
      'left wrist sore, right wrist sore, strike the first',
      ['pain left wrist', 'pain right wrist', 'note: strike the first'],
    ],
  ])('%s', (talk, means) => {
    expect(corrections(talk)).toEqual([]);
    expect(read(talk, 'finding', 'note').filter((one) => means.includes(one))).toEqual(means);
  });
});

describe('strikes what was said last', () => {
  it.each([
    ['pulse eighty | scratch the eighty', ['strike ← last']],
    ['pulse eighty | strike the last one', ['strike ← last']],
    ['left wrist sore | scratch that one', ['strike ← last']],
  ])('%s', (talk, means) => {
    expect(corrections(talk)).toEqual(means);
  });
});
