// Care of "it": of the place that was spoken of, and not of the next one. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('care of the place spoken of', () => {
  checkStatements([
    [
      'right kneecap was off to the side put it back in splinted it pulse good right foot',
      [
        'deformity right knee quality=dislocation',
        'circulation right foot',
        'reduction right knee',
        'splint right knee',
      ],
    ],
    [
      'right groin bleeding packed it pulse good right foot',
      ['bleeding right groin', 'wound-packing right groin', 'circulation right foot'],
    ],
    ['left forearm gashed | dressed it', ['laceration left forearm', 'dressing left forearm']],
    [
      'left shoulder is out popped it back in sensation good left hand',
      ['deformity left shoulder quality=dislocation', 'sensation left hand', 'reduction left shoulder'],
    ],
  ]);
});

describe('the place that is named behind it', () => {
  checkStatements([
    ['bandaged it, right wrist', ['bandage right wrist']],
    ['packed it left buttock', ['wound-packing left buttock']],
    ['belly soft | collar on', ['no rigidity abdomen', 'collar']],
  ]);
});
