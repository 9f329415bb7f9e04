// History is kept under its topic in the patient's own words, denied where it was denied. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

describe('history', () => {
  it.each([
    ['allergic to walnuts', ['allergies: walnuts']],
    ['he has a nasty wasp sting allergy', ['allergies: he has a nasty wasp sting allergy']],
    ['she has a bad lychee allergy', ['allergies: a bad lychee allergy']],
    ['goes into anaphylaxis with eggs', ['allergies: goes into anaphylaxis with eggs']],
    ['no allergies apart from sesame', ['allergies: no allergies apart from sesame']],
    ['not allergic to anything but sesame', ['allergies: not allergic to anything but sesame']],
    ['no allergies, takes aspirin', ['no allergies: no allergies', 'medications: aspirin']],
    ['takes metformin', ['medications: metformin']],
    ['history of asthma', ['past-history: asthma']],
    ['last ate toast at seven', ['last-intake: toast at seven']],
    ['name is Ilse Brandt', ['name: Ilse Brandt']],
    ['chief complaint is hip pain', ['chief-complaint: hip pain']],
    ['fell four metres off a ledge', ['mechanism: fell four metres off a ledge']],
    ['pain came on suddenly', ['onset: pain came on suddenly']],
    [
      'no allergies, meds ramipril five milligrams',
      ['no allergies: no allergies', 'medications: ramipril five milligrams'],
    ],
    ['chief complaint is dizziness', ['chief-complaint: dizziness']],
    ['had her lunch at one', ['last-intake: had her lunch at one']],
    ['pain radiates down the left arm', ['radiation: pain radiates down the left arm']],
  ])('is kept under its topic: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['twenty seven year old woman', ['age: twenty seven year old woman years=27', 'sex: female']],
    ['nine month old boy', ['age: nine month old boy years=0.75', 'sex: male']],
    ['he weighs eighty kilos', ['weight: he weighs eighty kilos kg=80']],
    ['female about thirty', ['age: female about thirty years=30', 'sex: female']],
    ['male fifty three', ['age: male fifty three years=53', 'sex: male']],
    ["she's about sixty", ["age: she's about sixty years=60"]],
    ["she's ten stone", ["weight: she's ten stone kg=63.5"]],
    ['weighs two hundred pounds', ['weight: weighs two hundred pounds kg=90.7']],
  ])('gives its numbers in the unit of the record: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    ['no meds, oh, gout tablets', ['no medications: no meds', 'medications: gout tablets']],
    ['no known allergies', ['no allergies: no known allergies']],
    ['no allergies or medications', ['no allergies: no allergies', 'no medications: medications']],
    ['denies medications', ['no medications: denies medications']],
    ['no past medical history', ['no past-history: no past medical history']],
    ['no codeine allergy', ['no allergies: no codeine allergy']],
    ['she has no walnut allergy', ['no allergies: no walnut allergy']],
    ['no lychee or mango allergy', ['no allergies: no lychee or mango allergy']],
    ['no allergy to iodine', ['no allergies: no allergy to iodine']],
    ['not allergic to sesame', ['no allergies: not allergic to sesame']],
    ['allergic to sesame? | no', ['no allergies: allergic to sesame: no']],
    ['has she got a lychee allergy? no', ['no allergies: a lychee allergy: no']],
    ['denies chest pain and shortness of breath', ['no symptoms: shortness of breath', 'no pain chest']],
  ])('is denied where it was: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each([
    'two hundred year old male',
    "my name is Tove, I'm a responder",
    'taking this jacket off',
    'the litter is about thirty kilos',
  ])('is none where the words cannot be the patient’s: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });
});

