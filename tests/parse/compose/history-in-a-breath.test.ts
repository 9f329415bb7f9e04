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
