// How likely words are in one kind of talk, each after the one before it: what is said of a patient, and what is said besides.

import { EDGE, type Pairs } from './pairs.ts';

/** Of each word the natural logarithm of its chance; no words have none. A word that was never said has a small one. */
export type LikelyTalk = (words: readonly string[]) => readonly number[];

/** So many sentences' worth of each word's followers are as in the whole talk, whatever the word. */
const ANYWHERE = 10;
/** So many words' worth of the talk are any of the words that can be heard. */
const ANY = 300;

/** A talk of which the pairs were counted; `words` is how many different words can be heard at all. */
export function likelyTalk(pairs: Pairs, words: number): LikelyTalk {
  const counts = new Map<string, number>();
  const afters = new Map<string, number>();
  let all = 0;
  for (const [before, row] of pairs)
    for (const [word, count] of row) {
      afters.set(before, (afters.get(before) ?? 0) + count);
      if (word === EDGE) continue;
      counts.set(word, (counts.get(word) ?? 0) + count);
      all += count;
    }
  const anywhere = (word: string): number => ((counts.get(word) ?? 0) + ANY / words) / (all + ANY);
  return (said) =>
    said.map((word, at) => {
      const before = said[at - 1] ?? EDGE;
      const pair = pairs.get(before)?.get(word) ?? 0;
      return Math.log((pair + ANYWHERE * anywhere(word)) / ((afters.get(before) ?? 0) + ANYWHERE));
    });
}
