// The shapes of networks of words: what may be said next after any part of what may be said.

import type { GrammarSet } from '../../jsgf/index.ts';

export interface Arc {
  readonly from: number;
  readonly to: number;
  readonly word: string;
}

/** A word with how likely it is in its state. */
export interface LikelyArc extends Arc {
  readonly chance: number;
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
  readonly arcs: readonly LikelyArc[];
  /** by state: the states that are entered with it; a state has these or words, not both */
  readonly silent: readonly (readonly Way[])[];
  readonly start: number;
  readonly end: number;
}

export interface Listening {
  readonly set: GrammarSet;
  /** words that cannot be heard are left out with all that needs them */
  readonly canHear: (word: string) => boolean;
}
