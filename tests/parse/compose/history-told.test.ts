// How a history is told in plain talk, a breath a statement; and what sounds like one and is none. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { corrections, read } from '../read.ts';
import { checkStatements } from '../rows.ts';

describe('when and how it began, and what it does', () => {
  checkStatements([
    [
      'kicked off round about an hour ago, crampy, off and on ever since',
      ['onset: kicked off round about an hour ago', 'time: off and on ever since', 'note: crampy'],
    ],
    [
      'the ache began when she was stood at the sink',
      ['onset: the ache began when she was stood at the sink'],
    ],
    ['he was fine until the last pitch', ['onset: he was fine until the last pitch']],
    [
      'a cold drink sets it off, bending eases it',
      ['provocation: bending eases it', 'note: a cold drink sets it off'],
    ],
    [
      'deep breaths make no odds, coughing makes it worse',
      ['provocation: coughing makes it worse', 'note: deep breaths make no odds'],
    ],
    [
      'it runs across to the right shoulder, four out of ten',
      ['radiation: it runs across to the right shoulder', 'pain-score score=4'],
    ],
    ['back pain shoots down the left leg', ['radiation: shoots down the left leg', 'pain back']],
    ['feels like a belt round the ribs', ['quality: feels like a belt round the ribs']],
    ['worse when she laughs, none at rest', ['provocation: worse when she laughs', 'note: none at rest']],
  ]);

  it.each([
    // Of a chest that rises, a wound that reaches on, a sign, care, and the examiner's own hand nothing is told.
    'belly goes up and down evenly',
    'the gash runs down to the elbow',
    'pulse has been getting worse since one',
    'the pump started about five minutes ago',
    'running down the right leg',
    'I felt a pop in the ankle when I moved it',
    'we skidded into the ditch on the way up',
  ])('is none where something else is meant: %s', (talk) => {
    expect(read(talk, 'history')).toEqual([]);
  });
});

describe('what happened, and what was before', () => {
  checkStatements([
    [
      'a slab of snow the size of a door hit him on the knee',
      ['mechanism: a slab of snow the size of a door hit him on the knee'],
    ],
    ['she was not wearing a hard hat', ['mechanism: she was not wearing a hard hat']],
    ['chest clear, no seatbelt mark', ['no abnormality chest', 'no contusion chest']],
    ['not fainted, been sick twice', ['no events: not fainted', 'symptoms: been sick twice']],
    [
      'surgery on the left hip in March, bad knees',
      ['past-history: surgery on the left hip in March', 'past-history: bad knees'],
    ],
    ['never had one of these before', ['no past-history: never had one of these before']],
    ['grandad died of a stroke', ['note: grandad died of a stroke']],
    [
      "she can't have ibuprofen, brings her out in hives",
      ["allergies: she can't have ibuprofen, brings her out in hives"],
    ],
    ["hasn't got her insulin with her", ["medications: hasn't got her insulin with her"]],
    ['avalanche took him over the edge', ['mechanism: avalanche took him over the edge']],
    ['he had a mug of tea half an hour ago', ['last-intake: he had a mug of tea half an hour ago']],
    ["can't remember what they're called", ["note: can't remember what they're called"]],
    ["she's left handed", ["note: she's left handed"]],
  ]);
});

describe('asked and answered', () => {
  checkStatements([
    ['who found her? the postman', ['note: who found her', 'note: the postman']],
    ['has she been sick? once', ['symptoms: has she been sick: once']],
    ['how high was the fall? ten feet or so', ['mechanism: ten feet or so']],
    ['when did it start? around six, out of the blue', ['onset: around six, out of the blue']],
    [
      'did you bang your knee? yeah on the rail but never fainted',
      ['events: did you bang your knee: yeah on the rail', 'no events: never fainted'],
    ],
    ['any history of gout? no', ['no past-history: any history of gout: no']],
    ['any heart problems? my mother', ['note: any heart problems: my mother']],
  ]);
});

describe('put right', () => {
  it.each([
    ['allergic to wasps | sorry, allergic to bees not wasps', 'statement allergies: bees not wasps'],
    ['her name is Runa, correction, Solveig Holm', 'statement name: Solveig Holm'],
    [
      'started an hour ago | make that two hours ago',
      'statement onset: started an hour ago, corrected: two hours ago',
    ],
  ])('takes the place of what was told: %s', (talk, expected) => {
    expect(corrections(talk).map((one) => one.split(' ←')[0])).toEqual([expected]);
  });
});

describe('a loss of consciousness', () => {
  checkStatements([
    [
      'loss of consciousness for half a minute or so',
      ['events: loss of consciousness for half a minute or so'],
    ],
    ['a short loss of consciousness', ['events: a short loss of consciousness']],
    ['no loss of consciousness', ['no events: no loss of consciousness']],
  ]);
});
