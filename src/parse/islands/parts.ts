// The parts of a grammar made ready for walking: each knows the words that it can begin with, and whether it may be passed
// without one, so that a walk enters only what leads on.

import type { Expansion, GrammarSet } from '../../jsgf/index.ts';
import { lateContraction } from '../contraction.ts';
import { splitWord } from '../split-word.ts';
import { readTag } from '../tags.ts';
import type { Tag } from './island.ts';

/** Stands among the words for any slot that is read in code; no word has this sign. */
export const SLOT = '<>';

/** All parts have one shape, since a walk looks at thousands of them: what a part does not need is empty. */
export interface Part {
  readonly type:
    | 'words'
    | 'slot'
    | 'sequence'
    | 'alternatives'
    | 'optional'
    | 'repeat'
    | 'tag'
    /** a whole phrase of a root rule */
    | 'phrase'
    | 'empty'
    | 'never';
  /** every word it can begin with, and `SLOT` where a slot can stand first */
  readonly begins: Words;
  /** the signs of those words together: where a word's own sign is not among them, the part does not begin with it */
  readonly signs: number;
  /** true where it may be passed without a word */
  readonly mayBeEmpty: boolean;
  /** the plain words of a token of the grammar */
  readonly words: readonly Word[];
  /** the items of a sequence; the one item of an option, a repeat or a phrase */
  readonly items: readonly Part[];
  /** how the items of a sequence from each on can begin, and one more past the last; how a token's words can */
  readonly tails: readonly Tail[];
  /** the choices by the word that they can begin with, each list in the order written */
  readonly byWord: ReadonlyMap<string, readonly Choice[]>;
  /** the choices that may be empty; they stand in the lists of `byWord` too */
  readonly empty: readonly Choice[];
  /** the rule of a slot or a phrase */
  readonly rule: string;
  readonly tags: readonly Tag[];
}

type Words = Pick<ReadonlySet<string>, 'has' | 'keys'>;

export interface Choice {
  readonly item: Part;
  /** how unlikely this choice is: the logarithm of its weight below one */
  readonly cost: number;
}

/** What the last items of a sequence, or words of a token, can begin with, and whether they may all be passed. */
export type Tail = Pick<Part, 'signs' | 'mayBeEmpty'>;

/** A word of the grammar. Its sign is one bit, shared by many words: it is asked first, since that costs least. */
export interface Word {
  readonly text: string;
  readonly sign: number;
}

/** A grammar's root phrases as one part, and every word that any of them can hold. */
export interface Parts {
  readonly root: Part;
  readonly vocabulary: ReadonlyMap<string, Word>;
}

// The first bit is a slot's and the last one the end's; an engine keeps so many as a small whole number.
const SIGNS = 31;

/** Asked for in place of a word: a slot. */
export const ANY_SLOT: Word = { text: SLOT, sign: 1 };
/** Asked for in place of a word: the end of a phrase. No word is empty, and no part begins with it. */
export const END: Word = { text: '', sign: 1 << (SIGNS - 1) };

/** True where a part can begin with this word. */
export const beginsWith = (part: Part, word: Word): boolean =>
  (part.signs & word.sign) !== 0 && part.begins.has(word.text);

const NO_WORDS: ReadonlySet<string> = new Set();
const NO_CHOICES: ReadonlyMap<string, readonly Choice[]> = new Map();

type Own = Partial<Pick<Part, 'words' | 'items' | 'tails' | 'byWord' | 'empty' | 'rule' | 'tags'>>;

const partOf = (
  type: Part['type'],
  { begins, signs }: Pick<Part, 'begins' | 'signs'>,
  mayBeEmpty: boolean,
  own: Own = {},
): Part => ({
  type,
  begins,
  signs,
  mayBeEmpty,
  words: own.words ?? [],
  items: own.items ?? [],
  tails: own.tails ?? [],
  byWord: own.byWord ?? NO_CHOICES,
  empty: own.empty ?? [],
  rule: own.rule ?? '',
  tags: own.tags ?? [],
});

const NOTHING = { begins: NO_WORDS, signs: 0 };
const EMPTY = partOf('empty', NOTHING, true);
const NEVER = partOf('never', NOTHING, false);
const SLOT_OPENS = { begins: new Set([SLOT]), signs: ANY_SLOT.sign };

