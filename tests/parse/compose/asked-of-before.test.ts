// "Has he had one before?" names nothing that could be answered for; what was answered is kept beside it. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('an answer to what was so before is kept beside its question', () => {
  checkStatements([
    ['has she had one before | no', ['note: has she had one before: no']],
    ['has this happened before | yes', ['note: has this happened before: yes']],
    ['has it ever done this | yeah', ['note: has it ever done this: yeah']],
  ]);
});

describe('an answer to another question is not', () => {
  checkStatements([
    ['does the left knee hurt | no', ['visit left knee', 'no pain left knee']],
    ['did that hurt before | pulse ninety', ['pulse rate=90']],
  ]);
});
