// What a recogniser needs to be told: grammar and pronunciations, as texts from wherever they lie.

import type { GrammarSource } from '../../jsgf/index.ts';

export interface HearingFiles {
  /** every grammar, the hearing grammar among them */
  readonly grammar: readonly GrammarSource[];
  /** words with their phones, a line each */
  readonly pronunciations: string;
  /** sentences as they are said, a line each, in shapes that the hearing grammar need not have */
  readonly spoken: string;
  /** sentences of ordinary talk, a line each */
  readonly ordinary: string;
  /** words of ordinary talk */
  readonly ordinaryWords: string;
}

/** The lines of such a text; those that begin with # are remarks. */
export const linesOf = (text: string): readonly string[] =>
  text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
