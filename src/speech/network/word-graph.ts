// The shapes of networks of words: what may be said next after any part of what may be said.

import type { GrammarSet } from '../../jsgf/index.ts';

export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly word: string;
}

/** States are the numbers below `states`; what is said begins in state 0 and may end in any of `ends`. */
export interface WordGraph {
  readonly states: number;
  readonly arcs: readonly Arc[];
  readonly ends: readonly number[];
}

/** A way on without a word; the chances of all that leave a state add up to 1. */
export interface Way {
  readonly to: number;
  readonly chance: number;
}

/** A graph in which some states are entered together with others, by no word, and which has one end. */
export interface OpenGraph {
  readonly states: number;
  readonly arcs: readonly Arc[];
  /** by state: the states that are entered with it; a state has these or words, not both */
  readonly silent: readonly (readonly Way[])[];
  readonly start: number;
  readonly end: number;
}

export interface Listening {
  readonly set: GrammarSet;
  /** in the grammars that it takes words from, alternatives of a lower weight are left out: they are rare, or spellings */
  readonly leastWeight: number;
  /** in those, these words are left out too, with all that needs them */
  readonly leftOut: ReadonlySet<string>;
  /** words that cannot be heard are left out with all that needs them */
  readonly canHear: (word: string) => boolean;
}
