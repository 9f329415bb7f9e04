// Words in which a mistake can hurt, and the words that each might have been: sides, places, numbers, denials.

import type { GrammarSet } from '../../jsgf/index.ts';
import { networkOf, wordsOf } from '../network/network.ts';

/** Of a word, those of its kind, itself among them; none where a mistake in it does no harm. */
export type NearWords = ReadonlyMap<string, readonly string[]>;

const SIDES = ['left', 'right'];
/** Words that differ by a syllable and turn a statement round. */
const POLARITIES = [
  'stable unstable',
  "is isn't",
  "can can't",
  'regular irregular',
  'equal unequal',
  'either neither',
  "does doesn't",
].map((pair) => pair.split(' '));
/** What a "no" sounds like, and what it may be taken for. */
const DENIALS = ['no', 'in', 'and', 'an', 'on', 'now', 'a', 'or'];
const PLACES = ['hearing.paired', 'hearing.pairs', 'hearing.single'];
const NUMBERS = ['hearing.digit', 'hearing.teen', 'hearing.tens'];
/** Words between the words of a place, and those of another kind. */
const JOINS = new Set(['of', 'the', 'all', ...SIDES]);

/** The kinds by the project's hearing grammar. */
export function nearWords(set: GrammarSet, canHear: (word: string) => boolean): NearWords {
  const ofRules = (rules: readonly string[]): readonly string[] => [
    ...new Set(rules.flatMap((rule) => wordsOf(networkOf({ set, canHear }, rule)))),
  ];
  const numbers = ofRules(NUMBERS);
  const places = ofRules(PLACES).filter((word) => !JOINS.has(word) && !numbers.includes(word));
  const near = new Map<string, readonly string[]>();
  for (const kind of [SIDES, ...POLARITIES, numbers, places]) for (const word of kind) near.set(word, kind);
  near.set('no', DENIALS);
  return near;
}
