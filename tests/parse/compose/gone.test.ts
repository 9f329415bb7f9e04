// "Has gone" before what a place is like says what it has become; behind a finding it says that this is over.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('what a place has gone', () => {
  checkStatements([
    ['left elbow has gone swollen', ['swelling left elbow']],
    ['nose has gone crooked', ['deformity nose']],
    ['right leg is gone shorter', ['deformity right leg quality=shortened']],
    ['right thumb has gone numb', ['numbness right thumb']],
  ]);
});

describe('what has gone', () => {
  checkStatements([
    ['left elbow swelling has gone', ['no swelling left elbow']],
    ['tingling in the right hand has all gone now', ['no tingling right hand']],
  ]);
});

describe('what has gone from a place, whether the place has sides or none', () => {
  checkStatements([
    ['rash has gone from the back', ['no rash back']],
    ['hives are gone from her face', ['no rash face']],
    ['swelling has cleared from the neck', ['no swelling neck']],
    ['tingling has gone from the right foot', ['no tingling right foot']],
  ]);
});

describe('what has gone on to a place is there', () => {
  checkStatements([
    ['rash has gone up the left arm', ['rash left arm']],
    ['rash has gone to the right thigh', ['rash right thigh']],
    ['rash has gone all over the back', ['rash back']],
    ['rash has gone right up the left arm', ['rash left arm']],
  ]);
});
