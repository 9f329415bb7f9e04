// Words in which a mistake can hurt: sides, places, numbers, denials. They must be surer than others.

import type { GrammarSet } from '../../jsgf/index.ts';
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
