// A mark of a negation as it was found among a clause's words.

import type { NegationMark } from '../../negation.ts';

export interface FoundMark {
  readonly mark: NegationMark;
  /** it denies nouns only: an adjective after it begins something stated */
  readonly nouns: boolean;
  /** "without": a "not" before it undoes it */
  readonly lack?: boolean;
}

/** Ends the reach of what stands before this token. */
export const stopAt = (at: number): FoundMark => ({
  mark: { start: at, end: at, kind: 'stop' },
  nouns: false,
});

/** Denies what follows these tokens. */
export const deny = (start: number, end: number): FoundMark => ({
  mark: { start, end, kind: 'before' },
  nouns: false,
});
