// "Total burn eighteen percent" is the size of no one place; "nine percent each" is that of each. All invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('how much is burned in all is kept in words', () => {
  checkStatements([
    ['right leg burned | total burn twelve percent', ['burn right leg', 'note: total burn twelve percent']],
    ['right leg burned | burns are thirty percent', ['burn right leg', 'note: burns are thirty percent']],
    ['right leg burned | burns ten percent in total', ['burn right leg', 'note: burns ten percent in total']],
  ]);
});

describe('what is told of a place, and of each of two', () => {
  checkStatements([
    ['burns on the right leg ten percent', ['burn right leg quality=10 percent']],
    ['burns to both hands two percent each', ['burn both hand quality=2 percent each']],
    ['burns to both hands two percent', ['burn both hand quality=2 percent']],
  ]);
});
