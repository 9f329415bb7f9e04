// Samples phrases of the real grammar with numbers of our own put in, and counts which alternatives have been said.

import {
  type Expansion,
  type GrammarSet,
  linkGrammars,
  type Rule,
  sampleRule,
} from '../../../src/jsgf/index.ts';
import { NUMBER_SLOT, TIME_SLOT } from '../../../src/parse/islands/fill.ts';
import { checkTag, readTag } from '../../../src/parse/tags.ts';
import { grammarFiles } from '../../../src/replay/grammar-files.ts';
import type { Chance } from '../../seeded.ts';
import { sayNumber } from './spoken-number.ts';

/** A phrase that the grammar allows, as it is said, with what its tags fix. */
export interface Phrase {
  readonly rule: string;
  readonly text: string;
  /** the numbers said in it by the names that the grammar gives them */
  readonly numbers: Readonly<Record<string, number>>;
  /** true where it holds a number or a time that no tag names */
  readonly unnamed: boolean;
  /** the first value of a tag with this key, null where there is none; a bare mark gives an empty string */
  readonly tag: (key: string) => string | null;
  readonly tags: (key: string) => readonly string[];
}

/** Numbers for the names of a phrase, which may hang together (a count, its seconds and its rate). */
export type Numbers = (
  names: readonly string[],
  tag: (key: string) => string | null,
) => Readonly<Record<string, number>>;

export interface Sampler {
  readonly set: GrammarSet;
  readonly chance: Chance;
  /** a phrase of the rule; `time` is said where the rule asks for one */
  readonly say: (rule: string, numbers?: Numbers, time?: string) => Phrase;
  readonly coverage: () => readonly Coverage[];
}

export interface Coverage {
  readonly file: string;
  readonly alternatives: number;
  readonly said: number;
  readonly rules: ReadonlySet<string>;
}

// Every filler at once makes no English; one repeat and fewer options keep close to what is said.
const CHANCES = { optionalChance: 0.35, mostRepeats: 1 };
const NUMBER = '§';
const TIME = '¤';
const MARK = 'alternative:';
// Of so many samples, the one with the most alternatives not yet said is taken.
const TRIES = 16;

/** The grammar with a mark in every alternative, and numbers and times left open. */
function markedSet(): { readonly set: GrammarSet; readonly files: readonly string[] } {
  const linked = linkGrammars(grammarFiles(), { checkTag });
  if (linked.kind === 'errors') throw new Error(linked.errors.map(({ message }) => message).join('\n'));
  const files: string[] = [];
  const mark = (expansion: Expansion, file: string): Expansion => {
    switch (expansion.type) {
      case 'sequence':
        return { ...expansion, items: expansion.items.map((item) => mark(item, file)) };
      case 'optional':
      case 'repeat':
        return { ...expansion, item: mark(expansion.item, file) };
      case 'alternatives':
        return {
          type: 'alternatives',
          choices: expansion.choices.map(({ weight, item }) => {
            const tag: Expansion = { type: 'tag', text: `${MARK}${files.push(file) - 1}`, line: 0 };
            return { weight, item: { type: 'sequence', items: [mark(item, file), tag] } };
          }),
        };
      default:
        return expansion;
    }
  };
  const rules = new Map<string, Rule>();
  for (const [name, rule] of linked.grammars.rules) {
    const open = name === NUMBER_SLOT ? NUMBER : name === TIME_SLOT ? TIME : null;
    const expansion: Expansion =
      open === null ? mark(rule.expansion, rule.file) : { type: 'token', text: open, line: 0 };
    rules.set(name, { ...rule, expansion });
  }
  return { set: { rules, publicRules: linked.grammars.publicRules }, files };
}

/** A sampler of the project's own grammar. */
export function sampler(chance: Chance): Sampler {
  const { set, files } = markedSet();
  const said = new Set<number>();
  const rules = new Set<string>();
  const draw = (rule: string) => {
    const { words, tags } = sampleRule(set, rule, chance.next, CHANCES);
    const marks = tags.flatMap((tag) => (tag.startsWith(MARK) ? [Number(tag.slice(MARK.length))] : []));
    const fresh = marks.filter((mark) => !said.has(mark)).length;
    return { words, marks, fresh, tags: tags.filter((tag) => !tag.startsWith(MARK)).flatMap(readTag) };
  };
  const say: Sampler['say'] = (rule, numbers = () => ({}), time = '') => {
    const drawn = Array.from({ length: TRIES }, () => draw(rule)).reduce((a, b) =>
      b.fresh > a.fresh ? b : a,
    );
    for (const mark of drawn.marks) said.add(mark);
    rules.add(rule);
    const tags = (key: string) => drawn.tags.filter((tag) => tag.key === key).map(({ value }) => value);
    const tag = (key: string) => tags(key)[0] ?? null;
    const names = tags('num');
    // Only what the phrase really names counts as said.
    const all = numbers(names, tag);
    const values = Object.fromEntries(Object.entries(all).filter(([name]) => names.includes(name)));
    let at = 0;
    let unnamed = false;
    const words = drawn.words.flatMap((word) => {
      if (word === TIME) return [time];
      if (word !== NUMBER) return [word];
      const name = names[at++] ?? '';
      const value = values[name];
      if (value === undefined) unnamed = true;
      return [sayNumber(value ?? 3, chance)];
    });
    return { rule, text: words.join(' '), numbers: values, unnamed, tag, tags };
  };
  const coverage = () =>
    [...new Set(files)].map((file) => {
      const all = files.flatMap((name, index) => (name === file ? [index] : []));
      return { file, alternatives: all.length, said: all.filter((index) => said.has(index)).length, rules };
    });
  return { set, chance, say, coverage };
}
