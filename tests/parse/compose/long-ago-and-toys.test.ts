// What was long ago, and what a child's toy has, is no finding of today and is kept in words. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('long ago by its season or by how old somebody was', () => {
  checkStatements([
    [
      'dislocated the left elbow three winters back fixed since',
      ['note: dislocated the left elbow three winters back fixed since'],
    ],
    ['had her left ankle broken two summers ago', ['note: had her left ankle broken two summers ago']],
    ['right collarbone fractured as a teenager', ['note: right collarbone fractured as a teenager']],
    ['right elbow dislocated two days ago', ['deformity right elbow quality=dislocation']],
    ['winter climbing, back sore', ['pain back', 'note: winter climbing']],
  ]);
});

describe('long ago, in answer to a question', () => {
  checkStatements([
    [
      'any allergies | just walnuts, I had a rash from them as a boy',
      ['allergies: walnuts, I had a rash from them as a boy'],
    ],
    [
      'any allergies | no. right knee dislocated years ago',
      ['no allergies: no', 'note: right knee dislocated years ago'],
    ],
  ]);
});

describe("a toy's", () => {
  checkStatements([
    [
      "teddy's got a sore paw and a splint on his arm",
      ["note: teddy's got a sore paw and a splint on his arm"],
    ],
    ["dolly's leg is broken", ["note: dolly's leg is broken"]],
    ["we put a dressing on teddy's ear", ["note: we put a dressing on teddy's ear"]],
    [
      'she is hugging her teddy, right wrist swollen',
      ['swelling right wrist', 'note: she is hugging her teddy'],
    ],
  ]);
});
