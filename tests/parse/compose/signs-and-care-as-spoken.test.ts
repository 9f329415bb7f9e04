// Signs and care as responders say them: figures said apart from their names, points of a scale that are missing, doses put
// right, minutes without their hour. All talk is invented; it is heard at 14:02.

import { describe, expect, it } from 'vitest';
import { BEGINS, statementsOf } from '../read.ts';
import { checkCorrections, checkStatements } from '../rows.ts';

const minutesBefore = (talk: string): readonly (number | null)[] =>
  statementsOf(talk).map(({ at }) => (at === undefined ? null : Math.round((BEGINS - at) / 60_000)));

const doubts = (talk: string): readonly string[] => statementsOf(talk).flatMap(({ doubt }) => doubt);

describe('a figure apart from its name', () => {
  checkStatements([
    ['breathing sounds about fourteen, a little shallow', ['respirations rate=14 quality=shallow']],
    ['breathing is noisy, about eighteen', ['respirations rate=18 quality=noisy']],
    ['ninety three on the sats, that was on air', ['oxygen-saturation percent=93 onOxygen=false']],
    ['ear thermometer reads thirty six four', ['temperature celsius=36.4']],
    ['resps, twelve in thirty seconds, so twenty four', ['respirations rate=24']],
    // Must not: a bound, litres, a count of nobody knows what, and the time before the figure.
    [
      'she has a pressure of at least eighty systolic',
      ['note: she has a pressure of at least eighty systolic'],
    ],
    ['sats ninety four, now on four', ['oxygen-saturation percent=94', 'note: now on four']],
    ['twelve in thirty seconds, so twenty four', ['note: twelve in thirty seconds, so twenty four']],
    ['pulse at two oh one was ninety', ['pulse rate=90']],
  ]);
});

describe('a later figure of the same sign', () => {
  checkStatements([
    [
      'respirations were thirty at fourteen hundred, now down to twenty two',
      ['respirations rate=30', 'respirations rate=22'],
    ],
    [
      'sugar was two point nine at thirteen fifty, five point one now',
      ['glucose mgPerDl=52', 'glucose mgPerDl=92'],
    ],
    [
      'sats ninety one at thirteen fifty, ninety four at five to',
      ['oxygen-saturation percent=91', 'oxygen-saturation percent=94'],
    ],
    // Must not: what it was before is no reading of now.
    ['his pulse was seventy on scene', ['note: his pulse was seventy on scene']],
  ]);

  it('has a time of its own', () => {
    expect(minutesBefore('sugar was two point nine at thirteen fifty, five point one now')).toEqual([
      12,
      null,
    ]);
    expect(minutesBefore('sats ninety one at thirteen fifty, ninety four at five to')).toEqual([12, 7]);
  });
});

describe('the coma scale by what is missing of it', () => {
  checkStatements([
    ['GCS twelve, lost one for eyes and two for verbal', ['gcs eye=3 verbal=3 motor=6 total=12']],
    ['GCS eleven, two for eyes, four for verbal and five for motor', ['gcs eye=2 verbal=4 motor=5 total=11']],
    ['opening his eyes when I speak to him', ['responsiveness avpu=V']],
    [
      'he went from alert to only responding to pain',
      ['responsiveness avpu=P', 'note: he went from alert to'],
    ],
    // Must not: the points that are named are not those that are missing; a hand that is not the patient's.
    ['GCS fourteen, lost two on motor', ['note: GCS fourteen, lost two on motor']],
    ['he knocks my hand away', ['note: he knocks my hand away']],
    [
      'atropine six hundred micrograms, no response',
      ['medication text=atropine six hundred micrograms', 'note: no response'],
    ],
  ]);

  it('asks where the points do not fit', () => {
    expect(doubts('GCS fourteen, lost two on motor')).toEqual([
      'Eyes 4, verbal 5, motor 4 make 13, and 14 was said: which is right?',
    ]);
  });
});

