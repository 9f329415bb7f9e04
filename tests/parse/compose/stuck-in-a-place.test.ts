// A thing that sticks in a place is an impaled object there; one that is held, or sticks in no body, is none. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('what sticks in a place', () => {
  checkStatements([
    ['hook in the left ring finger', ['impaled-object left ring-finger']],
    ['hook is in the left palm, no bleeding', ['impaled-object left palm', 'no bleeding left palm']],
    ['a treble hook caught in her right ear', ['impaled-object right ear']],
    ['left heel, rusty hook in it', ['impaled-object left heel']],
    ['tent peg stuck in his left shin', ['impaled-object left lower-leg']],
    ['brake lever sticking out of the right groin', ['impaled-object right groin']],
    ['walking pole gone right through the left calf', ['impaled-object left lower-leg']],
    ['no hook in the thumb', ['no impaled-object thumb']],
    ['is there a nail in your foot | no', ['visit foot', 'no impaled-object foot']],
  ]);
});

describe('what does not', () => {
  checkStatements([
    ['put the hook in my right hand', ['visit right hand', 'note: put the hook in my right hand']],
    [
      'he was holding a knife in the left hand',
      ['visit left hand', 'note: he was holding a knife in the left hand'],
    ],
    ['pole in his right hand', ['visit right hand', 'note: pole in his right hand']],
    ['hook stuck in the jacket sleeve', ['note: hook stuck in the jacket sleeve']],
    ['nail in the left wall', ['note: nail in the left wall']],
    ['is there a hook in your thumb', ['visit thumb']],
    ['bone sticking out of the left shin', ['abnormality left lower-leg quality=open-fracture']],
  ]);
});
