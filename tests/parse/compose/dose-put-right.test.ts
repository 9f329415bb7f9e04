// The amount or the time of a dose that was told is put right. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { entriesOf, realReader } from '../../talk-case.ts';

const reader = realReader();
const START = '@start 2026-05-03T14:02:00-06:00';

/** The medications that stand: their words, when, and what is asked of each. */
const doses = (talk: string): readonly string[] =>
  entriesOf(reader, [START, ...talk.split('|').map((line) => line.trim())]).flatMap((entry) =>
    (entry.kind === 'care' || entry.kind === 'note') &&
    (entry.state === 'heard' || entry.state === 'confirmed')
      ? [
          `${entry.kind === 'note' ? 'note: ' : ''}${entry.text} ${entry.at.slice(11, 16)}${entry.doubt === undefined ? '' : ` ? ${entry.doubt.join(' ')}`}`,
        ]
      : [],
  );

const UNIT = 'It was counted in something else before: is the unit right?';
const BESIDES = 'Does that put the dose right, or was it another one?';

describe('an amount behind words that take back puts the dose right, in whatever it is counted', () => {
  it.each([
    ['ketamine twenty milligrams | correction, ten milligrams', ['ketamine ten milligrams 14:02']],
    [
      'fentanyl eighty micrograms | correction, ninety milligrams',
      [`fentanyl ninety milligrams 14:02 ? ${UNIT}`],
    ],
    ['codeine sixty milligrams | no, thirty milligrams', ['codeine thirty milligrams 14:02']],
    ['oxygen four litres | no, six litres', ['oxygen six litres 14:02']],
    [
      'codeine sixty milligrams | correction, the codeine was thirty milligrams',
      ['codeine thirty milligrams 14:02'],
    ],
    ['codeine sixty milligrams | thirty milligrams, not sixty', ['codeine thirty milligrams 14:02']],
    [
      'second dose of codeine at fourteen hundred | correction, thirty milligrams',
      ['second dose of codeine, thirty milligrams 14:00'],
    ],
    ['codeine sixty milligrams | i gave thirty, not sixty', ['codeine thirty milligrams 14:02']],
  ])('%s', (talk, told) => expect(doses(talk)).toEqual(told));
});

describe('an amount that may be another dose, or a time, is asked about', () => {
  it.each([
    ['codeine sixty milligrams | it was thirty milligrams', [`codeine thirty milligrams 14:02 ? ${BESIDES}`]],
    ['fentanyl two hundred micrograms | no, one fifty', [`fentanyl one fifty micrograms 14:02 ? ${BESIDES}`]],
    [
      'codeine sixty milligrams | ketamine twenty milligrams | oxygen four litres | correction, thirty milligrams',
      [
        'codeine sixty milligrams 14:02',
        'ketamine twenty milligrams 14:02',
        'oxygen four litres 14:02',
        'note: correction, thirty milligrams 14:02 ? Which dose does that put right?',
      ],
    ],
  ])('%s', (talk, told) => expect(doses(talk)).toEqual(told));
});

describe('a time that is said of a dose by its name is its time, and it keeps its words', () => {
  it.each([
    [
      'codeine sixty milligrams at thirteen forty | second dose of codeine at thirteen fifty | correction, the second dose was at thirteen fifty five',
      ['codeine sixty milligrams 13:40', 'second dose of codeine 13:55'],
    ],
    [
      'codeine sixty milligrams at thirteen forty | second dose of codeine at thirteen fifty | no, the second dose was at thirteen fifty five',
      ['codeine sixty milligrams 13:40', 'second dose of codeine 13:55'],
    ],
    [
      'ketamine ten milligrams at thirteen forty | ketamine ten milligrams at thirteen fifty | correction, the second dose was thirteen hundred hours',
      ['ketamine ten milligrams 13:40', 'ketamine ten milligrams 13:00'],
    ],
    [
      'ketamine ten milligrams at thirteen forty | oxygen four litres | sorry, the ketamine was at thirteen thirty',
      ['oxygen four litres 14:02', 'ketamine ten milligrams 13:30'],
    ],
    [
      'ketamine ten milligrams at thirteen forty | the ketamine was at thirteen thirty',
      ['ketamine ten milligrams 13:30 ? Another time was said of it before: which is right?'],
    ],
  ])('%s', (talk, told) => expect(doses(talk)).toEqual(told));
});

describe('a dose that was not told is put in the place of no other', () => {
  it.each([
    [
      'codeine sixty milligrams at thirteen forty | correction, the second dose was at fourteen hundred',
      [
        'codeine sixty milligrams 13:40',
        'note: correction, the second dose was at fourteen hundred 14:00 ? Which dose is it the time of?',
      ],
    ],
    [
      'codeine sixty milligrams at thirteen forty | the second dose was at fourteen hundred',
      ['codeine sixty milligrams 13:40', 'second dose 14:00'],
    ],
    [
      'ketamine ten milligrams at thirteen forty | ketamine ten milligrams at thirteen fifty | correction, the first ketamine was at thirteen thirty',
      [
        'ketamine ten milligrams 13:40',
        'ketamine ten milligrams 13:50',
        'note: correction, the first ketamine was at thirteen thirty 13:30 ? Which dose is it the time of?',
      ],
    ],
    [
      'codeine sixty milligrams | thirty milligrams',
      ['codeine sixty milligrams 14:02', 'note: thirty milligrams 14:02'],
    ],
  ])('%s', (talk, told) => expect(doses(talk)).toEqual(told));
});
