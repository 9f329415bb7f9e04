// A hand that somebody holds on the wound is no place of the patient's: what follows is of the wound. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a hand on the wound', () => {
  checkStatements([
    [
      "cut on the right forearm | sam's got his hand on it | still bleeding",
      ['laceration right forearm', "note: sam's got his hand on it", 'bleeding right forearm quality=active'],
    ],
    [
      'left thigh bleeding | her knee is on it | bleeding controlled',
      ['bleeding left thigh', 'note: her knee is on it', 'bleeding left thigh quality=controlled'],
    ],
    [
      'gash on the left shin | mo is pressing on it with his fist | no bleeding now',
      ['laceration left lower-leg', 'note: mo is pressing on it with his fist', 'no bleeding left lower-leg'],
    ],
  ]);
});

describe('a hand that is hurt', () => {
  checkStatements([
    ["the cut's on his hand", ['laceration hand']],
    ['graze on his knee | it is swollen', ['abrasion knee', 'swelling knee']],
    ['his elbow is bleeding from a cut on it', ['bleeding elbow', 'laceration elbow']],
  ]);
});
