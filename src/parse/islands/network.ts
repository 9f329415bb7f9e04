// The linked grammar as what may still come after any part of any phrase, walked only where the next word leads. What comes
// after a word is worked out once for each rest of a phrase, however many ways led there.

import type { GrammarSet } from '../../jsgf/index.ts';
import type { Tag } from './island.ts';
import { ANY_SLOT, beginsWith, END, type Part, partsOf, sequenceOf, type Word } from './parts.ts';

/** What is still to be said of a phrase that has been begun. There is one for each place of the grammar, its callers told apart. */
export interface Rest {
  /**
   * A sequence, of which the items from `at` on are left; a token, of which the words from `at` on are left; a repeat, which
   * comes round once more or not; or a phrase, which ends here.
   */
  readonly part: Part;
  readonly at: number;
  /** what comes after that part; null after a phrase */
  readonly next: Rest | null;
  /** the signs of all that it can go on with, `END`'s among them where the phrase may end here */
  readonly signs: number;
  /** the rests that this one comes after, by their part and by how far that was said; null before there are any */
  inner: Map<Part, Rest[]> | null;
  /** what was found to come after a word so far; null before one was asked for */
  steps: Map<Word, readonly Step[]> | null;
}

/** One way on from a rest. */
interface Step {
  /** the rule of a phrase that ends, the name of a slot, or the word */
  readonly what: string;
  readonly rest: Rest;
  readonly passed: Passed;
}

/** What a way through the grammar collects: its tags in order, and what each unlikely choice costs. */
interface Passed {
  readonly tags: readonly Tag[];
  readonly costs: readonly number[];
}

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

/** The loops on the way since the last word: a repeat of something that may be empty would otherwise go round for ever. */
interface Round {
  readonly loop: Rest;
  readonly before: Round | null;
}

/** The phrases of every rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): Network {
  const { root, vocabulary } = partsOf(set, rules, slots);
  // A phrase brings its own end, so what would come after the root is never reached.
  return { start: restOf(sequenceOf([root]), 0, restMade(root, 0, null)), vocabulary };
}

/** What is left of a part from `at` on, and then `next`: the same one whenever it is asked for. */
function restOf(part: Part, at: number, next: Rest): Rest {
  next.inner ??= new Map();
  let rests = next.inner.get(part);
  if (rests === undefined) {
    rests = [];
    next.inner.set(part, rests);
  }
  const known = rests[at];
  if (known !== undefined) return known;
  const made = restMade(part, at, next);
  rests[at] = made;
  return made;
}

const restMade = (part: Part, at: number, next: Rest | null): Rest => ({
  part,
  at,
  next,
  signs: next === null ? END.sign : signsOf(part, at, next),
  inner: null,
  steps: null,
});

function signsOf(part: Part, at: number, next: Rest): number {
  switch (part.type) {
    case 'sequence':
      return signsFrom(part, at, next);
    case 'repeat':
      return part.signs | next.signs;
    case 'words':
      return part.words[at]?.sign ?? 0;
    default:
      return END.sign;
  }
}

/** The signs of all that the items from `at` on can begin with, or what comes next where they may be passed. */
function signsFrom({ tails }: Part, at: number, next: Rest): number {
  const tail = tails[at];
  if (tail === undefined) return next.signs;
  return tail.mayBeEmpty ? tail.signs | next.signs : tail.signs;
}

const itemsFrom = (sequence: Part, at: number, next: Rest): Rest =>
  at === sequence.items.length ? next : restOf(sequence, at, next);

const wordsFrom = (token: Part, at: number, next: Rest): Rest =>
  at === token.words.length ? next : restOf(token, at, next);

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

function stepsOf(rest: Rest, key: Word): readonly Step[] {
  rest.steps ??= new Map();
  const known = rest.steps.get(key);
  if (known !== undefined) return known;
  const steps: Step[] = [];
  go({ key, steps }, rest, NOTHING_PASSED, null);
  rest.steps.set(key, steps);
  return steps;
}

