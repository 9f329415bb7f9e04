// The grades of muscle power, each as it is said, reckoned and written, against the published scale. The talk is invented.

import { beforeAll, describe, expect, it } from 'vitest';
import { isImpaired, limbWord, reckon } from '../../src/clinical/index.ts';
import { soap, textOf } from '../../src/handoff/index.ts';
import type { Reader } from '../../src/parse/index.ts';
import type { Entry } from '../../src/record/entry.ts';
import { input } from '../handoff/made-up.ts';
import { entriesOf, realReader } from '../talk-case.ts';

/**
 * Source: Medical Research Council, Aids to the Investigation of Peripheral Nerve Injuries, Memorandum No. 45, 1976 (read):
 * 0 no contraction; 1 flicker or trace of contraction; 2 active movement, with gravity eliminated; 3 active movement against
 * gravity; 4 active movement against gravity and resistance; 5 normal power.
 */
const GRADES = [
  { grade: 0, word: 'zero', moves: false, normal: false },
  { grade: 1, word: 'one', moves: false, normal: false },
  { grade: 2, word: 'two', moves: true, normal: false },
  { grade: 3, word: 'three', moves: true, normal: false },
  { grade: 4, word: 'four', moves: true, normal: false },
  { grade: 5, word: 'five', moves: true, normal: true },
] as const;

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

type Csm = Extract<Entry, { kind: 'csm' }>;
const motions = (talk: string): readonly Csm[] =>
  entriesOf(reader, [talk]).filter(
    (entry): entry is Csm => entry.kind === 'csm' && entry.aspect === 'motion',
  );

describe.each(GRADES)('grade $grade', ({ grade, word, moves, normal }) => {
  it.each([
    `right hand strength ${word} out of five`,
    `right hand motor strength ${grade}/5`,
    `right hand power ${word} over five`,
  ])('is heard as such: %s', (talk) => {
    expect(motions(talk).map(({ side, present, strength }) => ({ side, present, strength }))).toEqual([
      { side: 'right', present: moves, strength: grade },
    ]);
  });

  it(`is ${normal ? 'normal power alone' : 'less than normal'} in the reckoning and in the report`, () => {
    const entries = motions(`right hand strength ${word} out of five`);
    const [one] = entries;
    if (one === undefined) throw new Error('no check');
    expect(isImpaired(one)).toBe(!normal);
    expect(limbWord(one)).toBe(normal ? 'intact' : `strength ${grade} of 5`);
    expect(reckon(entries, { now: 0 }).problems.map(({ id }) => id)).toEqual(normal ? [] : ['right hand']);
    const text = textOf(soap(input(entries)));
    expect(text).toContain(`strength ${grade} of 5`);
    expect(/Motion intact/.test(text)).toBe(normal);
    expect(/Motion NOT intact/.test(text)).toBe(!moves);
  });
});

it.each(['six', 'nine'])('a grade of %s is no grade: the words are kept and no check is', (word) => {
  const entries = entriesOf(reader, [`right hand strength ${word} out of five`]);
  expect(entries.filter(({ kind }) => kind === 'csm')).toEqual([]);
  expect(entries.some(({ kind }) => kind === 'note')).toBe(true);
});
