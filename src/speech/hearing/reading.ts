// One sound is read twice: in what the grammar lets be said, and in its words and ordinary ones in any order. Which was said?

import type { HeardWord } from '../engine/decoder.ts';
import type { Band } from '../engine/model-files.ts';
import { type From, leadOf, type WeighedWord } from './odds.ts';

export interface JudgedWord extends HeardWord, WeighedWord {
  readonly confidence: number;
}

export interface Reading {
  readonly from: From;
  readonly words: readonly JudgedWord[];
}

/**
 * By how much better it fits and how much likelier its words are, the reading in any order is taken for the grammar's above nought. A
 * logistic regression on a tuning set that neither network was made on, with what makes ordinary talk enter least
 * (tests/bench/hearing/results.md).
 */
const TAKEN: Readonly<
  Record<Band, { readonly lead: number; readonly chance: number; readonly start: number }>
> = {
  wide: { lead: 0.14, chance: 0.1, start: 0.15 },
  narrow: { lead: 0.27, chance: 0.15, start: 0 },
};

/** What was said, and the other reading of it; of no words there is no reading. */
export function likelierOf(grammar: Reading, loose: Reading, band: Band): readonly [Reading, Reading] {
  const [lead, leadOfLoose] = [leadOf(grammar.words), leadOf(loose.words)];
  if (leadOfLoose === null) return [grammar, loose];
  if (lead === null) return [loose, grammar];
  const taken = TAKEN[band];
  const odds =
    taken.lead * (leadOfLoose - lead) + taken.chance * (chanceOf(loose) - chanceOf(grammar)) + taken.start;
  return odds > 0 ? [loose, grammar] : [grammar, loose];
}

const chanceOf = ({ words }: Reading): number => words.reduce((sum, { chance }) => sum + chance, 0);
