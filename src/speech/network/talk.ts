// How likely words are in one kind of talk: what is said of a patient, and what is said besides.

import { EDGES } from './counts.ts';
import type { Triples } from './triples.ts';

/** Of each word the natural logarithm of its chance after those before it; no words have none. A word that was never said has a small one. */
export type LikelyTalk = (words: readonly string[]) => readonly number[];

/** A talk whose words were counted. */
export const likelyTalk =
  (talk: Triples): LikelyTalk =>
  (words) => {
    let [first, second] = [EDGES, EDGES];
    return words.map((word) => {
      const number = talk.numberOf(word);
      const chance = talk.chanceOf(first, second, number);
      [first, second] = [second, number];
      return chance;
    });
  };
