// A network that lets its words be said in any order, each as likely as it is after the word before it: what was said in a
// shape that the grammar lacks fits it better than the grammar, and so does ordinary talk.

import type { Network } from './network.ts';
import { EDGE, type Pairs } from './pairs.ts';
import type { LikelyArc } from './word-graph.ts';

export interface LooseParts {
  /** what may be said, with how many sentences each is worth */
  readonly said: readonly { readonly pairs: Pairs; readonly worth: number }[];
  /** words of other talk, each as likely as the others, anywhere */
  readonly ordinary: readonly string[];
  readonly canHear: (word: string) => boolean;
}

/** Of what is said in no known order, so much is ordinary words. */
const ORDINARY = 0.15;
/** So many sentences' worth of each word's followers are unknown. */
const UNKNOWN = 1;
/** A pair is kept where it is said so often, and so many times as likely as its words in any order. */
const OFTEN = 2;
const LIKELIER = 3;
/** What ends after a word that was never last. */
const ENDS = 0.02;
const LEAST = 0.01;

const [START, ANY] = [0, 1];

/** State 1 is where any word may come; each other state is after one word. */
export function looseNetwork({ said, ordinary, canHear }: LooseParts): Network {
  const pairs = sumOf(said, canHear);
  const chances = chancesOf(pairs, ordinary.filter(canHear));
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

function sumOf(said: LooseParts['said'], canHear: LooseParts['canHear']): Pairs {
  const sum = new Map<string, Map<string, number>>();
  const known = (word: string): boolean => word === EDGE || canHear(word);
  for (const { pairs, worth } of said)
    for (const [word, row] of pairs) {
      if (!known(word)) continue;
      const all = sum.get(word) ?? new Map<string, number>();
      sum.set(word, all);
      for (const [next, count] of row) if (known(next)) all.set(next, (all.get(next) ?? 0) + count * worth);
    }
  return sum;
}

/** How likely each word is anywhere: by the root of how often it is said, so that rare ones can be heard. */
function chancesOf(pairs: Pairs, ordinary: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const row of pairs.values())
    for (const [word, count] of row) if (word !== EDGE) counts.set(word, (counts.get(word) ?? 0) + count);
  const roots = new Map([...counts].map(([word, count]) => [word, Math.sqrt(count + LEAST)]));
  const all = [...roots.values()].reduce((sum, root) => sum + root, 0);
  const chances = new Map([...roots].map(([word, root]) => [word, (root / all) * (1 - ORDINARY)]));
  for (const word of ordinary) chances.set(word, (chances.get(word) ?? 0) + ORDINARY / ordinary.length);
  return chances;
}
