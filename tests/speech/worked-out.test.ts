// What is listened for, kept as a text where the page is built, is the same when it is read. The networks are invented.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hearingSetup } from '../../src/replay/hearing-setup.ts';
import type { WorkedOut } from '../../src/speech/hearing/work-out.ts';
import { textOf, workedOutOf } from '../../src/speech/index.ts';
import { bothCounts, type Counts, countsOf, MANY, numbersOf } from '../../src/speech/network/counts.ts';
import { partedWords } from '../../src/speech/network/joined-words.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { says } from './says.ts';

const SAID: Network = {
  states: 4,
  end: 3,
  arcs: [
    { from: 0, to: 2, word: 'left_knee', chance: 0.75 },
    { from: 0, to: 1, word: 'right', chance: 0.25 },
    { from: 1, to: 2, word: 'knee', chance: 1 },
  ],
  silent: [{ from: 2, to: 3, chance: 0.001 }],
};
const EMPTY: Counts = { keys: new Float64Array(0), values: new Float32Array(0) };
const WORKED: WorkedOut = {
  kind: 'worked-out',
  said: SAID,
  anyOrder: { states: 2, end: 1, arcs: [{ from: 0, to: 1, word: 'knee', chance: 1 }], silent: [] },
  ways: new Map([
    ['left', ['L EH F T']],
    ['right', ['R AY T', 'R AY']],
    ['knee', ['N IY']],
  ]),
  telling: new Set(['left', 'right']),
  words: ['knee', 'right', 'left'],
  exam: countsOf(
    [{ sentences: ['right knee', 'left knee', 'knee'], worth: 0.5 }],
    numbersOf(['knee', 'right', 'left']),
  ),
  besides: EMPTY,
  heard: 3,
};

describe('what was worked out', () => {
  it('is read as it was written', () => {
    const { said, anyOrder, ...rest } = workedOutOf(textOf(WORKED));
    const { said: own, anyOrder: other, ...known } = WORKED;
    expect(rest).toEqual(known);
    for (const [read, written] of [
      [said, own],
      [anyOrder, other],
    ] as const) {
      const close = (chance: number) => expect.closeTo(chance, 4);
      expect(read).toEqual({
        ...written,
        arcs: written.arcs.map((arc) => ({ ...arc, chance: close(arc.chance) })),
        silent: written.silent.map((step) => ({ ...step, chance: close(step.chance) })),
      });
    }
  });

  it('keeps every count of three words, whatever follows whatever', () => {
    const word = fc.integer({ min: 0, max: 6 });
    const three = fc.tuple(word, word, word, fc.integer({ min: 1, max: 9 }));
    const key = ([first, second, third]: readonly number[]): number =>
      ((first ?? 0) * MANY + (second ?? 0)) * MANY + (third ?? 0);
    fc.assert(
      fc.property(fc.uniqueArray(three, { selector: key }), (threes) => {
        const sorted = threes.toSorted((one, other) => key(one) - key(other));
        const exam = {
          keys: Float64Array.from(sorted, key),
          values: Float32Array.from(sorted, ([, , , halves]) => halves / 2),
        };
        expect(workedOutOf(textOf({ ...WORKED, exam })).exam).toEqual(exam);
      }),
    );
  });

  it('of the project’s own files has its words, how they are said, and in which a mistake can hurt', () => {
    const { said, ways, telling, exam, besides } = workedOutOf(hearingSetup().worked);
    const parted = (word: string) =>
      partedWords([{ word, start: 0, end: 1, frames: 100, fit: 0 }], (one) => ways.get(one) ?? []);
    const texts = new Set(said.arcs.flatMap(({ word }) => parted(word).map((one) => one.word)));
    for (const word of ['left', 'knee', 'swollen', 'no', 'ninety']) {
      expect(texts.has(word), word).toBe(true);
      expect(ways.get(word)?.length, word).toBeGreaterThan(0);
    }
    expect(says(said, 'no')).toBe(true);
    expect([telling.has('left'), telling.has('swollen')]).toEqual([true, false]);
    expect(Math.min(exam.keys.length, besides.keys.length)).toBeGreaterThan(10_000);
  });
});

describe('counts of three words of one numbering', () => {
  it('add up', () => {
    const numbers = numbersOf(['left', 'knee', 'toe']);
    const of = (...sentences: readonly string[]) => countsOf([{ sentences, worth: 1 }], numbers);
    expect(bothCounts(of('left knee'), of('left knee', 'left toe'))).toEqual(
      of('left knee', 'left toe', 'left knee'),
    );
    expect(bothCounts(of('left knee'), of())).toEqual(of('left knee'));
  });
});
