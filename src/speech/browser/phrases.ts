// The words of the grammar that a recogniser for everybody is likely to get wrong, each with how far it is to be preferred.

import { type Expansion, type GrammarSource, readGrammar } from '../../jsgf/index.ts';
import { readPronunciations } from '../engine/pronunciations.ts';

export interface LikelyPhrase {
  readonly phrase: string;
  /** 0 to 10: about the natural logarithm of how many times likelier it is here than elsewhere (Web Speech API draft) */
  readonly boost: number;
}

/**
 * The draft warns that with 9 and more other words are heard as the phrase. 4 is some fifty times likelier: chosen well
 * under that, and not measured, since no browser at hand takes phrases.
 */
const RARE = 4;
/** Where the terms of the body and of what is found on it stand. */
const GRAMMARS: readonly string[] = ['sites', 'findings'];
/** Shorter ones are letters and abbreviations, which would be heard everywhere. */
const SHORTEST = 5;

/** A tag for what a recogniser writes by mistake. */
const isMistake = (item: Expansion): boolean =>
  item.type === 'tag' && item.text.split(/\s+/).includes('homophone');

/** The words that are written in a rule, without mistakes of recognisers and without what mostly means something else. */
function words(expansion: Expansion): readonly string[] {
  switch (expansion.type) {
    case 'token':
      return [expansion.text];
    case 'sequence':
      return expansion.items.some(isMistake) ? [] : expansion.items.flatMap(words);
    case 'alternatives':
      return expansion.choices.filter(({ weight }) => weight >= 1).flatMap(({ item }) => words(item));
    case 'optional':
    case 'repeat':
      return words(expansion.item);
    default:
      return [];
  }
}

/**
 * The terms of the body and of findings that a large dictionary of English lacks, as `pronunciations` lists such words;
 * of a word and its plural the word. A faulty grammar gives none.
 */
export function likelyPhrases(
  grammar: readonly GrammarSource[],
  pronunciations: string,
): readonly LikelyPhrase[] {
  const rare = readPronunciations(pronunciations);
  const said = grammar.flatMap((source) => {
    const read = readGrammar(source);
    if (read.kind !== 'grammar' || !GRAMMARS.includes(read.grammar.name)) return [];
    return [...read.grammar.rules.values()].flatMap(({ expansion }) => words(expansion));
  });
  const found = new Set(said.filter((word) => rare.has(word) && word.length >= SHORTEST));
  return [...found]
    .filter((word) => !(word.endsWith('s') && found.has(word.slice(0, -1))))
    .map((phrase) => ({ phrase, boost: RARE }));
}
