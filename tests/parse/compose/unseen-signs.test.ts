// Vital signs, history, care and times as no earlier row said them. All talk is invented.

import { describe, expect, it } from 'vitest';
import { BEGINS, statementsOf } from '../read.ts';
import { checkStatements } from '../rows.ts';

const minutesBefore = (talk: string): readonly (number | null)[] =>
  statementsOf(talk).map(({ at }) => (at === undefined ? null : Math.round((BEGINS - at) / 60_000)));

const doubts = (talk: string): readonly string[] => statementsOf(talk).flatMap(({ doubt }) => doubt);

describe('oxygen that somebody is put on', () => {
  checkStatements([
    ['stuck him on six litres', ['oxygen text=stuck him on six litres']],
    [
      'sats eighty eight on air, popped her on fifteen litres',
      ['oxygen-saturation percent=88 onOxygen=false', 'oxygen text=popped her on fifteen litres'],
    ],
    ['sats ninety five on two', ['oxygen-saturation percent=95 onOxygen=true']],
    // Must not: what is counted is no litres.
    ['sats ninety five on two occasions', ['note: sats ninety five on two occasions']],
  ]);
});

describe('a set of signs', () => {
  checkStatements([
    [
      'third set, one ten, twenty four, one hundred over sixty two',
      ['pulse rate=110', 'respirations rate=24', 'blood-pressure systolic=100 diastolic=62'],
    ],
    // Must not: two numbers that may both be a pulse.
    [
      'third set, ninety, ninety four, one hundred over sixty two',
      ['blood-pressure systolic=100 diastolic=62', 'note: ninety, ninety four'],
    ],
    ['his obs are rubbish', ['note: his obs are rubbish']],
  ]);
  it.each([
    ['repeat observations at thirteen fifty two: pulse eighty', [10]],
    ['third set of obs thirteen fifty two: pulse eighty, resps twelve', [10, 10]],
    ['latest vitals thirteen fifty two pulse eighty', [10]],
  ])('has the time that is named with it: %s', (talk, expected) => {
    expect(minutesBefore(talk)).toEqual(expected);
  });
  it('asks whether the signs that nobody named are those', () => {
    expect(doubts('second set: one twelve, twenty six, ninety four over sixty')).toHaveLength(2);
  });
});

describe('a pressure of two numbers in a breath', () => {
  checkStatements([
    ['bp one eighteen seventy four', ['blood-pressure systolic=118 diastolic=74']],
    // Must not: one number, or two that a pause parts.
    ['pressure one hundred thirty', ['note: pressure one hundred thirty']],
    ['bp one ten, ninety', ['note: bp one ten, ninety']],
  ]);
});

describe('each side has its own number', () => {
  checkStatements([
    [
      'both hands | cap refill four seconds on the right, two on the left',
      [
        'visit both hand',
        'no circulation right hand capRefillSeconds=4',
        'circulation left hand capRefillSeconds=2',
      ],
    ],
    [
      'grip four out of five on the right, five on the left',
      ['motion right hand strength=4', 'motion left hand strength=5'],
    ],
    // Must not: of no limb nobody knows whether it is a hand or a foot.
    ['cap refill four seconds on the right', ['note: cap refill four seconds on the right']],
    ['pupils six versus four on the left', ['pupils leftMm=4 rightMm=6']],
  ]);
});

describe('a rate after the pulse was found', () => {
  checkStatements([
    ['radial is there, weak, I make it one twelve', ['pulse rate=112 quality=weak']],
    ['her breathing is a little shallow', ['respirations quality=shallow']],
    ['temp oral thirty six point two', ['temperature celsius=36.2']],
  ]);
});

describe('a clock time far back', () => {
  it.each([
    ['ten of morphine given at half past two', 1],
    ['pulse was eighty at twenty past four', 1],
    // Must not: near, or told with its half of the day, or of a meal in the night.
    ['ten of morphine given at half past one', 0],
    ['ten of morphine given at half past two in the morning', 0],
    ['last ate at half past five', 0],
  ])('is asked about where the other half of the day may be meant: %s', (talk, count) => {
    expect(doubts(talk)).toHaveLength(count);
  });
});

describe('who is speaking', () => {
  checkStatements([
    ["hello, my name's Per, I'm a ski patroller, is it okay if I have a look at you?", []],
    ["hey there, I'm Ottoline, cave rescue, can I help?", []],
    // Must not: the patient tells something.
    ["I'm Per and my elbow hurts", ['pain elbow', "note: I'm Per"]],
    ['cave rescue are at the second pitch', ['note: cave rescue are at the second pitch']],
    ['someone called an ambulance', ['note: someone called an ambulance']],
  ]);
});

describe('history in few words', () => {
  checkStatements([
    ["who are you | I'm Kester", ['name: Kester']],
    ['what meds are you on | only ramipril', ['medications: ramipril']],
    ['any past medical history? yes', ['note: any past medical history: yes']],
    ['any allergies? Yes. Wasp stings.', ['allergies: Wasp stings']],
    ['anything to eat? A banana.', ['last-intake: A banana']],
    ['past history: epilepsy', ['past-history: epilepsy']],
    ['medications: warfarin', ['medications: warfarin']],
    ['nuts make him come out in hives', ['allergies: nuts make him come out in hives']],
    [
      'seventy two, on bisoprolol and ramipril',
      ['medications: on bisoprolol and ramipril', 'note: seventy two'],
    ],
    ['has not had anything to drink since noon', ['last-intake: has not had anything to drink since noon']],
  ]);
});

