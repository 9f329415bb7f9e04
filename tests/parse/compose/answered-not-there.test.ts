// Answers that name another place, side or part than the question did: it is denied where it was asked after and stated where it is
// said to be. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('an answer that puts it elsewhere', () => {
  checkStatements([
    [
      'is your left elbow sore | it is the shoulder, not the elbow',
      ['visit left elbow', 'no pain left elbow', 'pain left shoulder'],
    ],
    ['is your chin sore | not the chin, the nose', ['visit jaw', 'no pain jaw', 'pain nose']],
    [
      "is the right ankle swollen | it isn't the ankle it's the calf",
      ['visit right ankle', 'no swelling right ankle', 'swelling right lower-leg'],
    ],
    [
      "is your big toe bleeding | no the big toe isn't, it's the little toe that's bleeding",
      ['visit big-toe', 'no bleeding big-toe', 'bleeding little-toe'],
    ],
    [
      "does the right thigh hurt | the thigh doesn't, the knee does",
      ['visit right thigh', 'no pain right thigh', 'pain right knee'],
    ],
    [
      'is your left leg numb | no, only the heel',
      ['visit left leg', 'no numbness left leg', 'numbness left heel'],
    ],
    ["is the knee sore | no, it's my shin", ['visit knee', 'no pain knee', 'pain lower-leg']],
    // On which side, nobody said.
    ["is your left knee sore | no, it's my elbow", ['visit left knee', 'no pain left knee', 'pain elbow']],
  ]);
});

describe('an answer that puts it on the other side', () => {
  checkStatements([
    [
      'does your left ankle hurt | no but the right does',
      ['visit left ankle', 'no pain left ankle', 'pain right ankle'],
    ],
    [
      'is the right cheek swollen | no, but the left one is',
      ['visit right cheek', 'no swelling right cheek', 'swelling left cheek'],
    ],
    [
      'is your left ankle sore | not the left, the right',
      ['visit left ankle', 'no pain left ankle', 'pain right ankle'],
    ],
    [
      "is your left elbow sore | it's not the elbow it's the hand and not the left one the right one",
      ['visit left elbow', 'no pain left elbow', 'pain right hand'],
    ],
    [
      'do both elbows hurt | no, just the left',
      ['visit both elbow', 'no pain right elbow', 'pain left elbow'],
    ],
    [
      'do both ankles hurt | not the left, just the right',
      ['visit both ankle', 'no pain left ankle', 'pain right ankle'],
    ],
    // Nothing of the one is denied.
    ["is your left ankle sore | no, it's both of them", ['visit left ankle', 'pain both ankle']],
    ['which elbow hurts, the right? | yes', ['visit elbow', 'pain right elbow']],
  ]);
});

describe('a hand or a foot that is named by its side alone', () => {
  checkStatements([
    [
      'left hand fine. numbness in the thumb of the right',
      ['no abnormality left hand', 'numbness right thumb'],
    ],
    ['swelling in the toes of the left foot', ['swelling left toes']],
    [
      'is your left foot cold | no but the right is cold',
      ['visit left foot', 'note: is your left foot cold: no', 'no circulation right foot warmth=cold'],
    ],
  ]);
});

describe('an answer after which the next place may only be looked at', () => {
  it.each([
    ['any tingling in the right foot | no, in the toes of the left', 'left', 'toes'],
    ['any numbness in your right hand | no, in the left', 'left', 'hand'],
    ['is the left elbow sore | no, the right one', 'right', 'elbow'],
    ['is your left hip sore | no, further down, the thigh', 'left', 'thigh'],
    ['is your left elbow sore at the back | no, at the front', 'left', 'elbow'],
    // Who asked may have put the question right.
    ['is your left elbow sore | not the left, the right', 'right', 'elbow'],
    ['is your left elbow sore | not the elbow, the wrist', 'left', 'wrist'],
    // The "okay" is to the patient.
    ['is your left elbow sore | no just the wrist okay', 'left', 'wrist'],
  ])('is asked about: %s', (talk, side, site) => {
    const [, , there] = statementsOf(talk);
    expect(there?.statement).toMatchObject({ kind: 'finding', side, site, present: true });
    expect(there?.doubt).toHaveLength(1);
  });
});

describe('what is no such answer', () => {
  checkStatements([
    [
      'is the left elbow sore | No. Now the left wrist.',
      ['visit left elbow', 'no pain left elbow', 'visit left wrist'],
    ],
    [
      'is the left elbow sore | no, okay, left wrist',
      ['visit left elbow', 'no pain left elbow', 'visit left wrist'],
    ],
    [
      'is the left elbow sore | no, and the right',
      ['visit left elbow', 'no pain left elbow', 'visit right elbow'],
    ],
    [
      'is the left elbow sore | no, right elbow?',
      ['visit left elbow', 'no pain left elbow', 'visit right elbow'],
    ],
    // What did hurt may do so no longer.
    [
      'does your left elbow hurt | no but the right did',
      ['visit left elbow', 'no pain left elbow', 'note: no but the right did', 'visit right elbow'],
    ],
    // Without a pause both may be denied.
    ['is your elbow sore | not my elbow my hand', ['visit elbow', 'note: not my elbow my hand']],
  ]);
});

describe('an answer that turns elsewhere in words that are not understood', () => {
  checkStatements([
    [
      'does your left ankle hurt | no but the right does not either',
      [
        'visit left ankle',
        'no pain left ankle',
        'note: no but the right does not either',
        'visit right ankle',
      ],
    ],
    [
      'any pain in the chin | no, just the nose and the cheek',
      ['visit jaw', 'no pain jaw', 'note: no, just the nose and the cheek', 'visit nose', 'visit cheek'],
    ],
    ['pain anywhere | no, just the left ankle', ['note: no, just the left ankle', 'visit left ankle']],
    [
      "is your left elbow sore | it's not the elbow or the wrist",
      [
        'visit left elbow',
        'no pain left elbow',
        "note: it's not the elbow or the wrist",
        'visit left elbow',
        'visit left wrist',
      ],
    ],
    [
      'is it sore on top of the foot | no, underneath',
      ['visit foot', 'no pain foot part=upper', 'note: no, underneath'],
    ],
    [
      'is the left elbow sore | no, just the wrist now',
      ['visit left elbow', 'no pain left elbow', 'note: no, just the wrist', 'visit left wrist'],
    ],
  ]);
});
