// Of all words that were finished on any way through two networks, those that fit the sound best in an order in which people say
// them; and of each, how likely it is against all others.

import { FRAMES, type HeardWord } from '../engine/decoder.ts';
import type { WordExit } from '../engine/word-exits.ts';
import { JOIN } from '../network/joined-words.ts';
import type { Triples } from '../network/triples.ts';
import { CALM, type Passed, type Step, waysThrough } from './ways.ts';

export interface LikelyWord extends HeardWord {
  /** 0 to 1: how likely it was said then, against whatever else may have been */
  readonly sure: number;
}

export interface Likeliest {
  /** in the order said; joined ones are still joined */
  readonly words: readonly LikelyWord[];
  /** the logarithm of its chance, but for what all ways through the same sound have in common */
  readonly score: number;
}

/** The likeliest way through; null where none leads through. */
export function likeliest(exits: readonly WordExit[], order: Triples): Likeliest | null {
  const end = exits.reduce((most, { last }) => Math.max(most, last), -1) + 1;
  if (end === 0) return null;
  const { passed, last, score, all } = waysThrough(stepsByFrame(exits, order, end), order);
  if (last === null) return null;
  const sureness = surenessOf(passed, all);
  const steps: Step[] = [];
  for (let at = last; at.step !== null && at.from !== null; at = at.from) steps.unshift(at.step);
  const words = steps.flatMap(({ exit: { word, first, last: to, fit } }) =>
    word === ''
      ? []
      : [
          {
            word,
            start: first / FRAMES,
            end: (to + 1) / FRAMES,
            frames: to + 1 - first,
            fit,
            sure: sureness(word, (first + to) / 2),
          },
        ],
  );
  return { words, score: score * CALM };
}

/** The likeliest way through these words, as they were heard, and the pauses between them. */
export const likeliestOf = (
  words: readonly HeardWord[],
  exits: readonly WordExit[],
  order: Triples,
): Likeliest | null => {
  const said = new Set(
    words.map(({ word, start, frames }) => `${word} ${Math.round(start * FRAMES)} ${frames}`),
  );
  const own = exits.filter(
    ({ word, first, last }) => word === '' || said.has(`${word} ${first} ${last + 1 - first}`),
  );
  return likeliest(own, order);
};

function stepsByFrame(exits: readonly WordExit[], order: Triples, end: number): readonly (readonly Step[])[] {
  const numbers = new Map<string, readonly number[]>([['', []]]);
  const numbersOf = (word: string): readonly number[] => {
    const known = numbers.get(word) ?? word.split(JOIN).map((one) => order.numberOf(one));
    numbers.set(word, known);
    return known;
  };
  const steps: Step[][] = Array.from({ length: end }, () => []);
  for (const exit of exits) steps[exit.first]?.push({ exit, numbers: numbersOf(exit.word) });
  return steps;
}

/** Of a word at a frame: all ways on which it is said then. */
function surenessOf(passed: readonly Passed[], all: number): (word: string, frame: number) => number {
  const byWord = new Map<
    string,
    { readonly first: number; readonly last: number; readonly share: number }[]
  >();
  for (const { from, to, step, calm } of passed) {
    const share = Math.exp(from.before + calm + to.after - all);
    if (step.exit.word === '' || !(share > NO_SHARE)) continue;
    const { first, last } = step.exit;
    for (const word of step.exit.word.split(JOIN).map(withoutShortIs)) {
      const known = byWord.get(word) ?? [];
      known.push({ first, last, share });
      byWord.set(word, known);
    }
  }
  const sureOf = (word: string, frame: number): number =>
    (byWord.get(word) ?? [])
      .filter(({ first, last }) => first <= frame && last >= frame)
      .reduce((sum, { share }) => sum + share, 0);
  return (joined, frame) =>
    Math.min(1, ...joined.split(JOIN).map((word) => sureOf(withoutShortIs(word), frame)));
}

const NO_SHARE = 1e-6;

/** "Pulse's ninety" and "pulse is ninety" say the same. */
const withoutShortIs = (word: string): string => word.replace(/'s$/, '');
