// Teeth by where they are and how many. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('teeth', () => {
  checkStatements([
    ['three bottom teeth missing', ['missing-teeth teeth count=3']],
    ['an upper front tooth is chipped', ['missing-teeth teeth']],
    ['front teeth gone, one next to it is wobbly', ['missing-teeth teeth', 'loose-teeth teeth']],
    ['no front teeth missing', ['no missing-teeth teeth']],
    ['a sled peg is loose, one next to it is loose', ['note: a sled peg is loose, one next to it is loose']],
    ['left mitten missing', ['note: left mitten missing']],
  ]);
});
