// The hearing grammar of the project's files as networks, and how likely words are in it; a fault in a file is an answer and no
// exception.

import { type GrammarErrors, linkGrammars, tokensIn } from '../../jsgf/index.ts';
import { looseNetwork } from '../network/loose.ts';
import { type Network, networkOf, wordsOf } from '../network/network.ts';
import { type Pairs, pairsIn, pairsOf, sumOf } from '../network/pairs.ts';
import { type LikelyTalk, likelyTalk } from '../network/talk.ts';
import { type HearingFiles, linesOf } from './hearing-files.ts';
import { type NearWords, nearWords } from './near.ts';
import { withShortIs } from './short-is.ts';

/** What is listened for: one utterance. */
const ROOT = 'hearing.utterance';

/** Given the words that can be heard, the network. */
export interface HearingGrammar {
  readonly kind: 'grammar';
  readonly network: (canHear: CanHear) => Network;
  readonly near: (canHear: CanHear) => NearWords;
  /** its words in any order, with those of ordinary talk, given the network */
  readonly loose: (canHear: CanHear, network: Network) => LooseTalk;
}

type CanHear = (word: string) => boolean;

export interface LooseTalk {
  readonly network: Network;
  /** how likely words are in an exam */
  readonly exam: LikelyTalk;
  /** and in what people say besides */
  readonly besides: LikelyTalk;
}

/** The pairs of words of the grammar count as so many sentences beside those that are written. */
const WORTH = 1000;
/** And what the tool is told, of which nobody writes, as so many more. */
const COMMAND = 'hearing.command';
const COMMANDS = 500;
/** So much of what is said in no known order is a word of ordinary talk, and so much any that the parser knows. */
const ORDINARY = 0.08;
const KNOWN = 0.05;

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
    near: (canHear) => nearWords(set, canHear),
    network: (canHear) => networkOf({ set, canHear }, root),
    loose: (canHear, network) => {
      const exam = sumOf([
        { pairs: pairsOf(network), worth: WORTH },
        { pairs: pairsOf(networkOf({ set, canHear }, COMMAND)), worth: COMMANDS },
        { pairs: spokenPairs(files), worth: 1 },
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
      const words = wordsOf(loose).length;
      return { network: loose, exam: likelyTalk(exam, words), besides: likelyTalk(ordinary, words) };
    },
  };
}

function spokenPairs(files: HearingFiles): Pairs {
  const spoken = linesOf(files.spoken);
  return pairsIn([...spoken, ...spoken.map(mirrored)].flatMap(withShortIs));
}
