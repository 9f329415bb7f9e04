// "Heck yeah", "oh boy howdy yes", "heck no": a yes or a no with an oath before it. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a yes or a no behind an oath', () => {
  checkStatements([
    ['does your left shin hurt | heck yeah', ['visit left lower-leg', 'pain left lower-leg']],
    ['is your right knee sore | oh hell yes', ['visit right knee', 'pain right knee']],
    ['does your back hurt | oh boy howdy yes', ['visit back', 'pain back']],
    ['any pain in your neck | heck no', ['visit neck', 'no pain neck']],
  ]);
});

describe('an oath alone', () => {
  checkStatements([
    ['does your back hurt | what the heck', ['visit back', 'note: what the heck']],
    ['does your back hurt | oh hell', ['visit back']],
  ]);
});
