// The linked grammar as what may still come after any part of any phrase, walked only where the next word leads.

import type { GrammarSet } from '../../jsgf/index.ts';
import type { Tag } from './island.ts';
import { ANY_SLOT, END, partsOf, sequenceOf, type Word } from './parts.ts';
import { type Rest, restMade, restOf, type Step } from './rest.ts';
import { stepsOf } from './walk.ts';

export interface Network {
  /** all root rules, none of them begun */
  readonly start: Rest;
  /** every word of the grammar; no phrase goes on with another */
  readonly vocabulary: ReadonlyMap<string, Word>;
}

/** What a phrase under way has passed that says or costs something, last first, each with what was before it. */
export interface Said {
  readonly tags: readonly Tag[];
  /** what the phrase costs up to here */
  readonly cost: number;
  readonly before: Said | null;
}

/** A phrase under way. */
export interface Thread {
  readonly rest: Rest;
  /** null where nothing was passed yet */
  readonly said: Said | null;
}

/** The phrases of every rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): Network {
  const { root, vocabulary } = partsOf(set, rules, slots);
  // A phrase brings its own end, so what would come after the root is never reached.
  return { start: restOf(sequenceOf([root]), 0, restMade(root, 0, null)), vocabulary };
}

/** What a walk found: the rule of a phrase that ends, the name of a slot, or the next word, and what comes after it. */
type Found = (what: string, thread: Thread) => void;

/** The phrases among these that may end here, in the order of the grammar. */
export const endsOf = (threads: readonly Thread[], found: Found): void => follow(threads, END, found);

/** What comes after the slots that may stand here, each with its rule's name, in the order of the grammar. */
export const afterSlots = (threads: readonly Thread[], found: Found): void =>
  follow(threads, ANY_SLOT, found);

/** What comes after this word, in the order of the grammar. */
export const afterWordOf = (threads: readonly Thread[], word: Word, found: Found): void =>
  follow(threads, word, found);

function follow(threads: readonly Thread[], key: Word, found: Found): void {
  for (const { rest, said } of threads) {
    if ((rest.signs & key.sign) === 0) continue;
    for (const step of stepsOf(rest, key)) found(step.what, { rest: step.rest, said: saidAfter(said, step) });
  }
}

function saidAfter(said: Said | null, { passed: { tags, costs } }: Step): Said | null {
  if (tags.length === 0 && costs.length === 0) return said;
  const before = said === null ? 0 : said.cost;
  return { tags, cost: costs.reduce((sum, one) => sum + one, before), before: said };
}
