// Answers that somebody reports ("he says no", through an interpreter "he is telling that no") are the answers themselves. All invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { found, standing } from '../standing.ts';

const told = (talk: string) =>
  standing(talk).flatMap((one) => (one.kind === 'history' ? [[one.topic, one.present ?? true]] : []));

describe('an answer that is reported', () => {
  it.each([
    'he says no',
    'he is telling no',
    'he is saying no',
    'she told me no',
    'his son is telling that there is none',
    'the interpreter says that no, nothing',
    'her sister translates, she says no',
    'he shakes his head',
  ])('denies: %s', (answer) => {
    expect(found(`any bleeding from the nose | ${answer}`)).toEqual([['nose', null, 'bleeding', false]]);
  });

  it.each(['he says yes', 'she is telling yes, a little', 'he is saying that yes', 'she nods'])(
    'affirms: %s',
    (answer) => {
      expect(found(`any pain in the right hip | ${answer}`)).toEqual([['hip', 'right', 'pain', true]]);
    },
  );

  it.each([
    ['any allergies | she says no', 'allergies'],
    ['any allergies | her son is telling that no', 'allergies'],
    ['is he on any medication | his wife says none', 'medications'],
    ['any past history | he is telling no, never', 'past-history'],
  ])('denies what was asked of the past: %s', (talk, topic) => {
    expect(told(talk)).toEqual([[topic, false]]);
  });

  it('is named without who gave it', () => {
    expect(standing('is she on any tablets | she is yes warfarin')).toEqual([
      expect.objectContaining({
        kind: 'history',
        topic: 'medications',
        text: expect.stringContaining('warfarin'),
      }),
    ]);
  });
});

describe('"he is"', () => {
  it('answers where nothing follows it, and not in "he is shivering"', () => {
    expect(found('is your neck sore | he is')).toEqual([['neck', null, 'pain', true]]);
    expect(found('any bleeding from the nose | he is shivering')).toEqual([]);
  });
});

describe('"paining"', () => {
  checkStatements([
    ['his left knee is paining', ['pain left knee']],
    ['is it paining in the belly? No.', ['no pain abdomen']],
  ]);
});

describe('what is taught beside the patient', () => {
  it.each([
    'in heat stroke the skin would be hot',
    'you would see the chest move the wrong way',
    'what does a rigid belly mean',
  ])('is not found: %s', (said) => {
    expect(standing(said).filter(({ kind }) => kind !== 'note' && kind !== 'visit')).toEqual([]);
  });

  checkStatements([["you'll see a big bruise on the left hip", ['contusion left hip']]]);
});
