// "Category red" and "red, priority one" sort a patient; no limb is red for it. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a colour that sorts is no finding', () => {
  checkStatements([
    ['right wrist swollen | category red', ['swelling right wrist', 'note: category red']],
    ['right wrist swollen | red, priority one', ['swelling right wrist', 'note: red, priority one']],
    ['right wrist swollen | triage red', ['swelling right wrist', 'note: triage red']],
  ]);
});

describe('a colour of a place is', () => {
  checkStatements([
    ['right wrist red, priority one', ['discoloration right wrist quality=red', 'note: priority one']],
    ['right wrist swollen | red', ['swelling right wrist', 'discoloration right wrist quality=red']],
  ]);
});
