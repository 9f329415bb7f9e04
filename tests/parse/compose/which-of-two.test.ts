// A choice of sides enters nothing; the side that answers it does. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a choice that is answered', () => {
  checkStatements([
    ['which elbow hurts the left or the right | the right', ['visit elbow', 'pain right elbow']],
    ['which elbow hurts, left or right | left', ['visit elbow', 'pain left elbow']],
    [
      "which shin is it that's bleeding, my friend, the left or the right? | the left",
      ['visit lower-leg', 'bleeding left lower-leg'],
    ],
    ['is it the left or the right ear that hurts | right', ['visit both ear', 'pain right ear']],
    ['does your left or your right thumb hurt | the left one', ['visit both thumb', 'pain left thumb']],
    [
      "is it the left shoulder or the right one that's sore | the left one, the right is just stiff",
      ['visit both shoulder', 'pain left shoulder', 'limited-motion right shoulder'],
    ],
    [
      "which elbow hurts | it's the right, i landed on it",
      ['visit elbow', 'pain right elbow', 'mechanism: i landed on it'],
    ],
    ['which elbow hurts | my right elbow', ['visit elbow', 'pain right elbow']],
    ['which elbow hurts | both', ['visit elbow', 'pain both elbow']],
    ['is the left or right elbow swollen | neither', ['visit both elbow', 'no swelling both elbow']],
    ['which elbow hurts | neither of them', ['visit elbow', 'no pain both elbow']],
    ['neither of her elbows is swollen', ['no swelling both elbow']],
    [
      'is it your left arm or your left leg that hurts | my leg',
      ['visit left arm', 'visit left leg', 'pain left leg'],
    ],
    ["which elbow hurts | i think it's the left", ['visit elbow', 'pain left elbow']],
  ]);
});

describe('which limb cannot feel or move', () => {
  checkStatements([
    ["which hand can't you feel | the right", ['visit hand', 'no sensation right hand']],
    ["which leg can't you move | the right one", ['visit leg', 'no motion right foot']],
    ["which elbow can't you bend | right", ['visit elbow', 'limited-motion right elbow']],
    ["which hand can't you feel | both", ['visit hand', 'no sensation both hand']],
    ["which hand can't you feel | neither", ['visit hand', 'sensation both hand']],
    ['which foot can you move | the right one', ['visit foot', 'motion right foot']],
    ['which hand has the weak grip | my right hand', ['visit hand', 'motion right hand strength=weak']],
    ['which foot is cold | the right', ['visit foot', 'no circulation right foot warmth=cold']],
    ["both hands, which one can't you move | the right", ['visit both hand', 'no motion right hand']],
    ["which hand can't you feel the right", ['no sensation right hand']],
    ['which shoulder hurts the right', ['pain right shoulder']],
    // What no entry holds is kept beside its question.
    [
      "which ear can't you hear with | the right",
      ['visit ear', "note: which ear can't you hear with: the right"],
    ],
    // Must not: nobody can tell what is so.
    ['which foot is cold | neither', ['visit foot', 'note: which foot is cold: neither']],
    [
      "which hand can't you feel | no, the right",
      ['visit hand', "note: which hand can't you feel: no, the right"],
    ],
    ['which shoulder hurts on the right side', ['visit shoulder']],
  ]);
});

describe('a choice that nobody settles', () => {
  checkStatements([
    ['which elbow hurts, left or right', ['visit elbow']],
    ['does the left or the right elbow hurt', ['visit both elbow']],
    [
      'any pain in your left or right elbow | yes',
      ['visit both elbow', 'note: any pain in your left or right elbow: yes'],
    ],
    [
      'is it the left or right elbow that hurts | no, the right',
      ['visit both elbow', 'note: is it the left or right elbow that hurts: no, the right'],
    ],
    ['the left or the right elbow is swollen', ['note: the left or the right elbow is swollen']],
    ['which elbow hurts | the right one is fine', ['visit elbow', 'no abnormality right elbow']],
  ]);
});

describe('what is no choice', () => {
  checkStatements([
    [
      'the left elbow, which is swollen, and the right is fine',
      ['swelling left elbow', 'no abnormality right elbow'],
    ],
    ['no swelling of the left or right elbow', ['no swelling both elbow']],
    ['pain in the left and right elbow', ['pain both elbow']],
    ['which knee, the left knee is swollen', ['swelling left knee', 'visit knee']],
  ]);
});
