// The linked grammar as what may still come after any part of any phrase, walked only where the next word leads.

import type { Expansion, GrammarSet } from '../../jsgf/index.ts';
import { type Openings, openingsOf, SLOT } from './openings.ts';

/** What is still to be said of a phrase that has been begun. */
export type Rest =
  /** nothing: the phrase of this rule ends here */
  | { readonly type: 'accept'; readonly rule: string }
  | { readonly type: 'rule'; readonly name: string; readonly next: Rest }
  /** the words of a token from the one at `at` on */
  | { readonly type: 'words'; readonly words: readonly string[]; readonly at: number; readonly next: Rest }
  /** the items of a sequence from the one at `at` on */
  | { readonly type: 'items'; readonly items: readonly Expansion[]; readonly at: number; readonly next: Rest }
  /** where a repeat comes round: once more, or on */
  | Loop;

export interface Loop {
  readonly type: 'loop';
  readonly item: Expansion;
  readonly next: Rest;
}

export interface Network {
  readonly set: GrammarSet;
  /** rules that a reader in code stands for */
  readonly slots: ReadonlySet<string>;
  readonly openings: Openings;
  /** one for each root rule */
  readonly starts: readonly Rest[];
  /** every word of the grammar; no phrase goes on with another */
  readonly vocabulary: ReadonlySet<string>;
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
  const openings = openingsOf(set, slots);
  const starts = rules.map((name): Rest => ({ type: 'rule', name, next: { type: 'accept', rule: name } }));
  return { set, slots, openings, starts, vocabulary: vocabularyOf(set, openings) };
}

function vocabularyOf(set: GrammarSet, { wordsOf }: Openings): ReadonlySet<string> {
  const words = new Set<string>();
  const note = (part: Expansion): void => {
    if (part.type === 'token') for (const word of wordsOf(part)) words.add(word);
    else if (part.type === 'sequence') part.items.forEach(note);
    else if (part.type === 'alternatives') for (const { item } of part.choices) note(item);
    else if (part.type === 'optional' || part.type === 'repeat') note(part.item);
  };
  for (const { expansion } of set.rules.values()) note(expansion);
  return words;
}

/** The end of a phrase, asked for in place of a word; no word is empty. */
const END = '';

/** What a walk found: the rule of a phrase that ends, the name of a slot, or the next word, and what comes after it. */
type Found = (what: string, thread: Thread) => void;

/** The phrases among these that may end here, in the order of the grammar. */
export const endsOf = (network: Network, threads: readonly Thread[], found: Found): void =>
  walk(network, threads, END, found);

/** What comes after the slots that may stand here, each with its rule's name, in the order of the grammar. */
export const afterSlots = (network: Network, threads: readonly Thread[], found: Found): void =>
  walk(network, threads, SLOT, found);

/** What comes after this word, in the order of the grammar. */
export const afterWordOf = (network: Network, threads: readonly Thread[], word: string, found: Found): void =>
  walk(network, threads, word, found);

// The likelier a part is to lead nowhere, the earlier it is left: alternatives are looked up by the word.
function walk({ set, slots, openings }: Network, threads: readonly Thread[], key: string, found: Found) {
  const go = (rest: Rest, path: Path, round: Round | null): void => {
    switch (rest.type) {
      case 'accept':
        if (key === END) found(rest.rule, { rest, path });
        break;
      case 'words':
        said(rest.words, rest.at, rest.next, path);
        break;
      case 'rule':
        ruled(rest.name, rest.next, path, round);
        break;
      case 'items':
        itemsFrom(rest.items, rest.at, rest.next, path, round);
        break;
      case 'loop':
        if (goneRound(round, rest)) break;
        enter(rest.item, rest, path, { loop: rest, before: round });
        go(rest.next, path, { loop: rest, before: round });
    }
  };
  const said = (words: readonly string[], at: number, next: Rest, path: Path): void => {
    if (words[at] !== key) return;
    const rest: Rest = at + 1 === words.length ? next : { type: 'words', words, at: at + 1, next };
    found(key, { rest, path });
  };
  const ruled = (name: string, next: Rest, path: Path, round: Round | null): void => {
    if (slots.has(name)) {
      if (key === SLOT) found(name, { rest: next, path });
      return;
    }
    const rule = set.rules.get(name);
    if (rule !== undefined) enter(rule.expansion, next, path, round);
  };
  const itemsFrom = (
    items: readonly Expansion[],
    at: number,
    next: Rest,
    path: Path,
    round: Round | null,
  ): void => {
    const item = items[at];
    if (item === undefined) go(next, path, round);
    else
      enter(item, at + 1 === items.length ? next : { type: 'items', items, at: at + 1, next }, path, round);
  };
  const enter = (part: Expansion, next: Rest, path: Path, round: Round | null): void => {
    switch (part.type) {
      case 'sequence':
        itemsFrom(part.items, 0, next, path, round);
        break;
      case 'alternatives':
        for (const { weight, item } of openings.choicesFor(part, key))
          enter(item, next, weighed(path, weight), round);
        break;
      case 'optional':
        enter(part.item, next, path, round);
        go(next, path, round);
        break;
      case 'repeat': {
        const loop: Loop = { type: 'loop', item: part.item, next };
        if (part.min === 0) go(loop, path, round);
        else enter(part.item, loop, path, round);
        break;
      }
      case 'token': {
        const words = openings.wordsOf(part);
        if (words.length === 0) go(next, path, round);
        else said(words, 0, next, path);
        break;
      }
      case 'rule':
        ruled(part.name, next, path, round);
        break;
      case 'tag':
        go(next, { tag: { text: part.text, before: path.tag }, cost: path.cost }, round);
        break;
      case 'null':
        go(next, path, round);
    }
  };
  for (const { rest, path } of threads) go(rest, path, null);
}

function goneRound(round: Round | null, loop: Loop): boolean {
  for (let at = round; at !== null; at = at.before) if (at.loop === loop) return true;
  return false;
}

// A weight below one makes a phrase less likely than another reading of the same words: it costs its logarithm.
const weighed = (path: Path, weight: number): Path =>
  weight >= 1 ? path : { tag: path.tag, cost: path.cost - Math.log10(weight) };
