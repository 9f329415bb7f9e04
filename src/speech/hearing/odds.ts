// Whether sound was said in the words that were heard in it, or was other talk: a grammar finds words of its own in any sound,
// but they fit it badly, their order is unlikely, and words in any order say something else.

import type { Band } from '../engine/model-files.ts';

/** What is known of a word that was heard. */
export interface WeighedWord {
  readonly frames: number;
  /** how far it is ahead of free phones, in the decoder's units of log score a frame */
  readonly lead: number;
  /** the natural logarithm of its chance after the words before it */
  readonly chance: number;
}

/** Words that the grammar read, words in any order that the grammar could have read, and others. */
export type Shape = 'grammar' | 'any-order-in-grammar' | 'any-order';

interface Odds {
  readonly lead: number;
  /** of a word, on average */
  readonly chance: number;
  /** of how much the other reading says too */
  readonly same: number;
  readonly start: Readonly<Record<Shape, number>>;
}

/**
 * Fitted by logistic regression to a tuning set of tests/bench/hearing on which no network was made, in synthetic voices; see its
 * results.md. `alone` where the sound was read only once.
 */
const FITTED: Readonly<Record<Band, { readonly alone: Odds; readonly beside: Odds }>> = {
  wide: {
    alone: {
      lead: 0.4,
      chance: 1.35,
      same: 0,
      start: { grammar: 9.1, 'any-order-in-grammar': 9.1, 'any-order': 5.8 },
    },
    beside: {
      lead: 0.31,
      chance: 1.28,
      same: 3.5,
      start: { grammar: 6.0, 'any-order-in-grammar': 12.1, 'any-order': 2.7 },
    },
  },
  narrow: {
    alone: {
      lead: 0.5,
      chance: 1.74,
      same: 0,
      start: { grammar: 11.3, 'any-order-in-grammar': 11.3, 'any-order': 8.7 },
    },
    beside: {
      lead: 0.27,
      chance: 1.36,
      same: 6.8,
      start: { grammar: 4.5, 'any-order-in-grammar': 10.7, 'any-order': 1.9 },
    },
  },
};

/** How far words are ahead of free phones, by their lengths; null where there are none. */
export function leadOf(words: readonly Pick<WeighedWord, 'frames' | 'lead'>[]): number | null {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  return frames === 0 ? null : words.reduce((sum, word) => sum + word.lead * word.frames, 0) / frames;
}

/**
 * The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. `same`, 0 to 1, is how
 * much of them the other reading says too, by their lengths; null where there is none, and they are less sure then.
 */
export function oddsOf(
  words: readonly WeighedWord[],
  shape: Shape,
  band: Band,
  same: number | null = null,
): number {
  const lead = leadOf(words);
  if (lead === null) return Number.NEGATIVE_INFINITY;
  const chance = words.reduce((sum, word) => sum + word.chance, 0) / words.length;
  const odds = FITTED[band][same === null ? 'alone' : 'beside'];
  return odds.lead * lead + odds.chance * chance + odds.same * (same ?? 0) + odds.start[shape];
}
