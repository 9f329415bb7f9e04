// A network that lets its words be said in any order, each as likely as it is after the word before it: what was said in a
// shape that the grammar lacks fits it better than the grammar, and so does ordinary talk.

import type { Network } from './network.ts';
import { EDGE, type Pairs } from './pairs.ts';
import type { LikelyArc } from './word-graph.ts';

export interface LooseParts {
  /** how often one word follows another in what may be said */
  readonly said: Pairs;
  /** words that may come anywhere, each as likely as the others of its list, and the share that a list has of all words */
  readonly anywhere: readonly { readonly words: readonly string[]; readonly share: number }[];
  readonly canHear: (word: string) => boolean;
}

/** So many sentences' worth of each word's followers are unknown. */
const UNKNOWN = 8;
/** A pair is kept where it is said so often, and so many times as likely as its words in any order; what was heard is weighed by threes anyway. */
const OFTEN = 12;
const LIKELIER = 3;
/** What ends after a word that was never last. */
const ENDS = 0.02;
const LEAST = 0.01;
/** The power of how often a word is said. */
const RARE = 0.7;

const [START, ANY] = [0, 1];

/** State 1 is where any word may come; each other state is after one word. */
export function looseNetwork({ said, anywhere, canHear }: LooseParts): Network {
  const pairs = heardOf(said, canHear);
  const lists = anywhere.map(({ words, share }) => ({ words: words.filter(canHear), share }));
  const chances = chancesOf(pairs, lists);
  const words = [...chances.keys()];
  const states = new Map(words.map((word, index) => [word, index + 2]));
  const end = words.length + 2;
  const stateOf = (word: string): number => (word === EDGE ? START : (states.get(word) ?? ANY));
  const arcs: LikelyArc[] = words.map((word) => ({
    from: ANY,
    to: stateOf(word),
    word,
    chance: chances.get(word) ?? 0,
  }));
  const silent: Network['silent'][number][] = [];
  for (const word of [EDGE, ...words]) {
    const row = pairs.get(word) ?? new Map<string, number>();
    const all = [...row.values()].reduce((sum, count) => sum + count, 0);
    const from = stateOf(word);
    let kept = 0;
    for (const [next, count] of row) {
      const chance = count / (all + UNKNOWN);
      const anywhere = ((chances.get(next) ?? 0) * UNKNOWN) / (all + UNKNOWN);
      if (next === EDGE || count < OFTEN || chance < LIKELIER * anywhere) continue;
      kept += chance;
      arcs.push({ from, to: stateOf(next), word: next, chance });
    }
    const ends = word === EDGE ? 0 : Math.max(ENDS, (row.get(EDGE) ?? 0) / (all + UNKNOWN));
    if (ends > 0) silent.push({ from, to: end, chance: ends });
    silent.push({ from, to: ANY, chance: Math.max(LEAST, 1 - kept - ends) });
  }
  return { states: end + 1, end, arcs, silent };
}

/** Those of words that can be heard. */
function heardOf(said: Pairs, canHear: LooseParts['canHear']): Pairs {
  const isKnown = (word: string): boolean => word === EDGE || canHear(word);
  return new Map(
    [...said]
      .filter(([word]) => isKnown(word))
      .map(([word, row]) => [word, new Map([...row].filter(([next]) => isKnown(next)))]),
  );
}

/** How likely each word is anywhere: by a power of how often it is said, so that rare ones can be heard. */
function chancesOf(pairs: Pairs, lists: LooseParts['anywhere']): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const row of pairs.values())
    for (const [word, count] of row) if (word !== EDGE) counts.set(word, (counts.get(word) ?? 0) + count);
  const said = new Map([...counts].map(([word, count]) => [word, (count + LEAST) ** RARE]));
  const all = [...said.values()].reduce((sum, count) => sum + count, 0);
  const rest = 1 - lists.reduce((sum, { share }) => sum + share, 0);
  const chances = new Map([...said].map(([word, count]) => [word, (count / all) * rest]));
  for (const { words, share } of lists)
    for (const word of words) chances.set(word, (chances.get(word) ?? 0) + share / words.length);
  return chances;
}
