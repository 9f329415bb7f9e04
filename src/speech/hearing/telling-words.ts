// Words in which a mistake can hurt: sides, places, numbers, denials. They must be surer than others.

import type { GrammarSet } from '../../jsgf/index.ts';
import type { HeardWord } from '../engine/decoder.ts';
import { networkOf, wordsOf } from '../network/network.ts';

const SIDES = ['left', 'right'];
/** Words that deny, and those that a syllable turns round. */
const POLARITIES =
  "no not without denies stable unstable is isn't can can't regular irregular equal unequal either neither does doesn't".split(
    ' ',
  );
const PLACES = ['hearing.paired', 'hearing.pairs', 'hearing.single'];
const NUMBERS = ['hearing.digit', 'hearing.teen', 'hearing.tens'];
/** Words between the words of a place. */
const JOINS = new Set(['of', 'the', 'all']);

/** By the project's hearing grammar, those that can be heard. */
export function tellingWords(set: GrammarSet, canHear: (word: string) => boolean): ReadonlySet<string> {
  const ofRules = [...PLACES, ...NUMBERS].flatMap((rule) => wordsOf(networkOf({ set, canHear }, rule)));
  return new Set([...SIDES, ...POLARITIES, ...ofRules].filter((word) => canHear(word) && !JOINS.has(word)));
}

type Timed = Pick<HeardWord, 'word' | 'start' | 'end'>;

/** Whether one of two readings of the same sound has a telling word that the other lacks there: "a" for "the" is no other reading. */
export function differInTelling(
  one: readonly Timed[],
  other: readonly Timed[],
  telling: ReadonlySet<string>,
): boolean {
  const [own, theirs] = [one, other].map((words) => words.flatMap(withIsApart));
  return [lacking(own ?? [], theirs ?? []), lacking(theirs ?? [], own ?? [])].some((words) =>
    words.some(({ word }) => telling.has(word)),
  );
}

const lacking = (words: readonly Timed[], others: readonly Timed[]): readonly Timed[] =>
  words.filter(
    ({ word, start, end }) =>
      !others.some((other) => other.word === word && other.start < end && other.end > start),
  );

/** "Pulse's" is "pulse" and "is". */
const withIsApart = (timed: Timed): readonly Timed[] =>
  timed.word.endsWith("'s")
    ? [
        { ...timed, word: timed.word.slice(0, -2) },
        { ...timed, word: 'is' },
      ]
    : [timed];
