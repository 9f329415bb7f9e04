// Things and hands that are none of the patient's, what is denied beside what is there, and answers in the breath of their question.
// All talk here is invented.

import { describe } from 'vitest';
import { checkCorrections, checkStatements } from '../rows.ts';

describe('what is no part and no state of the patient', () => {
  checkStatements([
    ['the bruise is as wide as my fist', ['note: the bruise is as wide as my fist']],
    [
      'my thumbs leave a dent in both shins',
      ['visit both lower-leg', 'note: my thumbs leave a dent in both shins'],
    ],
    ['there is ice on the path', ['note: there is ice on the path']],
    ['there is a rip in his right sleeve', ['note: there is a rip in his right sleeve']],
    ['monitor reads v tach', ['note: monitor reads v tach']],
    ['he walks as if he was drunk', ['note: he walks as if he was drunk']],
    ['it is meant to drop to ten degrees tonight', ['note: it is meant to drop to ten degrees tonight']],
    // Must not: the same words of the patient.
    ['ice on the left ankle', ['cooling left ankle']],
    ['cut in the left palm', ['laceration left palm']],
    ['hands are cold', ['no circulation both hand warmth=cold']],
  ]);
});

describe('a place that is told from another', () => {
  checkStatements([
    ['nose is deviated to the right', ['deformity right nose']],
    ['trachea deviated to the left', ['tracheal-deviation left trachea']],
    [
      "it's the left knee not the right knee that's swollen",
      ['swelling left knee', "note: not the right knee that's"],
    ],
    [
      'the left index and middle fingers are numb',
      ['numbness left index-finger', 'numbness left middle-finger'],
    ],
    [
      'tender l two to l four',
      [
        'tenderness lumbar-spine level=L2',
        'tenderness lumbar-spine level=L3',
        'tenderness lumbar-spine level=L4',
      ],
    ],
    [
      'swelling from the left hip right down to the knee',
      ['swelling left hip', 'swelling left thigh', 'swelling left knee'],
    ],
  ]);
});

describe('the one beside the other', () => {
  checkStatements([
    ['left elbow, right one is fine', ['no abnormality right elbow']],
    [
      "graze over the right brow left one's fine",
      ['abrasion right forehead', 'no abnormality left forehead'],
    ],
    [
      'pulse in the foot is good on the left and weak on the right',
      ['circulation left foot', 'circulation right foot quality=weak'],
    ],
    ['swelling on the left ankle on the outside', ['swelling left ankle part=lateral']],
  ]);
});

describe('a sign that is no reading of now', () => {
  checkStatements([
    ['her usual pressure is one sixty over ninety', ['note: her usual pressure is one sixty over ninety']],
    ['his sat is usually ninety', ['note: his sat is usually ninety']],
    ['it is twelve degrees outside', ['note: it is twelve degrees outside']],
    // Must not.
    ['normally fit, pulse eighty', ['pulse rate=80', 'note: normally fit']],
  ]);
});

describe('what is denied beside what is there', () => {
  checkStatements([
    ['no swelling around the cut on the chin', ['no swelling jaw', 'laceration jaw']],
    [
      'no pus in the blister on the left heel',
      ['abnormality left heel quality=blister', 'note: no pus in the'],
    ],
    ['left hip pain denied right hip sore', ['no pain left hip', 'pain right hip']],
    ["he can't stop vomiting", ["symptoms: he can't stop vomiting"]],
    ['pelvis springs fine', ['no instability pelvis']],
    ['hip pain denied', ['no pain hip']],
    ['dizziness denied, no nausea', ['no symptoms: dizziness', 'no symptoms: no nausea']],
    ['chills, none', ['no symptoms: chills']],
    ['no swollen ankles', ['no swelling both ankle']],
    ['no loss of feeling over the left thigh', ['no numbness left thigh']],
    // Must not.
    ['no sign of the rash on the chest', ['no rash chest']],
    ['no deformity, tender neck', ['no deformity neck', 'tenderness neck']],
    ['no tender left knee', ['tenderness left knee']],
  ]);
});

describe('an answer in the breath of its question', () => {
  checkStatements([
    ['any medicines you take every day just a heart tablet', ['medications: a heart tablet']],
    ['is it spreading anywhere up into my jaw', ['radiation: up into my jaw']],
    ['can you push against my hands weak push on the left', ['motion left foot strength=weak']],
    ['how long has it been hurting since yesterday', ['onset: since yesterday']],
    ["what's her pulse one oh two", ['pulse rate=102']],
    ['how is his breathing deep and noisy', ['respirations quality=deep+noisy']],
    ['how bad is it about a seven', ['pain-score score=7']],
    ['where is the pain my right hip', ['pain right hip']],
    [
      'any numbness no any tingling a little in the right foot',
      ['no symptoms: any numbness: no', 'tingling right foot severity=mild'],
    ],
    ['can you swallow okay not really it hurts', ['note: not really it hurts']],
    // Must not.
    ['where does it hurt in your neck', ['visit neck']],
    ['are you allergic to anything just tell me', []],
    ['does it go anywhere down your leg', []],
  ]);
});

describe('a figure in the place of the last', () => {
  checkCorrections([
    [
      'temp thirty six two no thirty eight two',
      ['statement temperature celsius=38.2 ← kind=vital vital=temperature'],
    ],
    ['pulse ninety scratch that seventy', ['number value=70 ← last']],
    ['cap refill two seconds sorry four seconds on the right hand', ['number value=4 ← last']],
    ['sats ninety one no ninety four', ['number value=94 ← last']],
    ['pulse ninety no four liters of oxygen', []],
  ]);
});
