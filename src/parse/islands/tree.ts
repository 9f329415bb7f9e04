// A tree of phrases that grows only along the words that are really said, so reading costs the words and not the grammar.

import { BOUNDS, type Bound, type Tag } from './island.ts';
import { afterSlots, afterWordOf, endsOf, type Network, type Said, type Thread } from './network.ts';
import { ANY_SLOT, END } from './parts.ts';

/** The end of a phrase, with all that its path through the grammar says. */
export interface Ending {
  readonly file: string;
  readonly rule: string;
  /** in the order spoken */
  readonly tags: readonly Tag[];
  readonly cost: number;
  /** where it counts at all */
  readonly bounds: readonly Bound[];
}

export interface Branch {
  readonly network: Network;
  /** the phrases under way */
  readonly threads: readonly Thread[];
  /** the signs of all that any of them can go on with */
  readonly signs: number;
  readonly endings: readonly Ending[];
  /** null after a word whose sign is among the branch's and that no phrase goes on with; no map at all before there was one */
  grown: Map<string, Branch | null> | null;
  /** the branches after each slot that may stand here, null before it is known which may */
  slots: ReadonlyMap<string, Branch> | null;
}

/** The tree's root for a network. */
export const plantTree = (network: Network): Branch =>
  branchOf(network, [{ rest: network.start, said: null }]);

/** The branch after one more word, or null where no phrase goes on with it. */
export function afterWord(branch: Branch, word: string): Branch | null {
  const known = branch.grown?.get(word);
  if (known !== undefined) return known;
  const said = branch.network.vocabulary.get(word);
  if (said === undefined || (branch.signs & said.sign) === 0) return null;
  const threads: Thread[] = [];
  afterWordOf(branch.threads, said, (_, thread) => threads.push(thread));
  const next = threads.length === 0 ? null : branchOf(branch.network, threads);
  branch.grown ??= new Map();
  branch.grown.set(said.text, next);
  return next;
}

const NO_BRANCHES: ReadonlyMap<string, Branch> = new Map();

/** The branches after each slot that may stand here, by the slot's rule, in the order of the grammar. */
export function branchesAfterSlots(branch: Branch): ReadonlyMap<string, Branch> {
  if (branch.slots !== null) return branch.slots;
  if ((branch.signs & ANY_SLOT.sign) === 0) {
    branch.slots = NO_BRANCHES;
    return NO_BRANCHES;
  }
  const bySlot = new Map<string, Thread[]>();
  afterSlots(branch.threads, (slot, thread) => {
    const threads = bySlot.get(slot);
    if (threads === undefined) bySlot.set(slot, [thread]);
    else threads.push(thread);
  });
  branch.slots = new Map([...bySlot].map(([slot, threads]) => [slot, branchOf(branch.network, threads)]));
  return branch.slots;
}

function branchOf(network: Network, after: readonly Thread[]): Branch {
  // A list that grew one by one has room for more, and thousands of branches are kept.
  const threads = after.slice();
  const signs = threads.reduce((all, { rest }) => all | rest.signs, 0);
  const endings = (signs & END.sign) === 0 ? NO_ENDINGS : endingsOf(threads);
  return { network, threads, signs, endings, grown: null, slots: null };
}

const NO_ENDINGS: readonly Ending[] = [];

function endingsOf(threads: readonly Thread[]): readonly Ending[] {
  const endings: Ending[] = [];
  endsOf(threads, (rule, { said }) => {
    const file = rule.slice(0, rule.lastIndexOf('.'));
    const tags = tagsOf(said);
    endings.push({
      file,
      rule,
      tags,
      cost: said === null ? 0 : said.cost,
      bounds: boundsOf(tags),
    });
  });
  return endings.slice();
}

const NO_BOUNDS: readonly Bound[] = [];

function boundsOf(tags: readonly Tag[]): readonly Bound[] {
  const bounds = BOUNDS.filter((bound) => tags.some(({ key }) => key === bound));
  return bounds.length === 0 ? NO_BOUNDS : bounds;
}

function tagsOf(last: Said | null): readonly Tag[] {
  const parts: (readonly Tag[])[] = [];
  for (let said = last; said !== null; said = said.before) parts.push(said.tags);
  return parts.reverse().flat();
}
