// What a recogniser needs to be told: grammar, pronunciations and lists of words, as texts from wherever they lie.

import type { GrammarSource } from '../../jsgf/index.ts';

export interface HearingFiles {
  /** every grammar, the hearing grammar among them */
  readonly grammar: readonly GrammarSource[];
  /** words with their phones, a line each */
  readonly pronunciations: string;
  /** words of ordinary talk */
  readonly commonWords: string;
}

/** The words of a list: anything between white space; a line that begins with # is a comment. */
export const listed = (text: string): readonly string[] =>
  text
    .split(/\r?\n/)
    .filter((line) => !line.startsWith('#'))
    .flatMap((line) => line.split(/\s+/))
    .filter((word) => word !== '');
