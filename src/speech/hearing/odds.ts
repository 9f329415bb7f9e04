// Whether sound was said in the words that were heard in it, or was other talk: a grammar finds words of its own in any sound,
// but they fit it badly, words in any order say something else, and those are likelier in what people say besides.

import type { Band } from '../engine/model-files.ts';

/** What is known of a word that was heard. */
export interface WeighedWord {
  readonly frames: number;
  /** how far it is ahead of free phones, in the decoder's units of log score a frame */
  readonly lead: number;
  /** the natural logarithm of its chance after the word before it, in an exam */
  readonly chance: number;
  /** and in what people say besides */
  readonly besides: number;
}

/** One sound in words: a way through the grammar, or words in any order. */
export type From = 'grammar' | 'any-order';

interface Odds {
  readonly lead: number;
  /** of how much likelier the words of any order are in an exam than besides, all of them together */
  readonly exam: number;
  /** of how much the other reading says too */
  readonly same: number;
  readonly start: Readonly<Record<From, number>>;
}

/**
 * Fitted by logistic regression to talk of people who never saw the grammar and to a set in our own words (tests/bench/hearing), in
 * synthetic voices, so that 1 in 100 ordinary sentences enters something; see its results.md. `alone` where the other reading is not
 * compared.
 */
const FITTED: Readonly<Record<Band, { readonly alone: Odds; readonly beside: Odds }>> = {
  wide: {
    alone: { lead: 0.25, exam: 0.19, same: 0, start: { grammar: -0.5, 'any-order': -1.8 } },
    beside: { lead: 0.2, exam: 0.18, same: 2.27, start: { grammar: -1.6, 'any-order': -2.4 } },
  },
  narrow: {
    alone: { lead: 0.34, exam: 0.18, same: 0, start: { grammar: -1.5, 'any-order': -2.1 } },
    beside: { lead: 0.34, exam: 0.18, same: 0.26, start: { grammar: -1.7, 'any-order': -2.3 } },
  },
};

/** How far words are ahead of free phones, by their lengths; null where there are none. */
export function leadOf(words: readonly Pick<WeighedWord, 'frames' | 'lead'>[]): number | null {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  return frames === 0 ? null : words.reduce((sum, word) => sum + word.lead * word.frames, 0) / frames;
}

/**
 * The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. `beside` is the other
 * reading of the sound, where there is one. `same`, 0 to 1, is how much of the words it says too, by their lengths; null where the two
 * are not compared.
 */
export function oddsOf(
  { from, words }: { readonly from: From; readonly words: readonly WeighedWord[] },
  beside: readonly WeighedWord[],
  band: Band,
  same: number | null = null,
): number {
  const lead = leadOf(words);
  if (lead === null) return Number.NEGATIVE_INFINITY;
  const anyOrder = from === 'any-order' || beside.length === 0 ? words : beside;
  const exam = anyOrder.reduce((sum, word) => sum + word.chance - word.besides, 0);
  const odds = FITTED[band][same === null ? 'alone' : 'beside'];
  return odds.lead * lead + odds.exam * exam + odds.same * (same ?? 0) + odds.start[from];
}
