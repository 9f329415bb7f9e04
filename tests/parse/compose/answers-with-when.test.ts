// What makes it worse is answered with "when" and "if"; "you feel that" asks behind a place and a comma. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('"when" and "if" in answer to what makes it worse or better', () => {
  checkStatements([
    ['what makes it worse | when he coughs', ['provocation: when he coughs']],
    ['does anything make it better | if I lie flat', ['provocation: if I lie flat']],
    ['what makes it worse | when I bend my left knee', ['provocation: when I bend my left knee']],
    ['if I press here tell me', ['note: if I press here']],
  ]);
});

describe('"you feel that" behind a place', () => {
  checkStatements([
    ['left foot, you feel that | yup', ['visit left foot', 'sensation left foot']],
    ['right hand, you feel that | nope', ['visit right hand', 'no sensation right hand']],
    ['left wrist, got a pulse', ['circulation left hand']],
  ]);
});
