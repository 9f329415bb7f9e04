// Ordinary talk beside the grammar: common words that may stand wherever a turn may, marked so that none is taken for a
// word of the grammar.

import type { GrammarSource } from '../../jsgf/index.ts';

const SIGN = '~';

/** The common word as a word of its own: "the~" is said like "the". */
export const aside = (word: string): string => `${word}${SIGN}`;

/** True for a word of ordinary talk. */
export const isAside = (word: string): boolean => word.endsWith(SIGN);

/** The word itself. */
export const plainWord = (word: string): string => (isAside(word) ? word.slice(0, -SIGN.length) : word);

/** The grammar <aside.talk>: any string of the words, each as likely as the others. */
export const asideGrammar = (words: readonly string[]): GrammarSource => ({
  file: 'grammar/hearing/common-words.txt',
  text: `#JSGF V1.0;\ngrammar aside;\npublic <talk> = (${words.map(aside).join(' | ')})+;\n`,
});
