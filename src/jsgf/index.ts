// Promises JSGF grammars (JSpeech Grammar Format, W3C Note, 5 June 2000) as plain data: read, linked, refused with
// file, line and rule where they are wrong, and sampled.

export { type LinkOptions, linkGrammars } from './link.ts';
export { type Phrase, phrasesOf } from './phrases.ts';
export { readGrammar } from './read.ts';
export { type Sample, type SampleOptions, sampleRule } from './sample.ts';
export type {
  Choice,
  Expansion,
  Grammar,
  GrammarError,
  GrammarErrors,
  GrammarSet,
  GrammarSource,
  Import,
  Rule,
} from './shape.ts';
export { tokensIn } from './tokens.ts';
