// A tree of phrases that grows only along the words that are really said, so reading costs the words and not the grammar.

import type { Tag } from './island.ts';
import {
  afterSlots,
  afterWordOf,
  endsOf,
  type Network,
  type Said,
  type Thread,
  type Threads,
  threadsOf,
} from './network.ts';

/** The end of a phrase, with all that its path through the grammar says. */
export interface Ending {
  readonly file: string;
  readonly rule: string;
  /** in the order spoken */
  readonly tags: readonly Tag[];
  readonly cost: number;
}

export interface Branch {
  readonly network: Network;
  readonly threads: Threads;
  readonly endings: readonly Ending[];
  /** null after a word of the grammar that no phrase goes on with here; no map at all before a word was asked after */
  grown: Map<string, Branch | null> | null;
  /** the branches after each slot that may stand here, null before it is known which may */
  slots: ReadonlyMap<string, Branch> | null;
}

/** The tree's root for a network. */
export const plantTree = (network: Network): Branch =>
  branchOf(network, [{ rest: network.start, said: null, cost: 0 }]);

/** The branch after one more word, or null where no phrase goes on with it. */
export function afterWord(branch: Branch, word: string): Branch | null {
  const known = branch.grown?.get(word);
  if (known !== undefined) return known;
  const said = branch.network.vocabulary.get(word);
  if (said === undefined) return null;
  const threads: Thread[] = [];
  afterWordOf(branch.threads, said, (_, thread) => threads.push(thread));
  const next = threads.length === 0 ? null : branchOf(branch.network, threads);
  branch.grown ??= new Map();
  branch.grown.set(said.text, next);
  return next;
}

/** The branches after each slot that may stand here, by the slot's rule, in the order of the grammar. */
export function branchesAfterSlots(branch: Branch): ReadonlyMap<string, Branch> {
  if (branch.slots !== null) return branch.slots;
  const bySlot = new Map<string, Thread[]>();
  afterSlots(branch.threads, (slot, thread) => {
    const threads = bySlot.get(slot);
    if (threads === undefined) bySlot.set(slot, [thread]);
    else threads.push(thread);
  });
  branch.slots = new Map([...bySlot].map(([slot, threads]) => [slot, branchOf(branch.network, threads)]));
  return branch.slots;
}

function branchOf(network: Network, all: readonly Thread[]): Branch {
  const threads = threadsOf(all);
  const endings: Ending[] = [];
  endsOf(threads, (rule, { said, cost }) => {
    const file = rule.slice(0, rule.lastIndexOf('.'));
    endings.push({ file, rule, tags: tagsOf(said), cost });
  });
  return { network, threads, endings, grown: null, slots: null };
}

function tagsOf(last: Said | null): readonly Tag[] {
  const tags: Tag[] = [];
  for (let said = last; said !== null; said = said.before) tags.unshift(...said.tags);
  return tags;
}
