// The hearing grammar of the project's files as a network; a fault in a file is an answer and no exception.

import { type GrammarErrors, linkGrammars } from '../../jsgf/index.ts';
import { looseNetwork } from '../network/loose.ts';
import { type Network, networkOf } from '../network/network.ts';
import { pairsIn, pairsOf } from '../network/pairs.ts';
import { type HearingFiles, linesOf } from './hearing-files.ts';
import { type NearWords, nearWords } from './near.ts';

/** What is listened for: one utterance. */
const ROOT = 'hearing.utterance';

/** Given the words that can be heard, the network. */
export interface HearingGrammar {
  readonly kind: 'grammar';
  readonly network: (canHear: (word: string) => boolean) => Network;
  readonly near: (canHear: (word: string) => boolean) => NearWords;
  /** its words in any order, with those of ordinary talk, given the network */
  readonly loose: (canHear: (word: string) => boolean, network: Network) => Network;
}

/** The pairs of words of the grammar count as so many sentences beside those that are written. */
const WORTH = 1000;

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
      const spoken = linesOf(files.spoken);
      return looseNetwork({
        said: [
          { pairs: pairsOf(network), worth: WORTH },
          { pairs: pairsIn([...spoken, ...spoken.map(mirrored)]), worth: 1 },
        ],
        ordinary: linesOf(files.ordinary).flatMap((line) => line.split(' ')),
        canHear,
      });
    },
  };
}
