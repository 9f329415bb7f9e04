// Sides and places that checkers' talk showed to be read wrong: of two that were named one, a place that is pressed, an answer's side said
// again. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('one of both', () => {
  checkStatements([
    [
      'both ankles no deformity but bruising on the right',
      ['no deformity both ankle', 'contusion right ankle'],
    ],
    [
      'okay right grip is weak left grip is strong',
      ['motion right hand strength=weak', 'motion left hand strength=strong'],
    ],
    ['rash behind the left ear none behind the right', ['rash left behind-ear', 'no rash right behind-ear']],
    ['swelling on my right his left forearm', ['swelling left forearm']],
  ]);
});

describe('the place that is pressed', () => {
  checkStatements([
    ['grinding when I push on your right collarbone', ['crepitus right clavicle']],
    ['hurt when i press on your left hip | no', ['visit left hip', 'no tenderness left hip']],
    ['tenderness in the cervical spine, at C five', ['tenderness cervical-spine level=C5']],
    ['flail segment left chest with crepitus', ['paradoxical-motion left chest', 'crepitus left chest']],
  ]);
});

describe('the side of an answer', () => {
  checkStatements([
    ['do your ribs hurt | on the right yes | on the right okay', ['visit ribs', 'pain right ribs']],
    [
      'is it your right hip that is sore | no, it is the left',
      ['visit right hip', 'no pain right hip', 'pain left hip'],
    ],
  ]);
});

describe('the place that is spoken of', () => {
  checkStatements([
    [
      'Abdomen: no rigidity, not distended, except in the left upper quadrant where it is tender',
      ['visit abdomen', 'no rigidity abdomen', 'no distension abdomen', 'tenderness left upper-quadrant'],
    ],
    [
      'left ankle | punctures there and swelling up that left calf',
      ['visit left ankle', 'puncture left ankle', 'swelling left lower-leg'],
    ],
    [
      "Right eye's open, no bruising behind either ear",
      ['no contusion both behind-ear', 'visit right eye', "note: Right eye's open"],
    ],
    [
      "Right ribs go in when he breathes in. That's a flail segment.",
      ['paradoxical-motion right ribs', 'paradoxical-motion right chest'],
    ],
    ["I'm just gonna have a look at your tummy okay", ['visit abdomen']],
    [
      'he can reach his ear with that arm no problem',
      ['visit ear', 'visit arm', 'note: he can reach his ear with that arm no problem'],
    ],
  ]);
});

describe('what is hoped, and what is said beside', () => {
  checkStatements([
    ['I just hope he has not broken that wrist', ['note: I just hope he has not broken that wrist']],
    [
      'not swollen, not bruised, just a bit of redness on the left heel',
      ['no swelling left heel', 'no contusion left heel', 'discoloration left heel quality=red'],
    ],
    [
      "There's no swelling of the left wrist, and it's not deformed.",
      ['no swelling left wrist', 'no deformity left wrist'],
    ],
  ]);
});
