// Words of denial that do not deny, and denials in other words: "won't stop bleeding", "not too bad", "nothing guarding". Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('nothing, with a finding and no more', () => {
  checkStatements([
    [
      'belly now. it is soft, nothing distended.',
      ['visit abdomen', 'no rigidity abdomen', 'no distension abdomen'],
    ],
    ['left shin, nothing bleeding', ['no bleeding left lower-leg']],
    // Must not: here the "nothing" is all that is said of the first place.
    ['left knee nothing swelling on the ankle', ['no abnormality left knee', 'swelling left ankle']],
  ]);
});

describe('bleeding that stops and that does not', () => {
  checkStatements([
    ['the scalp wound has stopped bleeding', ['laceration skull', 'bleeding skull quality=controlled']],
    [
      "cut on the right hand | it won't stop bleeding",
      ['laceration right hand', 'bleeding right hand quality=active'],
    ],
    [
      "left thigh | we can't control the bleeding",
      ['visit left thigh', 'bleeding left thigh quality=active'],
    ],
    ['left thigh | not bleeding any more', ['visit left thigh', 'no bleeding left thigh']],
  ]);
});

describe('a no that is none', () => {
  checkStatements([
    [
      "right wrist, is that sore | it's not tender, not swollen",
      ['visit right wrist', 'no tenderness right wrist', 'no swelling right wrist'],
    ],
    [
      "feel your calf, tell me if it's sore. no. no. yes there.",
      ['visit lower-leg', 'note: no. no. yes there'],
    ],
    ["does the right knee hurt | it's not too bad", ['visit right knee', 'pain right knee severity=mild']],
  ]);
});

describe('a no with nothing that it answers', () => {
  checkStatements([
    ['knee — no. shin — no.', ['visit knee', 'visit lower-leg', 'note: knee — no', 'note: shin — no']],
    ['did you lock your car? no', ['note: did you lock your car: no']],
  ]);
});

describe('a denial before what is there somewhere else', () => {
  checkStatements([
    [
      'no deformity of the spine, no swelling, sore at about t nine',
      ['no deformity spine', 'no swelling spine', 'pain thoracic-spine level=T9'],
    ],
  ]);
});

describe('a pulse of the limb just named', () => {
  checkStatements([
    ['right hand: pulse present', ['visit right hand', 'circulation right hand']],
    ['right foot, pulse is weak', ['circulation right foot quality=weak']],
    ['left foot, pulse there, sensation there', ['circulation left foot', 'sensation left foot']],
    [
      'feet: right cold. left warm with a good pulse',
      [
        'visit both foot',
        'no circulation right foot warmth=cold',
        'circulation left foot warmth=warm',
        'circulation left foot',
      ],
    ],
    // Must not: with its rate it is a vital sign, and with no limb before it too.
    ['left hand. pulse is ninety', ['visit left hand', 'pulse rate=90']],
    ['pulse is weak', ['pulse quality=weak']],
  ]);
});

describe('a thing that is no place of the body', () => {
  checkStatements([
    [
      'right shin tender | no blood on his jacket',
      ['tenderness right lower-leg', 'note: no blood on his jacket'],
    ],
    // Must not: what does not run is on the body, whatever its place was called.
    [
      'right shin | bruise on the bony ridge',
      ['visit right lower-leg', 'contusion right lower-leg', 'note: on the bony ridge'],
    ],
  ]);
});

describe('the back, and the back of a place', () => {
  checkStatements([
    [
      "left wrist | there's a graze on the back of it",
      ['visit left wrist', 'abrasion left wrist part=posterior'],
    ],
    [
      'right arm fine | back no swelling no cuts',
      ['no abnormality right arm', 'no swelling back', 'no laceration back'],
    ],
  ]);
});

describe('a part of a place that was asked after', () => {
  checkStatements([
    ['left knee | does it hurt on the inside | no', ['visit left knee', 'no pain left knee part=medial']],
  ]);
});