describe('what a drug is taken for', () => {
  it.each([
    [
      'takes metoprolol for high blood pressure and something for asthma',
      [
        'medications: metoprolol for high blood pressure and something for asthma',
        'past-history: high blood pressure',
        'past-history: asthma',
      ],
    ],
    ['on apixaban and a blood pressure tablet', ['medications: on apixaban and a blood pressure tablet']],
    ['history of a stent four years ago', ['past-history: a stent four years ago']],
    ['history of asthma and epilepsy', ['past-history: asthma and epilepsy']],
    ['she is seven months pregnant', ['past-history: she is seven months pregnant']],
    ['no heart problems, no asthma', ['no past-history: heart problems', 'no past-history: asthma']],
    [
      'supposed to take metoprolol but he does not',
      ['medications: supposed to take metoprolol but he does not'],
    ],
    ['he is not allergic to anything', ['no allergies: he is not allergic to anything']],
    ['she has a blue puffer', ['medications: she has a blue puffer']],
    ['not on a blood thinner', ['no medications: not on a blood thinner']],
    [
      'takes aspirin, blood pressure one ten over seventy',
      ['medications: aspirin', 'blood-pressure systolic=110 diastolic=70'],
    ],
  ])('stays with the drug: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('what happened', () => {
  it.each([
    ['cyclist versus car', ['mechanism: cyclist versus car']],
    ['kicked by the horse', ['mechanism: kicked by the horse']],
    ['trapped under the tractor', ['mechanism: trapped under the tractor']],
    ['found on the bathroom floor', ['mechanism: found on the bathroom floor']],
    ['chest pain started suddenly', ['onset: started suddenly', 'pain chest']],
    ['he was confused at first', ['symptoms: he was confused at first']],
    ['found face down in the creek', ['mechanism: found face down in the creek']],
    ['his right foot was crushed under a wheel', ['mechanism: his right foot was crushed under a wheel']],
    ['allergic to nothing', ['no allergies: allergic to nothing']],
    ['he jumped off the wall', ['mechanism: he jumped off the wall']],
    ['describes the pain as squeezing', ['quality: squeezing']],
    ['never passed out', ['no events: never passed out']],
    ['denies hitting his head', ['no events: denies hitting his head']],
    ['did you black out? | no', ['no events: did you black out: no']],
    ['did you hurt your neck? no', ['no events: did you hurt your neck: no']],
    ['did you bang your head? | no', ['no events: did you bang your head: no']],
    ['did she break her wrist? | no', ['no events: did she break her wrist: no']],
    ['did he bang his elbow? yes', ['events: did he bang his elbow: yes']],
    ['did you black out? | right ankle swollen', ['swelling right ankle']],
    ['does your neck hurt? no', ['no pain neck']],
  ])('is told, and denied where it was: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('an age', () => {
  it.each([
    ['the kid is about nine', ['age: the kid is about nine years=9']],
    ['looks about seventy', ['age: looks about seventy years=70']],
    ['early forties', ['age: early forties']],
    ['woman in her late eighties', ['age: woman in her late eighties', 'sex: female']],
  ])('is years where a number of them is said: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });

  it.each(['looks about fifty metres away', 'the kid is about nine feet up'])(
    'is none where it counts: %s',
    (talk) => {
      expect(read(talk, 'history')).toEqual([]);
    },
  );
});

describe('weight', () => {
  it.each([
    "can't put weight on her left foot",
    'he could take some weight on the right leg',
    "couldn't stand up",
    'he would not take anything for the pain',
    'no pain meds given',
    'IO left tibia',
    'he is about six foot one',
    'needle decompression right second intercostal space',
    'bagging him',
  ])('is none where a limb bears it, and the words stay whole: %s', (talk) => {
    expect(read(talk)).toEqual([`note: ${talk}`]);
  });
});

describe('an answer to a question after one thing', () => {
  it.each([
    ['epilepsy? yes', ['past-history: epilepsy: yes']],
    ['any asthma? | no', ['no past-history: any asthma: no']],
    ['is she on any blood thinners? yes', ['medications: is she on any blood thinners: yes']],
    ['did you pass out? yeah for a minute', ['events: did you pass out: yeah for a minute']],
    ['ever had this before? once last winter', ['past-history: ever had this before: once last winter']],
  ])('says what it is of: %s', (talk, expected) => {
    expect(read(talk)).toEqual(expected);
  });
});

describe('a number of years', () => {
  it.each(['had a pacemaker three years back', 'has been clean for six years'])(
    'is no age where nobody said so: %s',
    (talk) => {
      expect(read(talk, 'history').filter((one) => one.startsWith('age'))).toEqual([]);
    },
  );

  it.each([
    ["he's thirty four years", "age: he's thirty four years years=34"],
    ['sixty year male', 'age: sixty year male years=60'],
    ['seventy years of age', 'age: seventy years of age years=70'],
  ])('is one where it was said of the patient: %s', (talk, expected) => {
    expect(read(talk, 'history')).toContain(expected);
  });
});