/** What a walk looks for, and what it found. */
interface Walk {
  readonly key: Word;
  readonly steps: Step[];
}

const NOTHING_PASSED: Passed = { tags: [], costs: [] };

const tagged = ({ tags, costs }: Passed, more: readonly Tag[]): Passed => ({
  tags: [...tags, ...more],
  costs,
});

const weighed = ({ tags, costs }: Passed, cost: number): Passed => ({ tags, costs: [...costs, cost] });

// The likelier a part is to lead nowhere, the earlier it is left: most can neither begin with the word nor be empty.
const leads = (part: Part, key: Word): boolean => part.mayBeEmpty || beginsWith(part, key);

function go(walk: Walk, rest: Rest, passed: Passed, round: Round | null): void {
  if ((rest.signs & walk.key.sign) === 0) return;
  const { part, at, next } = rest;
  if (next === null) return;
  switch (part.type) {
    case 'phrase':
      if (walk.key === END) walk.steps.push({ what: part.rule, rest, passed });
      break;
    case 'words':
      say(walk, part, at, next, passed);
      break;
    case 'sequence':
      goOn(walk, part, at, next, passed, round);
      break;
    case 'repeat': {
      if (goneRound(round, rest)) break;
      const here = { loop: rest, before: round };
      for (const item of part.items) if (leads(item, walk.key)) enter(walk, item, rest, passed, here);
      go(walk, next, passed, here);
    }
  }
}

function say(walk: Walk, token: Part, at: number, next: Rest, passed: Passed): void {
  const { key, steps } = walk;
  if (token.words[at] === key) steps.push({ what: key.text, rest: wordsFrom(token, at + 1, next), passed });
}

function goOn(
  walk: Walk,
  sequence: Part,
  from: number,
  next: Rest,
  passed: Passed,
  round: Round | null,
): void {
  const { items } = sequence;
  const { key } = walk;
  for (let at = from; at < items.length; at++) {
    const item = items[at];
    if (item === undefined) return;
    const begins = beginsWith(item, key);
    // An option without this word is passed as if it were not there.
    if (!begins && item.type === 'optional' && isPlain(item)) continue;
    const leadsOn = item.mayBeEmpty && (signsFrom(sequence, at + 1, next) & key.sign) !== 0;
    if (begins || leadsOn) enter(walk, item, itemsFrom(sequence, at + 1, next), passed, round);
    return;
  }
  go(walk, next, passed, round);
}

// An option of something that may be empty itself can be passed in two ways.
const isPlain = ({ items }: Part): boolean => items[0]?.mayBeEmpty === false;

/** Goes into a part that leads on (see `leads`). */
function enter(walk: Walk, part: Part, next: Rest, passed: Passed, round: Round | null): void {
  switch (part.type) {
    case 'sequence':
      goOn(walk, part, 0, next, passed, round);
      break;
    case 'alternatives':
      for (const { cost, item } of part.byWord.get(walk.key.text) ?? part.empty)
        enter(walk, item, next, cost === 0 ? passed : weighed(passed, cost), round);
      break;
    case 'optional':
      for (const item of part.items) if (leads(item, walk.key)) enter(walk, item, next, passed, round);
      go(walk, next, passed, round);
      break;
    case 'repeat':
      go(walk, restOf(part, 0, next), passed, round);
      break;
    case 'phrase':
      for (const item of part.items) enter(walk, item, restOf(part, 0, next), passed, round);
      break;
    case 'words':
      say(walk, part, 0, next, passed);
      break;
    case 'slot':
      if (walk.key === ANY_SLOT) walk.steps.push({ what: part.rule, rest: next, passed });
      break;
    case 'tag':
      go(walk, next, tagged(passed, part.tags), round);
      break;
    case 'empty':
      go(walk, next, passed, round);
  }
}

function goneRound(round: Round | null, loop: Rest): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}
