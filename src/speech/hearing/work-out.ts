// What is listened for, worked out of the project's files: it takes ten seconds on a desk and a minute on a phone, so that it is done
// where the page is built, and read from there.

import type { GrammarErrors } from '../../jsgf/index.ts';
import { bothOf, readPronunciations, waysIn } from '../engine/pronunciations.ts';
import type { Counts } from '../network/counts.ts';
import { withFewerStates } from '../network/fewer-states.ts';
import { joinedWords } from '../network/joined-words.ts';
import { type Network, wordsOf } from '../network/network.ts';
import { withoutRare } from '../network/without-rare.ts';
import type { HearingFiles } from './hearing-files.ts';
import { hearingGrammar } from './network-of-files.ts';

export interface WorkedOut {
  readonly kind: 'worked-out';
  /** what the grammar lets be said, without what is rare, and its words in any order with those of ordinary talk; with joined words */
  readonly said: Network;
  readonly anyOrder: Network;
  /** the phones of each way to say a word, none of them joined */
  readonly ways: ReadonlyMap<string, readonly string[]>;
  /** those in which a mistake can hurt */
  readonly telling: ReadonlySet<string>;
  /** the words of written talk; their numbers go by their order */
  readonly words: readonly string[];
  /** how often words follow each other in an exam, and in what people say besides */
  readonly exam: Counts;
  readonly besides: Counts;
  /** how many different words can be heard */
  readonly heard: number;
}

/** What the grammar lets be said less often than this, in one utterance, is left to the network of any order: it costs half the memory. */
const RARE = 1e-4;

/**
 * `dictionary` has the model's words with their phones, a line each. `root` is a rule to listen for in the place of a whole utterance,
 * named in full. A fault in a grammar is an answer.
 */
export function workOut(files: HearingFiles, dictionary: string, root?: string): WorkedOut | GrammarErrors {
  const grammar = hearingGrammar(files, root);
  if (grammar.kind === 'errors') return grammar;
  const waysToSay = waysIn(bothOf(readPronunciations(dictionary), readPronunciations(files.pronunciations)));
  const canSay = (word: string): boolean => waysToSay(word).length > 0;
  const made = grammar.network(canSay);
  const { network, words, exam, besides } = grammar.loose(canSay, made);
  const heard = wordsOf(network);
  const said = withoutRare(made, RARE);
  const lean = (whole: Network): Network => joinedWords(withFewerStates(whole), waysToSay).network;
  return {
    kind: 'worked-out',
    said: lean(said),
    anyOrder: lean(network),
    ways: new Map([...new Set([...wordsOf(said), ...heard])].map((word) => [word, waysToSay(word)])),
    telling: grammar.telling(canSay),
    words,
    exam,
    besides,
    heard: heard.length,
  };
}
