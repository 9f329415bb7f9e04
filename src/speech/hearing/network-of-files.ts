// The hearing grammar of the project's files as networks, and how likely words are in it; a fault in a file is an answer and no
// exception.

import { type GrammarErrors, linkGrammars, tokensIn } from '../../jsgf/index.ts';
import { type Counts, countsOf, numbersOf, wordsIn } from '../network/counts.ts';
import { looseNetwork } from '../network/loose.ts';
import { type Network, networkOf } from '../network/network.ts';
import { pairsIn, pairsOf, sumOf } from '../network/pairs.ts';
import { sampled } from '../network/sampled.ts';
import { type HearingFiles, linesOf } from './hearing-files.ts';
import { withShortIs } from './short-is.ts';
import { tellingWords } from './telling-words.ts';

/** What is listened for: one utterance. */
const ROOT = 'hearing.utterance';

/** Given the words that can be heard, the network. */
export interface HearingGrammar {
  readonly kind: 'grammar';
  readonly network: (canHear: CanHear) => Network;
  readonly telling: (canHear: CanHear) => ReadonlySet<string>;
  /** its words in any order, with those of ordinary talk, given the network */
  readonly loose: (canHear: CanHear, network: Network) => LooseTalk;
}

type CanHear = (word: string) => boolean;

export interface LooseTalk {
  readonly network: Network;
  /** the words of written talk; their numbers go by their order */
  readonly words: readonly string[];
  /** how often words follow each other in an exam */
  readonly exam: Counts;
  /** and in what people say besides; where either may be said, a sentence of both counts alike */
  readonly besides: Counts;
}

/** The pairs of words of the grammar count as so many sentences beside those that are written. */
const WORTH = 1000;
/** And what the tool is told, of which nobody writes, as so many more. */
const COMMAND = 'hearing.command';
const COMMANDS = 500;
/** So much of what is said in no known order is a word of ordinary talk, and so much any that the parser knows. */
const ORDINARY = 0.08;
const KNOWN = 0.05;

/** So many sentences of the grammar, and what each is worth beside a written one in how likely three words are. */
const SAMPLES = 4000;
const SAMPLE = 0.5;

/** One side stands for the other. */
const mirrored = (sentence: string): string =>
  sentence.replace(/\b(left|right)\b/g, (side) => (side === 'left' ? 'right' : 'left'));

/** Links the grammars; the hearing grammar must be among them. `root` is what is listened for, named in full. */
export function hearingGrammar(files: HearingFiles, root = ROOT): HearingGrammar | GrammarErrors {
  const linked = linkGrammars(files.grammar);
  if (linked.kind === 'errors') return linked;
  const set = linked.grammars;
  return {
    kind: 'grammar',
    telling: (canHear) => tellingWords(set, canHear),
    network: (canHear) => networkOf({ set, canHear }, root),
    loose: (canHear, network) => {
      const exam = sumOf([
        { pairs: pairsOf(network), worth: WORTH },
        { pairs: pairsOf(networkOf({ set, canHear }, COMMAND)), worth: COMMANDS },
        { pairs: pairsIn(spokenIn(files)), worth: 1 },
      ]);
      const ordinary = pairsIn(linesOf(files.ordinary));
      const loose = looseNetwork({
        said: sumOf([exam, ordinary].map((pairs) => ({ pairs, worth: 1 }))),
        anywhere: [
          { words: linesOf(files.ordinaryWords).flatMap((line) => line.split(' ')), share: ORDINARY },
          { words: [...tokensIn(set)], share: KNOWN },
        ],
        canHear,
      });
      const spokenTalk = [
        { sentences: spokenIn(files), worth: 1 },
        { sentences: sampled(network, SAMPLES), worth: SAMPLE },
        { sentences: sampled(networkOf({ set, canHear }, COMMAND), COMMANDS), worth: SAMPLE },
      ];
      const ordinaryTalk = [{ sentences: linesOf(files.ordinary), worth: 1 }];
      const words = wordsIn([...spokenTalk, ...ordinaryTalk]);
      const numbers = numbersOf(words);
      return {
        network: loose,
        words,
        exam: countsOf(spokenTalk, numbers),
        besides: countsOf(ordinaryTalk, numbers),
      };
    },
  };
}

function spokenIn(files: HearingFiles): readonly string[] {
  const spoken = linesOf(files.spoken);
  return [...spoken, ...spoken.map(mirrored)].flatMap(withShortIs);
}
