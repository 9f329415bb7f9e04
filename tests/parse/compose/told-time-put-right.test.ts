// A bare correction behind a told time is of that time, and of no sign or age that was said before. All talk here is invented.

import { describe, expect, it } from 'vitest';
import { standing as entriesStanding } from '../standing.ts';

const standing = (talk: string): readonly string[] =>
  entriesStanding(talk).map((entry) => {
    const told = 'text' in entry ? `: ${entry.text}` : '';
    const value = entry.kind === 'vital' ? ` ${JSON.stringify(Object.values(entry.value)[0])}` : '';
    const name = entry.kind === 'vital' ? entry.vital : entry.kind === 'history' ? entry.topic : entry.kind;
    return `${entry.at.slice(11, 16)} ${name}${told}${value}`;
  });

describe('a told time', () => {
  it.each([
    [
      'pulse eighty six | last drink at ten this morning | correction, eleven',
      '11:00 last-intake: ten this morning, corrected: eleven',
    ],
    [
      'pulse eighty six | she ate at twelve | correction, at one',
      '14:02 last-intake: at twelve, corrected: at one',
    ],
    [
      'male, forty | passed out at thirteen ten | no, thirteen twenty',
      '13:20 events: passed out at thirteen ten, corrected: thirteen twenty',
    ],
    [
      'male, forty | onset was two hours ago | sorry, three hours ago',
      '11:02 onset: onset was two hours ago, corrected: three hours ago',
    ],
    [
      'male, forty | last meal four hours ago | correction, five',
      '09:02 last-intake: four hours ago, corrected: five',
    ],
    [
      "male, forty | last drink around noon | no, one o'clock",
      "13:00 last-intake: noon, corrected: one o'clock",
    ],
    [
      "pulse eighty six | threw up at one o'clock | no, half past one",
      "13:30 symptoms: threw up at one o'clock, corrected: half past one",
    ],
  ])('is put right: %s', (talk, expected) => {
    const all = standing(talk);
    expect(all.at(-1)).toBe(expected);
    expect(all[0]).toMatch(/pulse 86|age: male, forty/);
  });

  it.each([
    'female, forty | tourniquet on the left thigh at thirteen forty | correction, fifty',
    'female, forty | fit at thirteen ten | correction, thirteen twenty',
    'pulse eighty six | vomited twice | correction, three',
    'pulse eighty six | last meal at seven | correction, eight, soup and bread',
  ])('that cannot be put right leaves the words, and each sign as it was: %s', (talk) => {
    const all = standing(talk);
    expect(all[0]).toMatch(/pulse 86|age: female, forty/);
    expect(all.at(-1)).toMatch(/note: correction/i);
  });

  it.each([
    ['pulse eighty six | left knee swollen | correction, ninety', '14:02 pulse 90'],
    ['pulse eighty six at ten to two | correction, ninety', '13:50 pulse 90'],
    ['fell at ten past one | pulse eighty six | correction, ninety', '14:02 pulse 90'],
  ])('does not keep a number from the sign it is of: %s', (talk, expected) => {
    expect(standing(talk)).toContain(expected);
  });
});
