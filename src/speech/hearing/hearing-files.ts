// What a recogniser needs to be told: grammar and pronunciations, as texts from wherever they lie.

import type { GrammarSource } from '../../jsgf/index.ts';

export interface HearingFiles {
  /** every grammar, the hearing grammar among them */
  readonly grammar: readonly GrammarSource[];
  /** words with their phones, a line each */
  readonly pronunciations: string;
}
