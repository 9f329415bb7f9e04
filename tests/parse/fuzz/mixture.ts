// Mixes words of the grammar, ordinary words and noise into text that nobody would say.

import { type Expansion, linkGrammars } from '../../../src/jsgf/index.ts';
import { checkTag } from '../../../src/parse/tags.ts';
import { grammarFiles } from '../../../src/replay/grammar-files.ts';
import type { Chance } from '../../seeded.ts';
import { ENGLISH_WORDS } from './english-words.ts';

const tokensIn = (expansion: Expansion): readonly string[] => {
  if (expansion.type === 'token') return [expansion.text];
  if (expansion.type === 'sequence') return expansion.items.flatMap(tokensIn);
  if (expansion.type === 'alternatives') return expansion.choices.flatMap(({ item }) => tokensIn(item));
  return expansion.type === 'optional' || expansion.type === 'repeat' ? tokensIn(expansion.item) : [];
};

function grammarWords(): readonly string[] {
  const linked = linkGrammars(grammarFiles(), { checkTag });
  if (linked.kind === 'errors') throw new Error(linked.errors.map(({ message }) => message).join('\n'));
  return [...new Set([...linked.grammars.rules.values()].flatMap(({ expansion }) => tokensIn(expansion)))];
}

const FIGURES = [
  '0',
  '7',
  '14:05',
  '1,200',
  '98.6',
  '120/80',
  '3/4',
  '½',
  '5th',
  'c5',
  '4mm',
  '1e9',
  '-3',
  '+2',
  '00',
  '10²',
];
const SIGNS = [
  ',',
  '.',
  '?',
  '!',
  ';',
  ':',
  '—',
  '-',
  '…',
  '(',
  ')',
  '"',
  "'",
  '/',
  '\\',
  '&',
  '%',
  '°',
  '@',
  '#',
  '<',
  '≥',
  '*',
  '_',
  '|',
  '~',
  '\n',
  '\t',
  '\u00a0',
];
const STRANGE = [
  'naïve',
  'façade',
  'Žižek',
  'ångström',
  '左手',
  'левая',
  'اليد',
  'हाथ',
  'ﬁbula',
  'e\u0301lan',
  '\u200bknee\u200b',
  '\ufeffarm',
  '\u202eleft',
  '\ud83d',
  '😀',
  '👩🏽‍🚒',
  '🦵',
  '♀',
  '①',
  '\u0000',
  "o'clock",
  "he's",
  "can't",
  'C-spine',
  'and/or',
  'x-ray',
  'www.example.org',
  '<b>',
  '{}',
  'constructor',
  '__proto__',
  'toString',
  'NaN',
  'undefined',
];

/** Text of so many tokens. */
export type Mixture = (tokens: number) => string;

/** A source of mixtures: how much of each kind goes in changes from one to the next. */
export function mixtures(chance: Chance): Mixture {
  const known = grammarWords();
  const written = (word: string): string =>
    chance.maybe(0.05)
      ? word.toUpperCase()
      : chance.maybe(0.1)
        ? word.slice(0, 1).toUpperCase() + word.slice(1)
        : word;
  const token = (grammar: number, english: number): string => {
    const kind = chance.next();
    if (kind < grammar) return written(chance.pick(known));
    if (kind < grammar + english) return written(chance.pick(ENGLISH_WORDS));
    const rest = chance.next();
    if (rest < 0.25) return chance.pick(FIGURES);
    if (rest < 0.65) return chance.pick(SIGNS);
    if (rest < 0.9) return chance.pick(STRANGE);
    if (rest < 0.99) return '';
    return chance.pick(['a', 'left', 'pain', 'Ω']).repeat(chance.whole(20, 200));
  };
  return (tokens) => {
    const grammar = chance.next();
    const english = (1 - grammar) * chance.next();
    const glued = chance.maybe(0.1) ? 0.3 : 0.02;
    let text = '';
    for (let i = 0; i < tokens; i++)
      text += (i > 0 && !chance.maybe(glued) ? ' ' : '') + token(grammar, english);
    return text;
  };
}
