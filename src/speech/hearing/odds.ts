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

// Fitted likewise with the gap, in two voices.
const BESIDE_LOOSE = { lead: 0.205, chance: 0.093, gap: -0.307, start: 4.6 };

/** How far words are ahead of free phones, by their lengths; null where there are none. */
export function leadOf(words: readonly Pick<WeighedWord, 'frames' | 'lead'>[]): number | null {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  return frames === 0 ? null : words.reduce((sum, word) => sum + word.lead * word.frames, 0) / frames;
}

/**
 * The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. `gap` is how far,
 * in the units of a lead, the same sound was ahead of that in words of any order, ordinary ones among them; without it the
 * odds are less sure.
 */
export function oddsOf(words: readonly WeighedWord[], gap: number | null = null): number {
  const lead = leadOf(words);
  if (lead === null) return Number.NEGATIVE_INFINITY;
  const chance = words.reduce((sum, word) => sum + word.chance, 0);
  if (gap === null) return LEAD * lead + CHANCE * chance + START;
  const beside = BESIDE_LOOSE;
  return beside.lead * lead + beside.chance * chance + beside.gap * gap + beside.start;
}
