// What was heard: words with when they were said, how and how surely; and speech that was not understood, with its times.

export interface UtteredWord {
  readonly word: string;
  /** seconds since the recording began */
  readonly start: number;
  readonly end: number;
  /** 0 to 1; a measure and no probability: below a half the word is unsure */
  readonly confidence: number;
}

export interface HeardUtterance {
  /** the words; for speech that was not understood, a remark that says so and gives the times */
  readonly text: string;
  /** what the same sound was heard as where words may come in any order, if that is something else */
  readonly alternatives: readonly string[];
  readonly understood: boolean;
  /** seconds since the recording began */
  readonly start: number;
  readonly end: number;
  /** which ear heard it */
  readonly engine: 'bundled';
  /** 0 to 1: that of its least trusted part; a measure and no probability */
  readonly confidence: number;
  /** the words of the text; for speech that was not understood, the best guess, which must enter nothing */
  readonly words: readonly UtteredWord[];
  /** why all that is made of it must be asked about, in plain words */
  readonly doubt: readonly string[];
}

const two = (value: number): string => String(value).padStart(2, '0');

/** Minutes and seconds, rounded down: "00:12", "71:05". */
const clock = (seconds: number): string =>
  `${two(Math.floor(seconds / 60))}:${two(Math.floor(seconds % 60))}`;

/** The remark that stands for speech that was not understood: "[not understood, 00:12-00:15]". */
export const notUnderstood = (start: number, end: number): string =>
  `[not understood, ${clock(start)}-${clock(end)}]`;

/** True for such a remark. */
export const isNotUnderstood = (text: string): boolean =>
  /^\[not understood, \d+:\d\d-\d+:\d\d\]$/.test(text);

/** What the record takes along of how it was heard. */
export const hearingOf = ({
  engine,
  alternatives,
  confidence,
  words,
  doubt,
}: Pick<HeardUtterance, 'engine' | 'alternatives' | 'confidence' | 'words' | 'doubt'>) => ({
  engine,
  alternatives,
  confidence,
  // The times are the sound's; the record keeps its own.
  words: words.map(({ word, confidence: sure }) => ({ word, confidence: sure })),
  doubt,
});
