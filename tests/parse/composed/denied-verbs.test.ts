// However a verb denies, of one thing or of many, nothing is found. All of it is invented.

import { describe, expect, it } from 'vitest';
import { read } from '../read.ts';

// Each with whether it is many.
const SUBJECTS = [
  ['his elbow', false],
  ['the right hip', false],
  ['her jaw', false],
  ['my neck', false],
  ['the bone over the left ankle', false],
  ['both shoulders', true],
  ['the shins', true],
  ['his ribs', true],
  ['her feet', true],
  ['my calves', true],
] as const;

// Of one, and of many.
const DENIALS = [
  ["doesn't hurt", "don't hurt"],
  ["doesn't ache", "don't ache"],
  ["isn't sore", "aren't sore"],
  ["wasn't bruised", "weren't bruised"],
  ["hasn't got any swelling", "haven't got any swelling"],
  ["doesn't look swollen", "don't look swollen"],
  ["doesn't seem bruised", "don't seem bruised"],
  ["doesn't feel tender", "don't feel tender"],
  ["didn't hurt when I squeezed", "didn't hurt when I squeezed"],
  ["doesn't give her any pain", "don't give her any pain"],
  ["doesn't really hurt", "don't really hurt"],
  ["isn't at all tender", "aren't at all tender"],
  ['is not even a bit sore', 'are not even a bit sore'],
  ["doesn't have any pain", "don't have any pain"],
  ["isn't bleeding any more", "aren't bleeding any more"],
  ["doesn't tingle", "don't tingle"],
] as const;

describe('a verb that denies', () => {
  it.each(DENIALS)('finds nothing: %s, %s', (ofOne, ofMany) => {
    const talks = SUBJECTS.map(([subject, isMany]) => `${subject} ${isMany ? ofMany : ofOne}`);
    const stated = talks.map((talk) => read(talk).filter((line) => !/^(visit|note)/.test(line)));
    expect(stated.map((lines) => lines.length)).toEqual(talks.map(() => 1));
    expect(stated.flat().filter((line) => !line.startsWith('no '))).toEqual([]);
  });

  it.each([
    ["don't move your feet", []],
    ['left arm, do not move', ['visit left arm']],
    ["the toes don't move", ['no motion foot']],
    ["his fingers don't wiggle on the left", ['no motion left hand']],
    ['toes move on the right', ['motion right foot']],
  ])('tells the patient what not to do only where it opens: %s', (talk, means) => {
    expect(read(talk)).toEqual(means);
  });
});
