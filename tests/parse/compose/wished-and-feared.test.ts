// What the patient fears, wishes or asks of himself was not found. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a wish or a fear', () => {
  checkStatements([
    [
      'is my arm broken | i hope there is no break in there',
      ['visit arm', 'note: i hope there is no break in there'],
    ],
    ['have i broken my wrist please say it is not broken', ['visit wrist']],
    ['i do not want my arm to be broken', ['note: i do not want my arm to be broken']],
    ["i'm scared my ankle is broken", ["note: i'm scared my ankle is broken"]],
    ['is my ankle sprained i cannot have a sprain', ['visit ankle', 'note: i cannot have a sprain']],
    ['am i bleeding from my head', ['visit head']],
  ]);
});

describe('what the patient tells', () => {
  checkStatements([
    ['i am bleeding from my head', ['bleeding head']],
    ['i do not want help, my left knee is swollen', ['swelling left knee', 'note: i do not want help']],
    ['is the knee swollen yes', ['swelling knee']],
  ]);
});
