// Where a denial ends, what only looks like one, and what somebody can do. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('a little of something, or something large, after a denial', () => {
  checkStatements([
    [
      'flank: no swelling, mild soreness on the right side',
      ['visit flank', 'no swelling right flank', 'pain right flank severity=mild'],
    ],
    [
      'no weakness, numb a bit over the left thumb',
      ['no weakness left thumb', 'numbness left thumb severity=mild'],
    ],
    ['back not tender, tiny scrape', ['no tenderness back', 'abrasion back severity=mild']],
    ['no deformity, large graze on the left hip', ['no deformity left hip', 'abrasion left hip']],
    [
      'no numbness, bit of weakness in the right hand',
      ['no numbness right hand', 'weakness right hand severity=mild'],
    ],
    // Must not: a list that goes on with "or", and what is called small in the denial itself.
    [
      'no pain, bruising or slight swelling of the calf',
      ['no pain lower-leg', 'no contusion lower-leg', 'no swelling lower-leg severity=mild'],
    ],
    ['no mild swelling of the calf', ['no swelling lower-leg severity=mild']],
  ]);

  it.each([
    ['no cuts, bruise on the left hip', 2],
    ['no bruising, bad pain in the left hip', 2],
    // Must not: a list of three, and one that is closed by its "of".
    ['no cuts, burns, bruises on the left hip', 0],
    ['no cuts, bruising of the left hip', 0],
  ])('asks where both can be meant: %s', (talk, asked) => {
    const doubts = statementsOf(talk).flatMap((one, i) => (one.doubt.length > 0 ? [i + 1] : []));
    expect(doubts).toEqual(asked === 0 ? [] : [asked]);
  });
});

describe('what hurts on a condition', () => {
  checkStatements([
    ['elbow: no tenderness until I squeeze', ['visit elbow', 'note: no tenderness until I squeeze']],
    ['no pain in the left hip unless she sits up', ['note: no pain in the left hip unless she sits up']],
    ['left calf, no cramp at rest', ['note: left calf, no cramp at rest']],
    ['left shin sore, but only when he walks', ['pain left lower-leg']],
  ]);

  it('is there where a movement cannot be made without it', () => {
    expect(read("can't lift the right arm without pain")).toContain('pain right arm');
  });
});

describe('nothing, and where', () => {
  checkStatements([
    ['shoulders, nothing on the left', ['no abnormality left shoulder']],
    ['thighs, nothing on the left. right is sore', ['no abnormality left thigh', 'pain right thigh']],
    // Must not: no answer from a limb is no finding of a sound one.
    ['feet, nothing from the left', ['visit both foot', 'note: nothing from the left']],
    ['nothing from the nose', ['no abnormality nose']],
  ]);
});

describe('a pelvis that moves, and one that does not', () => {
  checkStatements([
    ['the pelvis gives a little', ['instability pelvis']],
    ['pelvis moves when I squeeze', ['instability pelvis']],
    ['pelvis does not move, no pain', ['no instability pelvis', 'no pain pelvis']],
    ["pelvis won't budge when I rock it", ['visit pelvis', "note: pelvis won't budge when I rock it"]],
    // Must not: a hip is there to be moved.
    ['left hip does not move', ['limited-motion left hip']],
    ['left hip moves fine', ['no limited-motion left hip']],
  ]);
});

describe('what is said of a place in small words, beside something else', () => {
  checkStatements([
    [
      "right shoulder's out, skin intact",
      ['deformity right shoulder quality=dislocation', 'note: skin intact'],
    ],
  ]);
});

describe('what somebody does who was asked to', () => {
  checkStatements([
    ['can push down with the right foot', ['motion right foot']],
    ['pulls up with both feet', ['motion both foot']],
    ['he grips my hand with the left', ['motion left hand']],
    ["can't make a fist with the right hand", ['no motion right hand']],
    ['no squeeze in the right hand', ['no motion right hand']],
    [
      'can squeeze with the right hand, not with the left because of pain',
      ['motion right hand', 'no motion left hand', 'note: because of pain'],
    ],
    ['he can raise the left arm', ['no limited-motion left arm']],
    // Must not: what is done a little of, what is asked for, and what the examiner does.
    ['he can raise the left arm a little', ['visit left arm', 'note: he can raise the left arm a little']],
    ['can you raise the left arm', []],
    ['pushing down on the belly, no pain', ['no pain abdomen']],
    ['hands | can he feel this? yes, all of them', ['visit both hand', 'sensation both hand']],
  ]);
});

describe('a limb that warms by itself', () => {
  checkStatements([
    ['left foot is warming up', ['visit left foot', 'note: left foot is warming up']],
    // Must not: somebody warms it.
    ['warming up his feet', ['warming both foot']],
  ]);
});

describe('none of', () => {
  checkStatements([
    ['none of the toes are swollen', ['no swelling toes']],
    ['none of his ribs hurt', ['no pain ribs']],
    ['no part of the left shin is tender', ['no tenderness left lower-leg']],
    ['none of the toes hurt, heel sore', ['no pain toes', 'pain heel']],
    ['nothing on the right shoulder is sore', ['no pain right shoulder']],
    // Must not: what only bounds a place is no place.
    ['everything below the waist is fine', ['visit abdomen', 'note: everything below the waist is fine']],
  ]);

  it('says of a limb that is not cold no more than that', () => {
    expect(read("left foot isn't cold")).toEqual(['circulation left foot']);
  });
});
