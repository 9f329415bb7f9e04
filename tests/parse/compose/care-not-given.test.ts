// Care that was only planned or thought of, or that failed, is none given; what is said of it stays in words. All talk here is
// invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('care that is planned with a verb of its own', () => {
  checkStatements([
    ['gonna whip a bandage on that elbow', ['note: gonna whip a bandage on that elbow']],
    [
      "we're going to rig a splint for his right leg",
      ["note: we're going to rig a splint for his right leg"],
    ],
    ['going to check your left elbow', ['visit left elbow']],
  ]);
});

describe('care that was thought of and dropped', () => {
  checkStatements([
    ['we considered a sling for the left arm', ['note: considered a sling for the left arm']],
    ['thought about putting a collar on her', ['note: thought about putting a collar on her']],
    ['discussed her right knee, it is swollen', ['swelling right knee']],
  ]);
});

describe('care that fails is not given anew, and has no part of the place that follows', () => {
  checkStatements([
    [
      "pressure dressing isn't cutting it, tourniquet's on the left arm",
      ['tourniquet left arm', "note: pressure dressing isn't cutting it"],
    ],
    [
      "direct pressure wasn't enough, tourniquet on the right thigh",
      ['tourniquet right thigh', "note: direct pressure wasn't enough"],
    ],
    ["direct pressure isn't working", ["note: direct pressure isn't working"]],
    ['direct pressure on the left forearm', ['direct-pressure left forearm']],
  ]);
});

describe('food, warmth and rinsing in plain words', () => {
  checkStatements([
    ['gave her some raisins', ['food']],
    ['gave him a cup of tea to drink and half a granola bar to eat', ['fluids', 'food']],
    ['blanket and a spare fleece on him', ['warming']],
    ["both palms grazed | i've rinsed them with clean water", ['abrasion both palm', 'irrigation both palm']],
  ]);
});