/** The parts of the rules in `rules`, each made once; rules named in `slots` are left to a reader in code. */
export function partsOf(set: GrammarSet, rules: readonly string[], slots: ReadonlySet<string>): Parts {
  const made = new Map<string, Part>();
  const vocabulary = new Map<string, Word>();

  // The linker lets no rule reach itself.
  const ruleOf = (name: string): Part => {
    const known = made.get(name);
    if (known !== undefined) return known;
    const rule = set.rules.get(name);
    const part = slots.has(name)
      ? partOf('slot', SLOT_OPENS, false, { rule: name })
      : rule === undefined
        ? NEVER
        : make(rule.expansion);
    made.set(name, part);
    return part;
  };

  const make = (expansion: Expansion): Part => {
    switch (expansion.type) {
      case 'sequence':
        return sequenceOf(expansion.items.map(make));
      case 'alternatives':
        return alternativesOf(
          expansion.choices
            .filter(({ weight }) => weight > 0)
            .map(({ weight, item }) => ({ item: make(item), cost: costOf(weight) })),
        );
      case 'optional': {
        const item = make(expansion.item);
        return partOf('optional', item, true, { items: [item] });
      }
      case 'repeat': {
        const item = make(expansion.item);
        // Words that must come once at least are said, and then perhaps again.
        const again = partOf('repeat', item, true, { items: [item] });
        return expansion.min === 0 ? again : sequenceOf([item, again]);
      }
      case 'token':
        return tokenOf(expansion.text);
      case 'rule':
        return ruleOf(expansion.name);
      case 'tag':
        return partOf('tag', NOTHING, true, { tags: readTag(expansion.text) });
      case 'null':
        return EMPTY;
      case 'void':
        return NEVER;
    }
  };

  const tokenOf = (text: string): Part => {
    const said = lateContraction(text) ?? splitWord(text).flatMap((piece) => piece.words);
    const words = said.map(wordOf);
    const [first] = words;
    if (first === undefined) return EMPTY;
    const tails = words.map(({ sign }) => ({ signs: sign, mayBeEmpty: false }));
    return partOf('words', { begins: new Set([first.text]), signs: first.sign }, false, { words, tails });
  };

  const wordOf = (text: string): Word => {
    const word = vocabulary.get(text) ?? { text, sign: 2 << (vocabulary.size % (SIGNS - 2)) };
    vocabulary.set(text, word);
    return word;
  };

  const root = alternativesOf(rules.map((name) => ({ item: phraseOf(name, ruleOf(name)), cost: 0 })));
  return { root, vocabulary };
}

// A weight below one makes a phrase less likely than another reading of the same words.
const costOf = (weight: number): number => (weight >= 1 ? 0 : -Math.log10(weight));

const phraseOf = (rule: string, item: Part): Part =>
  partOf('phrase', item, item.mayBeEmpty, { items: [item], rule });

/** The part made of these, one after the other. */
export function sequenceOf(items: readonly Part[]): Part {
  const end = items.findIndex(({ mayBeEmpty }) => !mayBeEmpty);
  const first = end < 0 ? items : items.slice(0, end + 1);
  const [only] = first;
  const opens =
    only !== undefined && first.length === 1
      ? only
      : { begins: new Set(first.flatMap((item) => [...item.begins.keys()])), signs: signsOf(first) };
  return partOf('sequence', opens, end < 0, { items, tails: tailsOf(items) });
}

function tailsOf(items: readonly Part[]): readonly Tail[] {
  const tails: Tail[] = [{ signs: 0, mayBeEmpty: true }];
  for (const { signs, mayBeEmpty } of items.toReversed()) {
    const after = tails.at(-1);
    const passed = mayBeEmpty && after !== undefined;
    tails.push({ signs: signs | (passed ? after.signs : 0), mayBeEmpty: passed && after.mayBeEmpty });
  }
  return tails.reverse();
}

function alternativesOf(choices: readonly Choice[]): Part {
  const byWord = new Map<string, Choice[]>();
  const empty: Choice[] = [];
  for (const choice of choices) {
    const { begins, mayBeEmpty } = choice.item;
    for (const word of begins.keys()) if (!byWord.has(word)) byWord.set(word, [...empty]);
    // What may be empty leads on to whatever comes after, so it is tried for every word.
    if (mayBeEmpty) for (const list of [...byWord.values(), empty]) list.push(choice);
    else for (const word of begins.keys()) byWord.get(word)?.push(choice);
  }
  const signs = signsOf(choices.map(({ item }) => item));
  return partOf('alternatives', { begins: byWord, signs }, empty.length > 0, { byWord, empty });
}

const signsOf = (parts: readonly Part[]): number => parts.reduce((all, { signs }) => all | signs, 0);
