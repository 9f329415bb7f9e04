// What is shown while somebody still speaks: one sound is read in what the grammar lets be said and in words of any order, and the two
// are not yet put together.

import type { HeardWord } from '../engine/decoder.ts';
import type { Band } from '../engine/model-files.ts';
import { leadOf, type WeighedWord } from './odds.ts';

export interface JudgedWord extends HeardWord, WeighedWord {
  readonly confidence: number;
}

/**
 * By how much better it fits and how much likelier its words are, the reading in any order is taken for the grammar's above nought. A
 * logistic regression on a tuning set that neither network was made on (tests/bench/hearing/results.md).
 */
const TAKEN: Readonly<
  Record<Band, { readonly lead: number; readonly chance: number; readonly start: number }>
> = {
  wide: { lead: 0.14, chance: 0.1, start: 0.15 },
  narrow: { lead: 0.27, chance: 0.15, start: 0 },
};

/** The likelier of the two; of no words there is no reading. */
export function likelierOf(
  grammar: readonly JudgedWord[],
  loose: readonly JudgedWord[],
  band: Band,
): readonly JudgedWord[] {
  const [lead, leadOfLoose] = [leadOf(grammar), leadOf(loose)];
  if (leadOfLoose === null) return grammar;
  if (lead === null) return loose;
  const taken = TAKEN[band];
  const odds =
    taken.lead * (leadOfLoose - lead) + taken.chance * (chanceOf(loose) - chanceOf(grammar)) + taken.start;
  return odds > 0 ? loose : grammar;
}

const chanceOf = (words: readonly JudgedWord[]): number => words.reduce((sum, { chance }) => sum + chance, 0);
