// What follows an answer, a request or an instruction in the same breath and says something whole is read by itself. Invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('behind an answer', () => {
  checkStatements([
    ['any pain in the right ankle? no and a gash on the chin', ['no pain right ankle', 'laceration jaw']],
    [
      'does the left elbow hurt? yes a bit and hips are fine',
      ['pain left elbow severity=mild', 'no abnormality both hip'],
    ],
    ['does the right shoulder hurt? yeah, knees fine', ['pain right shoulder', 'no abnormality both knee']],
    ['is your back sore? yes, and my neck', ['pain back', 'pain neck']],
    ['any dizziness? no, no swelling of the jaw', ['no symptoms: dizziness: no', 'no swelling jaw']],
    [
      'any dizziness? no, windpipe is central',
      ['no symptoms: dizziness: no', 'no tracheal-deviation trachea'],
    ],
    ['any allergies? latex, the right wrist is swollen', ['allergies: latex', 'swelling right wrist']],
    [
      'right hip: nothing, and the left shin is bruised',
      ['visit right hip', 'no abnormality right hip', 'contusion left lower-leg'],
    ],
    [
      'when did you last eat? around noon, resps are sixteen',
      ['last-intake: around noon', 'respirations rate=16'],
    ],
    ["what's your name? Ilse, allergic to latex", ['name: Ilse', 'allergies: latex']],
    ["how old are you? sixty. windpipe's central", ['age: sixty years=60', 'no tracheal-deviation trachea']],
    [
      'do you feel dizzy? no, but does your jaw hurt? no',
      ['no symptoms: do you feel dizzy: no', 'no pain jaw'],
    ],
    [
      'is your right foot numb? slightly, no pain in the groin',
      ['numbness right foot severity=mild', 'no pain groin'],
    ],
    ['does your back hurt? yes, breastbone tender', ['pain back', 'tenderness sternum']],
    // That it hurts says again what was asked.
    ['does your hip hurt? yes, the left hip is sore', ['pain left hip']],
  ]);
});

describe('before a question', () => {
  checkStatements([
    ['sling on the left arm, any dizziness? no', ['sling left arm', 'no symptoms: dizziness: no']],
    ['blood from the mouth, but any nausea? no', ['bleeding mouth', 'no symptoms: nausea: no']],
    ['squeeze my hand and any pain in the right hip? no', ['no pain right hip']],
  ]);
});

describe('behind a request or an instruction', () => {
  checkStatements([
    [
      'can you hand me the bandage, the chin is not swollen',
      ['no swelling jaw', 'note: can you hand me the bandage'],
    ],
    ['keep still and right wrist deformed', ['deformity right wrist']],
    ["grip's weak on both sides and move your toes for me", ['motion both hand strength=weak']],
    ["looking at the left eye and belly's rigid", ['visit left eye', 'rigidity abdomen']],
    [
      "not sure about the right hip, and the jaw isn't tender",
      ['no tenderness jaw', 'note: not sure about the right hip'],
    ],
    [
      'nose bruised, swelling has gone down in the left ankle',
      ['contusion nose', 'swelling left ankle', 'note: has gone down in'],
    ],
  ]);
});

describe('a list of denials under a heading', () => {
  checkStatements([
    [
      'neck: no steps, no stiffness, a small gash over the right ear',
      ['visit neck', 'no deformity neck', 'no limited-motion neck', 'laceration right ear severity=mild'],
    ],
    // Without a place in mind the list has that of its end.
    [
      'no deformity, large graze on the left shin',
      ['no deformity left lower-leg', 'abrasion left lower-leg'],
    ],
    ['jaw is fine when she bites', ['no abnormality jaw']],
    // Of no place that was named.
    [
      'scrape on the forehead, no bruises anywhere else',
      ['abrasion forehead', 'note: no bruises anywhere else'],
    ],
  ]);
});

describe('a none of another part', () => {
  checkStatements([
    [
      'graze on the front of the left shin, none on the back',
      ['abrasion left lower-leg part=anterior', 'note: none on the back'],
    ],
    [
      'bruise on the inside of the right elbow none on the outside',
      ['contusion right elbow part=medial', 'note: none on the outside'],
    ],
    [
      'hands: right grip weak, left grip strong',
      ['visit both hand', 'motion right hand strength=weak', 'motion left hand strength=strong'],
    ],
  ]);
});

describe('behind history', () => {
  checkStatements([
    ['takes bisoprolol and cut on the chin', ['medications: bisoprolol', 'laceration jaw']],
    ["his shins don't hurt, takes bisoprolol", ['no pain both lower-leg', 'medications: bisoprolol']],
    ['no allergies and last ate at noon', ['no allergies: no allergies', 'last-intake: noon']],
  ]);
});
