// Care in the words that responders use, and words of care that give none. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('care that was given', () => {
  checkStatements([
    ['left buttock, gauze stuffed into the hole', ['wound-packing left buttock']],
    ['packing gauze into the wound on the right calf', ['wound-packing right lower-leg']],
    ['dressing on the left shin. bandage over that', ['dressing left lower-leg', 'bandage left lower-leg']],
    ["she's taped down onto the long board", ['spine-protection']],
    [
      'chin lift airway clear then tipped him into the recovery position',
      ['airway-opened', 'recovery-position'],
    ],
    ['let them have a few sips of water and a couple of biscuits', ['fluids', 'food']],
    ['gave her half a flapjack', ['food']],
  ]);
});

describe('care that was not', () => {
  checkStatements([
    ['right forearm deformed need a splint', ['deformity right forearm', 'note: need a splint']],
    ['she needs some water right elbow sore', ['pain right elbow', 'note: she needs some water']],
    ['right heel cut needs another dressing', ['laceration right heel', 'note: needs another dressing']],
    ['left knee sore and a sandwich in my pocket', ['pain left knee', 'note: and a sandwich in my pocket']],
    ["there's gauze packed in the lid of the bag", ["note: there's gauze packed in the lid of the bag"]],
    ['the airway is open', ['note: the airway is open']],
  ]);
});

describe('the windpipe, and what is deviated besides', () => {
  checkStatements([
    ['windpipe pushed across', ['tracheal-deviation trachea']],
    ["trachea's shoved over it's deviated to the right", ['tracheal-deviation right trachea']],
    ['right hand deviated to the left', ['visit right hand', 'note: right hand deviated to the left']],
    ['left wrist no deviation', ['visit left wrist', 'note: left wrist no deviation']],
    ['trachea no deviation', ['no tracheal-deviation trachea']],
  ]);
});

describe('what stung', () => {
  checkStatements([
    ['left ankle | a wasp stung her there', ['visit left ankle', 'sting left ankle']],
    ['right hand stung by a jellyfish', ['sting right hand']],
    [
      "what's happened to your left hand | a hornet stung me",
      ['visit left hand', 'events: a hornet stung me', 'sting left hand'],
    ],
    ['what happened | a hornet stung my brother', ['note: a hornet stung my brother']],
    ['left eye | it really stings', ['visit left eye', 'pain left eye quality=stinging']],
    ['left shin | it burns a bit', ['visit left lower-leg', 'pain left lower-leg quality=burning']],
    ['burns to the left shin', ['burn left lower-leg']],
    [
      'left shin | now it is all red and swollen',
      ['visit left lower-leg', 'discoloration left lower-leg quality=red', 'swelling left lower-leg'],
    ],
    ['left shin | the jacket is all red', ['visit left lower-leg', 'note: the jacket is all red']],
    ['a wasp nest by the door', ['note: a wasp nest by the door']],
  ]);
});
