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

interface Odds {
  readonly lead: number;
  /** of how much likelier a word is in an exam than besides, on average, in words of any order */
  readonly exam: number;
  /** of how much the other reading says too */
  readonly same: number;
  readonly start: number;
}

/**
 * Fitted by logistic regression to talk of people who never saw the grammar (a tuning set of tests/bench/hearing), in synthetic voices; see
 * its results.md. `alone` where the sound was read only once.
 */
const FITTED: Readonly<Record<Band, { readonly alone: Odds; readonly beside: Odds }>> = {
  wide: {
    alone: { lead: 0.18, exam: 1.47, same: 0, start: -1.3 },
    beside: { lead: 0.15, exam: 1.37, same: 2.54, start: -2.1 },
  },
  narrow: {
    alone: { lead: 0.25, exam: 2.2, same: 0, start: -2 },
    beside: { lead: 0.25, exam: 2.1, same: 0.8, start: -2.2 },
  },
};

/** How far words are ahead of free phones, by their lengths; null where there are none. */
export function leadOf(words: readonly Pick<WeighedWord, 'frames' | 'lead'>[]): number | null {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  return frames === 0 ? null : words.reduce((sum, word) => sum + word.lead * word.frames, 0) / frames;
}

/**
 * The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. `anyOrder` is the sound
 * read in words of any order, where it was. `same`, 0 to 1, is how much of the words the other reading says too, by their lengths; null
 * where there is none, and they are less sure then.
 */
export function oddsOf(
  words: readonly WeighedWord[],
  anyOrder: readonly WeighedWord[],
  band: Band,
  same: number | null = null,
): number {
  const lead = leadOf(words);
  if (lead === null) return Number.NEGATIVE_INFINITY;
  const read = anyOrder.length === 0 ? words : anyOrder;
  const exam = read.reduce((sum, { chance, besides }) => sum + chance - besides, 0) / read.length;
  const odds = FITTED[band][same === null ? 'alone' : 'beside'];
  return odds.lead * lead + odds.exam * exam + odds.same * (same ?? 0) + odds.start;
}
