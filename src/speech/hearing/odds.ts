// Whether sound was said in the words that were heard in it, or was other talk: words can be found in any sound, but others fit it as
// well, and what was said besides is likelier in what people say besides.

/** What is known of a word that was heard. */
export interface WeighedWord {
  readonly frames: number;
  /** how far it is ahead of free phones, in the decoder's units of log score a frame */
  readonly lead: number;
  /** the natural logarithm of its chance after the words before it, in an exam */
  readonly chance: number;
  /** and in what people say besides */
  readonly besides: number;
  /** 0 to 1: how likely it was said then, against whatever else may have been */
  readonly sure: number;
}

/**
 * The weights of the lead, of how much likelier the words are in an exam than besides (all of them together), and of how sure they are.
 * Fitted by logistic regression to talk of people who never saw the grammar and to a set in our own words (tests/bench/hearing), in
 * synthetic voices; the start so that of five further people's ordinary sentences 14 in 1,000 enter something. See its results.md.
 */
const FITTED = { lead: 0.12, exam: 0.425, sure: 3, start: -4.65 } as const;

/** How far words are ahead of free phones, by their lengths; null where there are none. */
export const leadOf = (words: readonly Pick<WeighedWord, 'frames' | 'lead'>[]): number | null =>
  meanOf(words, ({ lead }) => lead);

function meanOf<Word extends Pick<WeighedWord, 'frames'>>(
  words: readonly Word[],
  measureOf: (word: Word) => number,
): number | null {
  const frames = words.reduce((sum, word) => sum + word.frames, 0);
  return frames === 0 ? null : words.reduce((sum, word) => sum + measureOf(word) * word.frames, 0) / frames;
}

/** The odds, as a logarithm, that these words were said: above nought more likely than not. No words have none. */
export function oddsOf(words: readonly WeighedWord[]): number {
  const [lead, sure] = [leadOf(words), meanOf(words, (word) => word.sure)];
  if (lead === null || sure === null) return Number.NEGATIVE_INFINITY;
  const exam = words.reduce((sum, { chance, besides }) => sum + chance - besides, 0);
  return FITTED.lead * lead + FITTED.exam * exam + FITTED.sure * sure + FITTED.start;
}
