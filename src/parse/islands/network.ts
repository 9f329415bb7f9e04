// The linked grammar as what may still come after any part of any phrase, walked only where the next word leads.

import type { GrammarSet } from '../../jsgf/index.ts';
import type { Tag } from './island.ts';
import { ANY_SLOT, beginsWith, END, type Part, partsOf, sequenceOf, type Word } from './parts.ts';

/** What is still to be said of a phrase that has been begun. */
export type Rest = Accept | RestOfWords | RestOfItems | Loop;

interface Begun {
  /** the signs of all that it can go on with, `END`'s among them where the phrase may end here */
  readonly signs: number;
}

/** Nothing: the phrase of this rule ends here. */
interface Accept extends Begun {
  readonly type: 'accept';
  readonly rule: string;
}

/** The words of a token from the one at `at` on. */
interface RestOfWords extends Begun {
  readonly type: 'words';
  readonly words: readonly Word[];
  readonly at: number;
  readonly next: Rest;
}

/** The items of a sequence from the one at `at` on. */
interface RestOfItems extends Begun {
  readonly type: 'items';
  readonly sequence: Part;
  readonly at: number;
  readonly next: Rest;
}

/** Where a repeat comes round: once more, or on. */
interface Loop extends Begun {
  readonly type: 'loop';
  readonly item: Part;
  readonly next: Rest;
}

export interface Network {
  /** all root rules, none of them begun */
  readonly start: Rest;
  /** every word of the grammar; no phrase goes on with another */
  readonly vocabulary: ReadonlyMap<string, Word>;
}

/** What a path through the grammar has collected: its tags (last first), each with the words before it, and its cost. */
export interface Path {
  readonly tag: { readonly said: readonly Tag[]; readonly before: Path['tag'] } | null;
  readonly cost: number;
}

/** A phrase under way. */
export interface Thread {
  readonly rest: Rest;
  readonly path: Path;
}

/** The loops on the way since the last word: a repeat of something that may be empty would otherwise go round for ever. */
interface Round {
  readonly loop: Loop;
  readonly before: Round | null;
}

/** The phrases of every rule in `rules`; rules named in `slots` are left open for a reader in code. */
export function buildNetwork(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): Network {
  const { root, vocabulary } = partsOf(set, rules, slots);
  // A phrase brings its own end, so what would come after the root is never reached.
  return { start: restOfItems(sequenceOf([root]), 0, acceptOf('')), vocabulary };
}

const acceptOf = (rule: string): Rest => ({ type: 'accept', signs: END.sign, rule });

function restOfItems(sequence: Part, at: number, next: Rest): Rest {
  if (at === sequence.items.length) return next;
  return { type: 'items', signs: signsFrom(sequence, at, next), sequence, at, next };
}

/** The signs of all that the items from `at` on can begin with, or what comes next where they may be passed. */
function signsFrom({ tails }: Part, at: number, next: Rest): number {
  const tail = tails[at];
  if (tail === undefined) return next.signs;
  return tail.mayBeEmpty ? tail.signs | next.signs : tail.signs;
}

function restOfWords(words: readonly Word[], at: number, next: Rest): Rest {
  const word = words[at];
  return word === undefined ? next : { type: 'words', signs: word.sign, words, at, next };
}

/** What a walk found: the rule of a phrase that ends, the name of a slot, or the next word, and what comes after it. */
type Found = (what: string, thread: Thread) => void;

/** What a walk looks for, and who is told of it. */
interface Walk {
  readonly key: Word;
  readonly found: Found;
}

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
export const endsOf = (threads: Threads, found: Found): void => walk(threads, { key: END, found });

/** What comes after the slots that may stand here, each with its rule's name, in the order of the grammar. */
export const afterSlots = (threads: Threads, found: Found): void => walk(threads, { key: ANY_SLOT, found });

/** What comes after this word, in the order of the grammar. */
export const afterWordOf = (threads: Threads, word: Word, found: Found): void =>
  walk(threads, { key: word, found });

function walk({ all, signs }: Threads, looked: Walk): void {
  const { sign } = looked.key;
  for (let i = 0; i < signs.length; i++) {
    const thread = ((signs[i] ?? 0) & sign) === 0 ? undefined : all[i];
    if (thread !== undefined) go(looked, thread.rest, thread.path, null);
  }
}

// The likelier a part is to lead nowhere, the earlier it is left: most can neither begin with the word nor be empty.
const leads = (part: Part, key: Word): boolean => part.mayBeEmpty || beginsWith(part, key);

function go(looked: Walk, rest: Rest, path: Path, round: Round | null): void {
  if ((rest.signs & looked.key.sign) === 0) return;
  switch (rest.type) {
    case 'accept':
      if (looked.key === END) looked.found(rest.rule, { rest, path });
      break;
    case 'words':
      said(looked, rest.words, rest.at, rest.next, path);
      break;
    case 'items':
      itemsFrom(looked, rest.sequence, rest.at, rest.next, path, round);
      break;
    case 'loop':
      if (goneRound(round, rest)) break;
      if (leads(rest.item, looked.key)) enter(looked, rest.item, rest, path, { loop: rest, before: round });
      go(looked, rest.next, path, { loop: rest, before: round });
  }
}

function said(looked: Walk, words: readonly Word[], at: number, next: Rest, path: Path): void {
  if (words[at] === looked.key)
    looked.found(looked.key.text, { rest: restOfWords(words, at + 1, next), path });
}

function itemsFrom(
  looked: Walk,
  sequence: Part,
  from: number,
  next: Rest,
  path: Path,
  round: Round | null,
): void {
  const { items } = sequence;
  const { key } = looked;
  for (let at = from; at < items.length; at++) {
    const item = items[at];
    if (item === undefined) return;
    const begins = beginsWith(item, key);
    // An option without this word is passed as if it were not there.
    if (!begins && item.type === 'optional' && isPlain(item)) continue;
    const leadsOn = item.mayBeEmpty && (signsFrom(sequence, at + 1, next) & key.sign) !== 0;
    if (begins || leadsOn) enter(looked, item, restOfItems(sequence, at + 1, next), path, round);
    return;
  }
  go(looked, next, path, round);
}

// An option of something that may be empty itself can be passed in two ways.
const isPlain = ({ items }: Part): boolean => items[0]?.mayBeEmpty === false;

/** Goes into a part that leads on (see `leads`). */
function enter(looked: Walk, part: Part, next: Rest, path: Path, round: Round | null): void {
  switch (part.type) {
    case 'sequence':
      itemsFrom(looked, part, 0, next, path, round);
      break;
    case 'alternatives':
      for (const { cost, item } of part.byWord.get(looked.key.text) ?? part.empty)
        enter(looked, item, next, cost === 0 ? path : { tag: path.tag, cost: path.cost + cost }, round);
      break;
    case 'optional':
      for (const item of part.items) if (leads(item, looked.key)) enter(looked, item, next, path, round);
      go(looked, next, path, round);
      break;
    case 'repeat':
      for (const item of part.items)
        go(looked, { type: 'loop', signs: item.signs | next.signs, item, next }, path, round);
      break;
    case 'phrase':
      for (const item of part.items) enter(looked, item, acceptOf(part.rule), path, round);
      break;
    case 'words':
      said(looked, part.words, 0, next, path);
      break;
    case 'slot':
      if (looked.key === ANY_SLOT) looked.found(part.rule, { rest: next, path });
      break;
    case 'tag':
      go(looked, next, { tag: { said: part.tags, before: path.tag }, cost: path.cost }, round);
      break;
    case 'empty':
      go(looked, next, path, round);
  }
}

function goneRound(round: Round | null, loop: Loop): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}
