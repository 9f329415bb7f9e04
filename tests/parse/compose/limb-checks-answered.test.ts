// Limb checks told by an answer, by "they" or by "the left ones", and of the other side. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('the other side, a breath after an answer', () => {
  checkStatements([
    [
      'do you feel me touching your right palm | yeah i can feel it | and on the left | nope',
      ['visit right palm', 'sensation right hand', 'visit left hand', 'no sensation left hand'],
    ],
    [
      'does your left hip hurt | no | and on the right | yes',
      ['visit left hip', 'no pain left hip', 'visit right hip', 'pain right hip'],
    ],
    [
      'does your left hip hurt | no | and the right one',
      ['visit left hip', 'no pain left hip', 'visit right hip'],
    ],
  ]);
});

describe('what moves, told of what was named', () => {
  checkStatements([
    ["wiggle your toes on the right foot for us yeah they're moving", ['motion right foot']],
    ['wriggle your fingers on the left hand for us | yep they move', ['motion left hand']],
    [
      "wiggle your toes, both feet | the left ones are moving well and the right ones aren't moving",
      ['visit both toes', 'visit both foot', 'motion left foot', 'no motion right foot'],
    ],
    ['toes are moving on the right', ['motion right foot']],
    ['the fingers are moving on the left hand', ['motion left hand', 'visit left hand']],
    ['right hand moves well', ['motion right hand']],
    ['left foot moves fine', ['motion left foot']],
  ]);
});

describe('words that only look so', () => {
  checkStatements([
    ['wriggle your toes on the left foot for us', []],
    ['left elbow moves fine', ['no limited-motion left elbow']],
    ['pelvis moving on left leg', ['visit pelvis', 'visit left leg']],
    ["left hand doesn't move well", ['no motion left hand']],
    ["they're moving", []],
  ]);
});

describe('a digit that is felt', () => {
  checkStatements([
    [
      "on your right hand, shut your eyes, can you feel which finger i'm holding | yes, the thumb",
      ['visit right hand', 'visit right fingers', 'sensation right hand'],
    ],
  ]);
});
