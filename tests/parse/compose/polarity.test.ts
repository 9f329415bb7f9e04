// What is denied is denied as far as the denial reaches and no further; an exception is there. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read, statementsOf } from '../read.ts';

describe('a denial', () => {
  it.each([
    ['no swelling or bruising of the right elbow', ['no swelling right elbow', 'no contusion right elbow']],
    [
      'no deformity, no swelling and no bruising on the left foot',
      ['no deformity left foot', 'no swelling left foot', 'no contusion left foot'],
    ],
    [
      'neck, chest and back no tenderness',
      ['no tenderness neck', 'no tenderness chest', 'no tenderness back'],
    ],
    ['no tender spots on the left knee', ['no tenderness left knee']],
    [
      'no tender, swollen or bruised areas on the left thigh',
      ['no tenderness left thigh', 'no swelling left thigh', 'no contusion left thigh'],
    ],
    ['no boggy bits on the scalp', ['no swelling skull']],
    ['no tracheal deviation', ['no tracheal-deviation trachea']],
    ['belly is not rigid', ['no rigidity abdomen']],
    ['no other deformity of the left knee', ['no deformity left knee']],
    [
      'left knee swelling, no other wounds of the right thigh',
      ['swelling left knee', 'no laceration right thigh'],
    ],
  ])('covers its list: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    [
      'no swelling, bruising of the left ankle but it is tender',
      ['no swelling left ankle', 'no contusion left ankle', 'tenderness left ankle'],
    ],
    ['no pain in the hip, tenderness in the back', ['no pain hip', 'tenderness back']],
    ['no tenderness over the left hip but the knee is sore', ['no tenderness left hip', 'pain left knee']],
  ])('stops at what says so: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([['could be a fracture of the left wrist'], ['rule out swelling of the right ankle']])(
    'is not made of what is only possible, nor is a finding: %s',
    (talk) => {
      expect(read(talk)).toEqual([`note: ${talk}`]);
    },
  );
});

describe('what sounds like a "no"', () => {
  it.each(['know tenderness over the left hip', 'right ankle, know obvious swelling'])(
    'straight before a finding is asked about: %s',
    (talk) => {
      expect(statementsOf(talk).map(({ doubt }) => doubt)).toEqual([['Is this there, or not there?']]);
    },
  );

  it('is none where somebody knows', () => {
    expect(statementsOf('you know, swelling of the right ankle').map(({ doubt }) => doubt)).toEqual([[]]);
  });
});

describe('a "no" before an adjective', () => {
  it('that no thing follows is asked about', () => {
    for (const talk of ['no obvious deformed left arm', 'no tender left knee'])
      expect(statementsOf(talk).map(({ doubt }) => doubt)).toEqual([['Is this there, or not there?']]);
  });

  it.each([
    [
      'no deformity, tender spots over the left radius',
      ['no deformity left forearm', 'tenderness left forearm'],
    ],
    ['no swelling, sore bits on the left ankle', ['no swelling left ankle', 'pain left ankle']],
  ])('denies nothing after its own noun: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('an exception', () => {
  it.each([
    ['no tenderness except the left hip', ['tenderness left hip']],
    ['no bruising apart from the right shin', ['contusion right lower-leg']],
    ['tender on the left ribs but not the right', ['tenderness left ribs', 'no tenderness right ribs']],
  ])('is the other way round: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('a word that denies by itself', () => {
  it.each([
    ['abdomen soft, not distended', ['no rigidity abdomen', 'no distension abdomen']],
    ['pelvis stable', ['no instability pelvis']],
    ['left knee | trachea is midline', ['visit left knee', 'no tracheal-deviation trachea']],
  ])('says what is not there: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['belly is not soft', ['rigidity abdomen']],
    ['pelvis is unstable', ['instability pelvis']],
  ])('is turned by a "not": %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('a list of symptoms', () => {
  it.each([
    ['no hip pain or dizziness', ['no symptoms: dizziness', 'no pain hip']],
    ['denies chest pain or shortness of breath', ['no symptoms: shortness of breath', 'no pain chest']],
    ['not nauseous or dizzy', ['no symptoms: not nauseous', 'no symptoms: dizzy']],
    ['no chest pain but feels dizzy', ['no pain chest', 'symptoms: feels dizzy']],
  ])('is denied as far as the no reaches: %s', (talk, expected) => {
    expect(read(talk, 'history', 'finding')).toEqual(expected);
  });

  it('of one finding at several places is denied, and asked about where nothing joins it', () => {
    const [first, second] = statementsOf('no hip pain, knee pain');
    expect(first?.doubt).toEqual([]);
    expect(second?.statement).toMatchObject({ site: 'knee', finding: 'pain', present: false });
    expect(second?.doubt).toEqual(['Is this denied too, or is it there?']);
  });
});
