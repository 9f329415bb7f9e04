// "No no swelling" denies: the first "no" is said for good measure, and takes nothing back. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a "no" said twice before what it denies', () => {
  checkStatements([
    ['left elbow no no swelling', ['no swelling left elbow']],
    ['right ankle tender | no no bruising', ['tenderness right ankle', 'no contusion right ankle']],
    ['left shin grazed no no swelling', ['abrasion left lower-leg', 'no swelling left lower-leg']],
    ['any rash on the belly | no no rash', ['visit abdomen', 'no rash abdomen']],
  ]);
});

describe('a binding that did not let go', () => {
  checkStatements([
    [
      'binding never let go and my leg twisted round',
      ['mechanism: binding never let go and my leg twisted round'],
    ],
  ]);
});
