// A "not" that denies what one verb says, and a place with how it is, without a pause between. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('what a verb denies ends where a place tells how it is', () => {
  it.each([
    ['he did not see the fence left knee sore', ['pain left knee']],
    ["she won't let go of the sled right wrist is swollen", ['swelling right wrist']],
    ["he couldn't open the shelter left shoulder tender", ['tenderness left shoulder']],
    ["didn't stop at the fence right ankle swollen", ['swelling right ankle']],
  ])('%s', (talk, means) => {
    expect(read(talk, 'finding')).toEqual(means);
  });
});

describe('what the verb is of is still denied', () => {
  checkStatements([
    ['does not think her right wrist is broken', ['no abnormality right wrist quality=fracture']],
    ["it's not that the right knee is sore", ['no pain right knee']],
    ['right knee does not look swollen', ['no swelling right knee']],
  ]);
});
