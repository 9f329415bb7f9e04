// The words that a part of the grammar can begin with, worked out once for each part, so that a walk looks only where a word leads.

import type { Choice, Expansion, GrammarSet } from '../../jsgf/index.ts';
import { lateContraction } from '../contraction.ts';
import { splitWord } from '../split-word.ts';

/** Stands among the words for any slot that is read in code; no word has this sign. */
export const SLOT = '<>';

export interface Opening {
  /** every word it can begin with, and `SLOT` where a slot can stand first */
  readonly words: Pick<ReadonlySet<string>, 'has' | 'keys'>;
  /** true where it may be passed without a word */
  readonly mayBeEmpty: boolean;
}

/** The choices of a part by the word that they can begin with, each list in the order written. */
interface Choices {
  readonly byWord: ReadonlyMap<string, readonly Choice[]>;
  /** those that may be empty; they stand in the lists of `byWord` too */
  readonly empty: readonly Choice[];
}

export interface Openings {
  /** the plain words of a token of the grammar */
  wordsOf(token: Expansion & { readonly type: 'token' }): readonly string[];
  /** the choices that can begin with this word or be empty, in the order written */
  choicesFor(alternatives: Expansion & { readonly type: 'alternatives' }, word: string): readonly Choice[];
}

const NOTHING: ReadonlySet<string> = new Set();

/** The openings of a grammar's parts; rules named in `slots` are left to a reader in code. */
export function openingsOf(set: GrammarSet, slots: ReadonlySet<string>): Openings {
  const tokens = new Map<Expansion, readonly string[]>();
  const openings = new Map<Expansion, Opening>();
  const choices = new Map<Expansion, Choices>();

  const wordsOf: Openings['wordsOf'] = (token) => {
    const known = tokens.get(token);
    if (known !== undefined) return known;
    const words = lateContraction(token.text) ?? splitWord(token.text).flatMap((piece) => piece.words);
    tokens.set(token, words);
    return words;
  };

  const opening = (part: Expansion): Opening => {
    const known = openings.get(part);
    if (known !== undefined) return known;
    const made = make(part);
    openings.set(part, made);
    return made;
  };

  const make = (part: Expansion): Opening => {
    switch (part.type) {
      case 'sequence':
        return inSequence(part.items.map(opening));
      case 'alternatives': {
        const { byWord, empty } = choicesOf(part);
        return { words: byWord, mayBeEmpty: empty.length > 0 };
      }
      case 'optional':
        return { words: opening(part.item).words, mayBeEmpty: true };
      case 'repeat': {
        const { words, mayBeEmpty } = opening(part.item);
        return { words, mayBeEmpty: mayBeEmpty || part.min === 0 };
      }
      case 'token': {
        const [first] = wordsOf(part);
        return first === undefined ? EMPTY : { words: new Set([first]), mayBeEmpty: false };
      }
      case 'rule': {
        if (slots.has(part.name)) return ANY_SLOT;
        const rule = set.rules.get(part.name);
        return rule === undefined ? NEVER : opening(rule.expansion);
      }
      case 'tag':
      case 'null':
        return EMPTY;
      case 'void':
        return NEVER;
    }
  };

  const choicesOf = (part: Expansion & { readonly type: 'alternatives' }): Choices => {
    const known = choices.get(part);
    if (known !== undefined) return known;
    const byWord = new Map<string, Choice[]>();
    const empty: Choice[] = [];
    for (const choice of part.choices) {
      if (choice.weight <= 0) continue;
      const { words, mayBeEmpty } = opening(choice.item);
      for (const word of words.keys()) if (!byWord.has(word)) byWord.set(word, [...empty]);
      // What may be empty leads on to whatever comes after, so it is tried for every word.
      if (mayBeEmpty) for (const list of [...byWord.values(), empty]) list.push(choice);
      else for (const word of words.keys()) byWord.get(word)?.push(choice);
    }
    const made = { byWord, empty };
    choices.set(part, made);
    return made;
  };

  return {
    wordsOf,
    choicesFor: (part, word) => {
      const { byWord, empty } = choicesOf(part);
      return byWord.get(word) ?? empty;
    },
  };
}

const EMPTY: Opening = { words: NOTHING, mayBeEmpty: true };
const NEVER: Opening = { words: NOTHING, mayBeEmpty: false };
const ANY_SLOT: Opening = { words: new Set([SLOT]), mayBeEmpty: false };

function inSequence(items: readonly Opening[]): Opening {
  const end = items.findIndex(({ mayBeEmpty }) => !mayBeEmpty);
  const first = end < 0 ? items : items.slice(0, end + 1);
  const [only] = first;
  if (only !== undefined && first.length === 1) return only;
  return { words: new Set(first.flatMap(({ words }) => [...words.keys()])), mayBeEmpty: end < 0 };
}
