// History is kept under its topic in the patient's own words, denied where it was denied. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('history', () => {
  it.each([
    ['allergic to walnuts', ['allergies: walnuts']],
    ['takes metformin', ['medications: metformin']],
    ['history of asthma', ['past-history: asthma']],
    ['last ate toast at seven', ['last-intake: toast at seven']],
    ['name is Ilse Brandt', ['name: Ilse Brandt']],
    ['chief complaint is hip pain', ['chief-complaint: hip pain']],
    ['fell four metres off a ledge', ['mechanism: fell four metres off a ledge']],
    ['pain came on suddenly', ['onset: pain came on suddenly']],
    ['pain radiates down the left arm', ['radiation: pain radiates down the left arm']],
  ])('is kept under its topic: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['twenty seven year old woman', ['age: twenty seven year old woman years=27', 'sex: female']],
    ['nine month old boy', ['age: nine month old boy years=0.75', 'sex: male']],
    ['he weighs eighty kilos', ['weight: he weighs eighty kilos kg=80']],
    ['weighs two hundred pounds', ['weight: weighs two hundred pounds kg=90.7']],
  ])('gives its numbers in the unit of the record: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['no known allergies', ['no allergies: no known allergies']],
    ['denies medications', ['no medications: denies medications']],
    ['no past medical history', ['no past-history: no past medical history']],
    ['denies chest pain and shortness of breath', ['no symptoms: shortness of breath', 'no pain chest']],
  ])('is denied where it was: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each(['two hundred year old male', "my name is Tove, I'm a responder", 'taking this jacket off'])(
    'is none where the words cannot be the patient’s: %s',
    (talk) => {
      expect(read(talk)).toEqual([`note: ${talk}`]);
    },
  );
});