describe('a drug that was given', () => {
  checkStatements([
    ['one puff of her own reliever inhaler', ['medication text=one puff of her own reliever inhaler']],
    ['diazepam five, fourteen oh one', ['medication text=diazepam five']],
    [
      'ketamine one milligram per kilo, seventy milligrams',
      ['medication text=ketamine one milligram per kilo, seventy milligrams'],
    ],
    // Must not: what is taken at home, and a figure that may be it.
    ['she takes two puffs of her inhaler every night', ['medications: two puffs of her inhaler every night']],
    ['codeine thirty milligrams four times a day', ['note: codeine thirty milligrams four times a day']],
    ['diazepam five', ['note: diazepam five']],
  ]);
});

describe('care that was not given now', () => {
  checkStatements([
    ['off oxygen since five to', ['note: off oxygen since five to']],
    ['checked the splint at thirteen fifty', ['note: checked the splint at thirteen fifty']],
    ['can somebody get a splint on that', ['note: can somebody get a splint on that']],
    ['cleaned the left hand with a litre of saline', ['irrigation left hand']],
    ['sat him down with his feet up', ['note: sat him down with his feet up']],
  ]);
});

describe('an answer in the breath of its question', () => {
  checkStatements([
    ['what is her pulse, eighty four', ['pulse rate=84']],
    ['how is her breathing, slow, about ten', ['respirations rate=10 quality=slow']],
    ['what are the sats, ninety two on air', ['oxygen-saturation percent=92 onOxygen=false']],
    // Must not: what was asked after is not answered by a number, and a question mark ends no answer.
    ['is her pulse regular, eighty four', ['note: is her pulse regular, eighty four']],
    ['what is her pulse, eighty four?', []],
  ]);
});

describe('minutes without their hour', () => {
  it.each([
    ['ketamine twenty IV at ten to', [12]],
    ['collar on at quarter to', [17]],
    ['tourniquet on the right thigh, five past one', [57]],
    // Must not: the time of another dose, and two numbers.
    ['two of morphine and one more at five to', [null, null]],
    ['tourniquet on the right thigh, ten to twelve', [null, null]],
    ['resps ten to twelve', [null]],
  ])('are of the hour before the talk: %s', (talk, expected) => {
    expect(minutesBefore(talk)).toEqual(expected);
  });
});

describe('a figure put right', () => {
  checkCorrections([
    [
      'pressure one eighteen over seventy | pressure was one eighty, not one eighteen',
      ['number value=180 ← kind=vital vital=blood-pressure'],
    ],
    ['pulse fifty | sixty not fifty', ['statement pulse rate=60 ← kind=vital vital=pulse']],
    [
      'gave four of ondansetron | make that eight',
      ['statement medication text=eight of ondansetron ← kind=care care=medication text=four of ondansetron'],
    ],
    ['sats ninety, pulse seventy | strike the last sats', ['strike ← kind=vital vital=oxygen-saturation']],
    // What is put right may be named before the words that do so; one part of a scale leaves the others.
    [
      'pulse seventy | resps twenty | the pulse should be sixty',
      ['number value=60 ← kind=vital vital=pulse'],
    ],
    [
      'sats ninety | temp thirty six | I read the sats wrong, it is ninety four',
      ['number value=94 ← kind=vital vital=oxygen-saturation'],
    ],
    [
      'E four V four M six | correction, V three',
      ['statement gcs eye=4 verbal=3 motor=6 total=13 ← kind=vital vital=gcs'],
    ],
    [
      'she is P on AVPU | correction, V',
      ['statement responsiveness avpu=V ← kind=vital vital=responsiveness'],
    ],
    ['pulse seventy | the flow rate should be sixty', []],
    ['E four V four M six | correction, M nine', []],
    ['gave fentanyl fifty micrograms | the midazolam should be five', []],
    // Must not: another figure than was said, litres, another unit, and a word that nobody knows.
    ['pulse fifty | pulse sixty, not seventy', []],
    ['sats ninety on air | sorry, on six litres', []],
    ['gave one of lorazepam | pulse seventy | scratch the lorazepam', []],
  ]);
});
