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

/** The tags of a phrase under way, last first, each with those before it. */
export interface Said {
  readonly tags: readonly Tag[];
  readonly before: Said | null;
}

/** A phrase under way. */
export interface Thread {
  readonly rest: Rest;
  readonly said: Said | null;
  readonly cost: number;
}

/** The phrases of every rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): Network {
  const { root, vocabulary } = partsOf(set, rules, slots);
  // A phrase brings its own end, so what would come after the root is never reached.
  return { start: restOf(sequenceOf([root]), 0, restMade(root, 0, null)), vocabulary };
}

/** What a walk found: the rule of a phrase that ends, the name of a slot, or the next word, and what comes after it. */
type Found = (what: string, thread: Thread) => void;

/** Phrases under way together, with the signs of each side by side, since most are asked in vain. */
export interface Threads {
  readonly all: readonly Thread[];
  readonly signs: readonly number[];
}

export const threadsOf = (all: readonly Thread[]): Threads => ({
  all,
  signs: all.map(({ rest }) => rest.signs),
});

/** The phrases among these that may end here, in the order of the grammar. */
export const endsOf = (threads: Threads, found: Found): void => follow(threads, END, found);

/** What comes after the slots that may stand here, each with its rule's name, in the order of the grammar. */
export const afterSlots = (threads: Threads, found: Found): void => follow(threads, ANY_SLOT, found);

/** What comes after this word, in the order of the grammar. */
export const afterWordOf = (threads: Threads, word: Word, found: Found): void => follow(threads, word, found);

function follow({ all, signs }: Threads, key: Word, found: Found): void {
  for (let i = 0; i < signs.length; i++) {
    const thread = ((signs[i] ?? 0) & key.sign) === 0 ? undefined : all[i];
    if (thread === undefined) continue;
    for (const step of stepsOf(thread.rest, key)) found(step.what, after(thread, step));
  }
}

function after({ said, cost }: Thread, { rest, passed }: Step): Thread {
  const { tags, costs } = passed;
  return {
    rest,
    said: tags.length === 0 ? said : { tags, before: said },
    cost: costs.reduce((sum, one) => sum + one, cost),
  };
}
