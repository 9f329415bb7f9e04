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