describe('how far is guessed, and not that it was so', () => {
  checkStatements([
    ['slipped maybe ten metres down the gully', ['mechanism: slipped maybe ten metres down the gully']],
    ['tumbled possibly a hundred feet', ['mechanism: tumbled possibly a hundred feet']],
    // Must not: what may be so.
    ['fell, maybe she hit her head', ['mechanism: fell', 'note: maybe she hit her head']],
  ]);
});

describe('a measure by the hand', () => {
  checkStatements([
    ['burn the size of my hand on the left thigh', ['burn left thigh', 'note: the size of my hand']],
    ['gave her something to eat', ['food']],
  ]);
});

describe('what was so before is no reading of now', () => {
  checkStatements([
    ['she was E one V two M four when we arrived', ['note: she was E one V two M four when we arrived']],
    ['pain was nine out of ten at first, now a five', ['pain-score score=5']],
    ['pain was six out of ten initially', ['note: pain was six out of ten initially']],
    // Must not: a sign of now, and what came before it told after.
    ['pain six out of ten, initially worse', ['pain-score score=6', 'note: initially worse']],
  ]);
});

describe('care that was given, and what was only told to be', () => {
  checkStatements([
    ['give her two puffs of salbutamol', ['note: give her two puffs of salbutamol']],
    ['we gave her two puffs of salbutamol', ['medication text=two puffs of salbutamol']],
    ['given paracetamol five hundred', ['medication text=paracetamol five hundred']],
    ['another bag of saline up', ['fluids text=another bag of saline up']],
    [
      'splint on the right wrist, five hundred mils of saline',
      ['splint right wrist', 'fluids text=five hundred mils of saline'],
    ],
    // Must not: where the blood is meant for, there is no bleeding.
    ['left thigh | blood is on order', ['visit left thigh', 'note: blood is on order']],
  ]);
});

describe('an answer is told as it was meant', () => {
  checkStatements([
    ['does anything make it better? no, nothing eases it', ['provocation: nothing eases it']],
    ['what pills is she on? bisoprolol', ['medications: bisoprolol']],
    ['medical history none', ['no past-history: medical history none']],
    ['food allergies nil', ['no allergies: food allergies nil']],
    ['does she drink? stopped years ago', ['past-history: does she drink: stopped years ago']],
    ['is she awake? yeah she is chatting', ['note: is she awake: yeah she is chatting']],
    ['and her breathing? fourteen', ['respirations rate=14']],
  ]);
});

describe('what stands beside a time or a sign', () => {
  checkStatements([
    [
      'sats fell to eighty when the probe slipped off',
      ['oxygen-saturation percent=80', 'note: when the probe slipped off'],
    ],
    ['he could not walk heel to toe', ['note: he could not walk heel to toe']],
    ['not breathing when we dug him out', ['note: not breathing when we dug him out']],
    ['right wrist | how are you feeling? freezing', ['visit right wrist', 'note: freezing']],
    ['packaged in the vac mat', ['spine-protection']],
    ['breathing by herself at sixteen', ['respirations rate=16']],
    ['oxygen stepped down to two litres', ['oxygen text=oxygen stepped down to two litres']],
    ['serac came down on them', ['mechanism: serac came down on them']],
    ['immersed for twenty minutes', ['mechanism: immersed for twenty minutes']],
  ]);
  it.each([
    ['tourniquet on one fifty two', [10]],
    ['morphine five milligrams IM given one fifty two', [10]],
    ['pinned for an hour, freed at thirteen fifty two', [null, null]],
    ['gave glucose gel, rechecked at thirteen fifty two, pulse ninety', [10, null]],
    // Must not: what is counted is no time.
    ['tourniquet on two hours', [null]],
  ])('has its own time: %s', (talk, expected) => {
    expect(minutesBefore(talk)).toEqual(expected);
  });
});

describe('a glucose said digit by digit', () => {
  it.each([
    ['bm eight four', ['Is it 84 mg/dL, or 8.4 mmol/L?']],
    ['sugar four one', ['Is it 41 mg/dL, or 4.1 mmol/L?']],
    // Must not: with a unit, a point or a number of tens nothing is left open.
    ['bm eighty four', []],
    ['glucose eight point four', []],
    ['glucose one one two', []],
  ])('%s', (talk, asks) => {
    expect(statementsOf(talk).map(({ statement }) => statement.kind)).toEqual(['vital']);
    expect(doubts(talk)).toEqual(asks);
  });
});

describe('a pulse that is back', () => {
  checkStatements([
    ['right foot pulse back again', ['circulation right foot']],
    // Must not: the back is a place where nothing comes back.
    ['pulse eighty, now the back', ['pulse rate=80', 'visit back']],
  ]);
});
