// What wobbles behind teeth is a tooth, and "a fair old" makes nothing old. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('what wobbles', () => {
  checkStatements([
    ["no teeth broken, but this one's wobbly", ['no missing-teeth teeth', 'loose-teeth teeth']],
    [
      'nosebleed | no teeth gone but that one wobbles',
      ['bleeding nose', 'no missing-teeth teeth', 'loose-teeth teeth'],
    ],
    ["teeth | this one's a bit wobbly", ['visit teeth', 'loose-teeth teeth severity=mild']],
    ['left knee wobbly', ['instability left knee']],
    ['her nose is wobbly', ['instability nose']],
    ['no teeth missing, pelvis wobbly', ['no missing-teeth teeth', 'instability pelvis']],
  ]);
});

describe('how big somebody calls it', () => {
  checkStatements([
    ['a right old gash on the shin', ['laceration lower-leg']],
    ["that's a fair old bruise on the left thigh", ['contusion left thigh']],
    ['an old bruise on the left thigh', ['contusion left thigh quality=old']],
    ['his right ankle has an old scar', ['visit right ankle', 'note: his right ankle has an old scar']],
  ]);
});