describe('what was there and has gone', () => {
  checkStatements([
    [
      'numb right toes | the numbness in the right toes has gone',
      ['numbness right toes', 'no numbness right toes'],
    ],
  ]);
});

describe('an answer to what the patient was asked to do', () => {
  checkStatements([
    // Must not: it answers nothing that was asked before it.
    [
      'any pain in your left knee | no | can you lift your right leg | yeah',
      ['visit left knee', 'no pain left knee', 'note: can you lift your right leg: yeah'],
    ],
    [
      'any pain in the jaw | no | can you bite down | yeah',
      ['visit jaw', 'no pain jaw', 'note: can you bite down: yeah'],
    ],
    [
      "he can feel the right thumb but can't lift it",
      ['limited-motion right thumb', 'sensation right hand digit=thumb'],
    ],
    ['he can turn it a little', ['note: he can turn it a little']],
  ]);
});

describe('a bare no after a place', () => {
  checkStatements([
    ['feeling along the collarbone | no', ['visit clavicle', 'note: feeling along the collarbone: no']],
    ['feeling along the collarbone | okay', ['visit clavicle']],
  ]);
});

describe('a place called fine behind its name', () => {
  checkStatements([
    [
      'right elbow: fine. right forearm: okay',
      [
        'visit right elbow',
        'no abnormality right elbow',
        'visit right forearm',
        'no abnormality right forearm',
      ],
    ],
    ['chest nil. belly nil.', ['no abnormality chest', 'no abnormality abdomen']],
    // Must not: after a full stop an "okay" may go on to something else, and "nil" may deny what follows it.
    ['right elbow. okay. now the wrist', ['visit right elbow', 'visit right wrist']],
    ['nil tenderness of the wrist', ['no tenderness wrist']],
    ['right ankle? fine', ['visit right ankle', 'note: right ankle? fine']],
  ]);
});

describe('the rest, which is no place in mind', () => {
  checkStatements([
    [
      'tender right lower quadrant | no pain anywhere else',
      ['tenderness right lower-quadrant', 'note: no pain anywhere else'],
    ],
    [
      'spine tender at t eleven | nothing else',
      ['tenderness thoracic-spine level=T11', 'visit spine', 'note: nothing else'],
    ],
    [
      'sternum solid | both sides of the chest move the same',
      ['no instability sternum', 'visit both chest', 'note: both sides of the chest move the same'],
    ],
  ]);
});

describe('answers that turn at their end', () => {
  checkStatements([
    [
      'any pain in your belly | no here no here yes',
      ['visit abdomen', 'note: any pain in your belly: no here no here yes'],
    ],
  ]);
});

describe('words that name no place and no medication', () => {
  checkStatements([
    [
      'pelvis is stable front to back | any pain there? a little',
      ['no instability pelvis', 'pain pelvis severity=mild'],
    ],
    ['he says it hurts on the left when he takes a deep breath', ['pain left chest']],
    ['hands are like ice', ['no circulation both hand warmth=cold']],
    [
      'thighs left okay right theres a bruise on the front',
      ['no abnormality left thigh', 'contusion right thigh part=anterior'],
    ],
  ]);
});

describe('what is only queried', () => {
  checkStatements([
    ['query left ankle fracture', ['note: query left ankle fracture']],
    // Must not: what is looked for and found stays found.
    ['left ankle fracture', ['abnormality left ankle quality=fracture']],
  ]);
});

describe('a list that begins with a word for anything at all', () => {
  checkStatements([
    ['no concerns or bruising of the left elbow', ['no abnormality left elbow', 'no contusion left elbow']],
    [
      'nothing wrong or deformed at the right wrist',
      ['no abnormality right wrist', 'no deformity right wrist'],
    ],
    [
      'left knee, no problems, bruising or pain',
      ['no abnormality left knee', 'no contusion left knee', 'no pain left knee'],
    ],
    // Must not: without an "or" the list may have ended.
    ['left knee no problems, bruise on the shin', ['no abnormality left knee', 'contusion left lower-leg']],
  ]);
});

