// Care that is only named: denied behind its name, lying ready or not put on yet. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('care with a "no" behind it', () => {
  checkStatements([
    ['splint no, pressure dressing right forearm', ['dressing right forearm', 'note: splint no']],
    ['bandage on the left knee, sling no', ['bandage left knee', 'note: sling no']],
    ['collar nope, pain in the neck', ['pain neck', 'note: collar nope']],
  ]);
});

describe('care that is at hand', () => {
  checkStatements([
    ['got a collar ready but i have not put it on', ['note: got a collar ready but i have not put it on']],
    ['there is a splint in my bag', ['note: there is a splint in my bag']],
    ['we have a collar here but have not used it', ['note: we have a collar here but have not used it']],
    [
      'blanket on his legs and a tourniquet on standby',
      ['warming both leg', 'note: a tourniquet on standby'],
    ],
  ]);
});

describe('care that was given', () => {
  checkStatements([
    ['collar on her neck, no pain', ['no pain neck', 'collar neck']],
    ['splint on right wrist, no numbness', ['no numbness right wrist', 'splint right wrist']],
    ['bandage on the right hand with me holding it', ['bandage right hand', 'note: with me holding it']],
    [
      'there is a splint on the left leg and i have not used it for the right',
      ['splint left leg', 'note: i have not used it for the right'],
    ],
    ['dressing, no, splint on the left wrist', ['splint left wrist', 'note: dressing, no']],
    ['sling no bruising left shoulder', ['no contusion left shoulder', 'note: sling']],
  ]);
});
