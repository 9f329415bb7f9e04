// "Nothing" and "none" that lead to a place of their own, behind what was found at another. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a "nothing" that leads to its place, without a pause', () => {
  checkStatements([
    [
      'scald on the left forearm and some redness nothing on the right forearm',
      ['burn left forearm', 'discoloration left forearm quality=red', 'no abnormality right forearm'],
    ],
    [
      'right shin grazed and bruised nothing on the left shin',
      ['abrasion right lower-leg', 'contusion right lower-leg', 'no abnormality left lower-leg'],
    ],
    [
      'swelling over the right elbow a scratch too nothing on the hand',
      ['swelling right elbow', 'abrasion right elbow', 'no abnormality right hand'],
    ],
    ['ribs on the left tender nothing over the belly', ['tenderness left ribs', 'no abnormality abdomen']],
    [
      'left thigh sore | redness nothing on the right thigh',
      ['pain left thigh', 'discoloration left thigh quality=red', 'no abnormality right thigh'],
    ],
  ]);
});

describe('a "none" at the same place of the other side', () => {
  checkStatements([
    [
      'swelling and bruising of the left ankle none on the right ankle',
      ['swelling left ankle', 'contusion left ankle', 'no swelling right ankle', 'no contusion right ankle'],
    ],
    [
      'blister on the right heel, none on the left heel',
      ['abnormality right heel quality=blister', 'no abnormality left heel quality=blister'],
    ],
    ['right ear bleeding none from the left ear', ['bleeding right ear', 'no bleeding left ear']],
  ]);
});

describe('what only looks so', () => {
  checkStatements([
    ['she feels nothing on the right hand', ['no sensation right hand']],
    ['nothing on the right hip is sore', ['no pain right hip']],
    [
      'no cuts nothing on the right shin',
      ['no laceration right lower-leg', 'no abnormality right lower-leg'],
    ],
    [
      'swelling of the left knee none on the right elbow',
      ['swelling left knee', 'visit right elbow', 'note: none on the right elbow'],
    ],
    ['graze on the right hip and nothing on the left', ['abrasion right hip', 'no abrasion left hip']],
  ]);
});