describe('a call that names nobody', () => {
  checkStatements([
    ['ambulance called eleven forty', ['note: ambulance called eleven forty']],
    ['she is called Runa Falk', ['name: Runa Falk']],
  ]);
});

describe('a "not" with a verb of its own', () => {
  checkStatements([
    [
      'the probe will not read, fingers cold',
      ['no circulation hand warmth=cold', 'note: the probe will not read'],
    ],
    [
      'he does not want that touched, left knee swollen',
      ['swelling left knee', 'note: he does not want that touched'],
    ],
    // Must not: what the words lead to is still to come.
    ['i do not see any, bruising of the left hip', ['no contusion left hip']],
  ]);
});

describe('a list of adjectives after a "not"', () => {
  checkStatements([
    [
      'right elbow is not bruised, swollen or sore',
      ['no contusion right elbow', 'no swelling right elbow', 'no pain right elbow'],
    ],
    // Must not: without an "or" it begins something stated.
    ['right elbow not bruised, sore', ['no contusion right elbow', 'pain right elbow']],
  ]);
});

describe('a thing that is broken', () => {
  checkStatements([
    ['right wrist sore | sunglasses bent', ['pain right wrist', 'note: sunglasses bent']],
    // Must not: a word for how is no thing.
    [
      'right wrist sore | clearly broken',
      ['pain right wrist', 'abnormality right wrist quality=fracture', 'note: clearly'],
    ],
  ]);
});

describe('a row of noes and then something', () => {
  checkStatements([
    ['ribs, no, no, no, quite tender there', ['tenderness ribs']],
    // Must not: a noun straight after them is denied.
    ['right hip | no no no swelling', ['visit right hip', 'no swelling right hip']],
  ]);
});

describe('what is normal and no place in mind', () => {
  checkStatements([
    ['left arm | skin normal', ['visit left arm', 'note: skin normal']],
    [
      'bp one ten over seventy, right arm, seated',
      ['blood-pressure systolic=110 diastolic=70', 'note: seated'],
    ],
    // Must not: what is said of the arm makes it a place looked at.
    [
      'bp one ten over seventy, right arm bruised',
      ['blood-pressure systolic=110 diastolic=70', 'contusion right arm'],
    ],
  ]);
});

describe('a side between the no and what it denies', () => {
  checkStatements([
    ['neck clear, no midline pain', ['no abnormality neck', 'no pain midline neck']],
    ['no right sided swelling of the abdomen', ['no swelling right abdomen']],
    ['spine, no midline bony tenderness', ['no tenderness midline spine']],
    // Must not: a side that is taken back denies nothing of the other.
    ['not the left, the right knee is swollen', ['swelling right knee', 'note: not the left']],
  ]);
});

describe('what is measured or counted after a denial, which is there', () => {
  checkStatements([
    [
      'right calf | no bruising, graze five cm',
      ['visit right lower-leg', 'no contusion right lower-leg', 'abrasion right lower-leg size=5+cm'],
    ],
    [
      'no crepitus four centimetre cut on the left hip',
      ['no crepitus left hip', 'laceration left hip size=4+cm'],
    ],
    [
      'no swelling, two blisters on the left heel',
      ['no swelling left heel', 'abnormality left heel count=2 quality=blister'],
    ],
    [
      'denies pain, bruise six centimetres across the right thigh',
      ['no pain right thigh', 'contusion right thigh size=6+cm'],
    ],
    // Must not: a list that goes on with "or", and a size that is the first finding's.
    ['no bruising or laceration of the left hip', ['no contusion left hip', 'no laceration left hip']],
    [
      'bruise six centimetres on the left hip, no laceration',
      ['contusion left hip size=6+cm', 'no laceration left hip'],
    ],
  ]);
});
