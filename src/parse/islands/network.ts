// The linked grammar as what may still come after any part of any phrase, walked only where the next word leads.

import type { GrammarSet } from '../../jsgf/index.ts';
import { ANY_SLOT, beginsWith, END, type Part, partsOf, type Word } from './parts.ts';

/** What is still to be said of a phrase that has been begun. */
export type Rest =
  /** nothing: the phrase of this rule ends here */
  | { readonly type: 'accept'; readonly rule: string }
  /** the words of a token from the one at `at` on */
  | { readonly type: 'words'; readonly words: readonly string[]; readonly at: number; readonly next: Rest }
  /** the items of a sequence from the one at `at` on */
  | { readonly type: 'items'; readonly items: readonly Part[]; readonly at: number; readonly next: Rest }
  /** where a repeat comes round: once more, or on */
  | Loop;

export interface Loop {
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
  readonly tag: { readonly text: string; readonly before: Path['tag'] } | null;
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
  return { start: { type: 'items', items: [root], at: 0, next: { type: 'accept', rule: '' } }, vocabulary };
}

/** What a walk found: the rule of a phrase that ends, the name of a slot, or the next word, and what comes after it. */
type Found = (what: string, thread: Thread) => void;

/** What a walk looks for, and who is told of it. */
interface Walk {
  readonly key: Word;
  readonly found: Found;
}

/** The phrases among these that may end here, in the order of the grammar. */
export const endsOf = (threads: readonly Thread[], found: Found): void => walk(threads, { key: END, found });

/** What comes after the slots that may stand here, each with its rule's name, in the order of the grammar. */
export const afterSlots = (threads: readonly Thread[], found: Found): void =>
  walk(threads, { key: ANY_SLOT, found });

/** What comes after this word, in the order of the grammar. */
export const afterWordOf = (threads: readonly Thread[], word: Word, found: Found): void =>
  walk(threads, { key: word, found });

function walk(threads: readonly Thread[], looked: Walk): void {
  for (const { rest, path } of threads) go(looked, rest, path, null);
}

// The likelier a part is to lead nowhere, the earlier it is left: most can neither begin with the word nor be empty.
const leads = (part: Part, key: Word): boolean => part.mayBeEmpty || beginsWith(part, key);

function go(looked: Walk, rest: Rest, path: Path, round: Round | null): void {
  switch (rest.type) {
    case 'accept':
      if (looked.key === END) looked.found(rest.rule, { rest, path });
      break;
    case 'words':
      said(looked, rest.words, rest.at, rest.next, path);
      break;
    case 'items':
      itemsFrom(looked, rest.items, rest.at, rest.next, path, round);
      break;
    case 'loop':
      if (goneRound(round, rest)) break;
      if (leads(rest.item, looked.key)) enter(looked, rest.item, rest, path, { loop: rest, before: round });
      go(looked, rest.next, path, { loop: rest, before: round });
  }
}

function said(looked: Walk, words: readonly string[], at: number, next: Rest, path: Path): void {
  const { key } = looked;
  if (words[at] !== key.text) return;
  const rest: Rest = at + 1 === words.length ? next : { type: 'words', words, at: at + 1, next };
  looked.found(key.text, { rest, path });
}

function itemsFrom(
  looked: Walk,
  items: readonly Part[],
  from: number,
  next: Rest,
  path: Path,
  round: Round | null,
): void {
  for (let at = from; at < items.length; at++) {
    const item = items[at];
    if (item === undefined || !leads(item, looked.key)) return;
    // An option without this word is passed as if it were not there.
    if (item.type === 'optional' && !beginsWith(item, looked.key) && isPlain(item)) continue;
    const rest: Rest = at + 1 === items.length ? next : { type: 'items', items, at: at + 1, next };
    enter(looked, item, rest, path, round);
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
      itemsFrom(looked, part.items, 0, next, path, round);
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
      for (const item of part.items) go(looked, { type: 'loop', item, next }, path, round);
      break;
    case 'phrase':
      for (const item of part.items) enter(looked, item, { type: 'accept', rule: part.text }, path, round);
      break;
    case 'words':
      said(looked, part.words, 0, next, path);
      break;
    case 'slot':
      if (looked.key === ANY_SLOT) looked.found(part.text, { rest: next, path });
      break;
    case 'tag':
      go(looked, next, { tag: { text: part.text, before: path.tag }, cost: path.cost }, round);
      break;
    case 'empty':
      go(looked, next, path, round);
  }
}

function goneRound(round: Round | null, loop: Loop): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}
