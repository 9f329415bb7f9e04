// Whether sound was said in the words that were heard in it, or was other talk: a grammar finds words of its own in any sound,
// but they fit it badly, and their order is unlikely.

/** What is known of a word that was heard. */
export interface WeighedWord {
  readonly frames: number;
  /** how far it is ahead of free phones, in the decoder's units of log score a frame */
  readonly lead: number;
  /** the natural logarithm of its chance after the words before it */
  readonly chance: number;
}

// Fitted by logistic regression to parts of tests/bench/hearing's tuning sets in three synthetic voices; see its results.md.
const LEAD = 0.43;
const CHANCE = 0.15;
const START = 5.4;

/** The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. */
export function oddsOf(words: readonly WeighedWord[]): number {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  if (frames === 0) return Number.NEGATIVE_INFINITY;
  const lead = words.reduce((sum, word) => sum + word.lead * word.frames, 0) / frames;
  const chance = words.reduce((sum, word) => sum + word.chance, 0);
  return LEAD * lead + CHANCE * chance + START;
}
