// "Tell me if this hurts": every yes and no that follows answers it, at each place that is named, until something else is asked. Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('a question that stands', () => {
  checkStatements([
    [
      'let me know if any of this hurts | right forearm | nope | right wrist | yes, a lot',
      [
        'visit right forearm',
        'no pain right forearm',
        'visit right wrist',
        'pain right wrist severity=severe',
      ],
    ],
    ['lower back, tell me if it hurts | no | yeah there', ['visit back', 'no pain back', 'pain back']],
    // Must not: another question, understood or not, takes its place.
    [
      'tell me if it hurts | right shin | is that an old scar | no',
      ['visit right lower-leg', 'note: is that an old scar', 'note: is that an old scar: no'],
    ],
    [
      'left hip, say if it hurts | no | pulse is ninety | yes',
      ['visit left hip', 'no pain left hip', 'pulse rate=90'],
    ],
  ]);
});

describe('the same without a pause before it, as an ear may give it', () => {
  checkStatements([
    ['squeezing the left hip tell me if it hurts | no', ['visit left hip', 'no pain left hip']],
    ["pushing on your collarbones let me know if it's sore", ['visit both clavicle']],
    ["checking the right heel shout if there's any pain | nope", ['visit right heel', 'no pain right heel']],
    ['left elbow squeeze my hand when you feel pain', ['visit left elbow']],
    // Must not: somebody who would tell has told nothing.
    ["she'll shout if her neck is sore", ['note: shout if her neck is sore']],
    ['he says his hip hurts', ['pain hip']],
  ]);
});

describe('places that are no place of the finding', () => {
  checkStatements([
    ['left ribs | crunching under my fingertips', ['visit left ribs', 'crepitus left ribs']],
    [
      'belly soft in three quadrants, tender in the right lower',
      ['no rigidity abdomen', 'tenderness right lower-quadrant', 'note: in three quadrants'],
    ],
  ]);
});

describe('a pressure', () => {
  checkStatements([['bp one thirty two by eighty eight', ['blood-pressure systolic=132 diastolic=88']]]);
});

describe('what a plain talk got wrong', () => {
  checkStatements([
    // It has stopped, and is not there as it was.
    [
      'gash on the left cheek, it has stopped dripping',
      ['laceration left cheek', 'bleeding left cheek quality=controlled'],
    ],
    ['allergic to latex and takes ramipril', ['allergies: latex', 'medications: ramipril']],
  ]);
});
