// Questions of history whose answer stands in their breath or among courtesies, and those that lean on the talk before. Invented.

import { describe, expect, it } from 'vitest';
import { stands } from '../../../src/record/entry.ts';
import { entriesOf, realReader } from '../../talk-case.ts';
import { checkStatements } from '../rows.ts';

const reader = realReader();
const history = (talk: string) =>
  entriesOf(reader, talk.split(' | '))
    .filter(stands)
    .flatMap((one) => (one.kind === 'history' ? [one] : []));

describe('an illness named straight behind the question', () => {
  checkStatements([
    ['any medical conditions epilepsy', ['past-history: epilepsy']],
    [
      'any health problems diabetes and high blood pressure',
      ['past-history: diabetes and high blood pressure'],
    ],
    // They may be what is asked after.
    [
      'any medical conditions epilepsy asthma anything like that',
      ['note: any medical conditions epilepsy asthma'],
    ],
    ['any medical conditions, epilepsy?', []],
  ]);

  it('is asked about', () => {
    expect(history('any medical conditions epilepsy')[0]?.doubt).toHaveLength(1);
  });

  it('is turned by a no', () => {
    expect(history('any medical conditions epilepsy | no').map(({ present }) => present)).toEqual([false]);
  });
});

describe('an answer in words that nobody knows, straight behind the question', () => {
  it.each([
    ['any known allergies elastoplast', 'allergies', 'elastoplast'],
    ['are you allergic to anything wasp stings', 'allergies', 'wasp stings'],
    ['are you on any meds bisoprolol and a statin', 'medications', 'bisoprolol and a statin'],
    ['do you take any medication a blue puffer', 'medications', 'a blue puffer'],
    ['any medical problems bad chest', 'past-history', 'bad chest'],
    ['what did you have for breakfast muesli', 'last-intake', 'muesli'],
    ['what does it feel like stabbing', 'quality', 'stabbing'],
    ["what's your name Solveig", 'name', 'Solveig'],
  ])('is told, and asked about: %s', (talk, topic, text) => {
    const [one, ...others] = history(talk);
    expect(one).toMatchObject({ topic, text });
    expect([others, one?.doubt?.length]).toEqual([[], 1]);
  });

  checkStatements([
    ['when did you last eat at breakfast', ['last-intake: at breakfast']],
    ['any medical problems just a bad chest', ['past-history: a bad chest']],
    ['what happened I tripped', ['mechanism: I tripped']],
    ['how did you fall caught my crampon', ['mechanism: caught my crampon']],
    // The answer behind it is of what was asked after.
    ['any allergies kiwis no', ['no allergies: any allergies kiwis: no', 'note: any allergies kiwis']],
    // They go on asking, or call somebody.
    ['any allergies kiwis or cats', ['note: any allergies kiwis or cats']],
    ['any allergies kiwis anything like that', ['note: any allergies kiwis']],
    ['any allergies for my form', ['note: any allergies for my form']],
    ['any allergies Solveig', ['note: any allergies Solveig']],
    ['any allergies kiwis?', []],
    ['what happened when you tripped', ['note: what happened when you tripped']],
  ]);
});

describe('a question that only the order of its words tells', () => {
  checkStatements([
    ['is she epileptic', []],
    ['is she epileptic | no', ['no past-history: epileptic: no']],
    ['is he allergic to wasps | no', ['no allergies: allergic to wasps: no']],
    [
      'any allergies to wasps | no',
      ['note: any allergies to wasps', 'no allergies: any allergies to wasps: no'],
    ],
    // Must not: told with an aside.
    ['his hip is he says sore', ['pain hip']],
    ['allergic to wasps', ['allergies: wasps']],
  ]);
});

describe('a no with a courtesy behind it', () => {
  checkStatements([
    [
      "any allergies no any medications no any medical problems no lovely you're a dream",
      ['no allergies: no', 'no medications: no', 'no past-history: no', "note: no lovely you're a dream"],
    ],
    [
      'right foot cold | any allergies | no okay cool',
      ['no circulation right foot warmth=cold', 'no allergies: no'],
    ],
    ['any allergies | no, just kiwi', ['allergies: kiwi']],
  ]);
});

describe('what a pain is like, and for how long', () => {
  checkStatements([
    ["when did it start | at noon | what's it like | dull", ['onset: at noon', 'quality: dull']],
    ["what's the pain like | a dull throb", ['quality: a dull throb']],
    ['how long have you had it | three hours or so', ['time: three hours or so']],
    ['how long ago did it start | three hours', ['onset: three hours']],
    // Of the weather.
    ["what's it like | freezing", ['note: freezing']],
  ]);
});

describe('a place that was told of long ago', () => {
  checkStatements([
    [
      'had a rash on my back last summer, gone since. | any rash there now? | no',
      ['note: had a rash on my back last summer, gone since', 'no rash back'],
    ],
    ['left knee | any swelling there now | no', ['visit left knee', 'no swelling left knee']],
    ['broke my left wrist last year | swelling', ['note: broke my left wrist last year', 'note: swelling']],
  ]);
});
