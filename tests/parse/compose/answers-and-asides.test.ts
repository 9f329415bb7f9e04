// Answers with talk of the patient's own behind them, and questions of age, weight and pain in everyday words. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { checkStatements } from '../rows.ts';
import { standing } from '../standing.ts';

describe('a whole denial with talk behind it', () => {
  it.each([
    ['any allergies | none whatsoever i could eat a horse', 'allergies'],
    ['any medical problems | none at all i am as fit as a fiddle', 'past-history'],
    ['any allergies | none at all i can eat what i like', 'allergies'],
  ] as const)('denies it: %s', (talk, topic) =>
    expect(standing(talk).filter(({ kind }) => kind === 'history')).toMatchObject([
      { topic, present: false },
    ]),
  );

  it.each([
    'any allergies | none at all i get a rash from latex',
    'any allergies | none at all except penicillin',
    'any allergies | no i love cats',
  ])('denies nothing where more is told: %s', (talk) =>
    expect(standing(talk).some((one) => one.kind === 'history' && one.present === false)).toBe(false),
  );
});

describe('questions in everyday words', () => {
  checkStatements([
    ['do you know how heavy you are | gran says eighteen kilos', ['weight: eighteen kilos kg=18']],
    ['and your pain at the moment out of ten | nought it has gone', ['pain-score score=0']],
    ['and your pain now my love out of ten | nought it has all gone', ['pain-score score=0']],
    [
      'what do they call you and how old are you | my name is tilda and i am eight',
      ['name: tilda', 'age: i am eight years=8'],
    ],
    ['can you waggle the toes on your left foot | yes they all go', ['visit left toes', 'motion left foot']],
    ['left knee | my name is tom', ['visit left knee', 'note: my name is tom']],
  ]);
});
