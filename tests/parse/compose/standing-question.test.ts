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
    [
      'say something if anything is sore. left knee. no. left ankle. yes. left foot. no',
      [
        'visit left knee',
        'no pain left knee',
        'visit left ankle',
        'pain left ankle',
        'visit left foot',
        'no pain left foot',
      ],
    ],
    [
      'tell me if it hurts | right wrist no, left wrist yes a little',
      ['visit right wrist', 'no pain right wrist', 'visit left wrist', 'pain left wrist severity=mild'],
    ],
    // One press hurt, and the next one does not take that back.
    [
      'pressing down the back, say yes if it hurts | no | no | yes | no',
      ['visit back', 'no pain back', 'pain back', 'note: no'],
    ],
    // Must not: another question, understood or not, takes its place.
    [
      'lower back, tell me if it hurts | is that an old scar | no',
      ['visit back', 'note: is that an old scar', 'note: is that an old scar: no'],
    ],
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

describe('how a place is, asked and answered in a word', () => {
  checkStatements([
    ["how's the left wrist? fine", ['no abnormality left wrist']],
    ['what about the right ear? good', ['no abnormality right ear']],
    // Must not: what was asked is something else.
    ['does the left wrist hurt? fine', ['visit left wrist', 'note: fine']],
    ['how is your breathing? fine', ['note: how is your breathing', 'note: fine']],
  ]);
});

describe('what was asked about and only told of', () => {
  checkStatements([
    [
      'he shakes his head when I ask about neck pain',
      ['visit head', 'visit neck', 'note: he shakes his head when I ask about neck pain'],
    ],
    ['asked about back pain, he said no', ['visit back', 'note: asked about back pain, he said no']],
    // Must not: what he says himself.
    ['he says no to neck pain', ['no pain neck']],
  ]);
});

describe('no response to something', () => {
  checkStatements([
    ['no response to my questions', ['note: no response to my questions']],
    ['no response', ['responsiveness avpu=U']],
    [
      'pulls away when I pinch the left hand',
      ['visit left hand', 'note: pulls away when I pinch the left hand'],
    ],
    ['pulls away when I touch the left hand', ['tenderness left hand']],
  ]);
});

describe('somebody who will not, and somebody else', () => {
  checkStatements([
    ['left arm, he refuses to move it', ['visit left arm', 'note: he refuses to move it']],
    ['the skier below has a broken arm', ['note: the skier below has a broken arm']],
    // A denial goes to the place that it is said of, and the next finding to its own.
    [
      'belly no swelling no bruising, small cut on the hip',
      ['no swelling abdomen', 'no contusion abdomen', 'laceration hip severity=mild'],
    ],
    ["left arm, he can't move it", ['no motion left hand']],
  ]);
});
