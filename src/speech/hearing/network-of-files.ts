// The hearing grammar of the project's files as a network; a fault in a file is an answer and no exception.

import { type GrammarErrors, linkGrammars } from '../../jsgf/index.ts';
import { type Network, networkOf } from '../network/network.ts';
import type { HearingFiles } from './hearing-files.ts';
import { type NearWords, nearWords } from './near.ts';

/** What is listened for: one utterance. */
const ROOT = 'hearing.utterance';

/** Given the words that can be heard, the network. */
export interface HearingGrammar {
  readonly kind: 'grammar';
  readonly network: (canHear: (word: string) => boolean) => Network;
  readonly near: (canHear: (word: string) => boolean) => NearWords;
}

/** Links the grammars; the hearing grammar must be among them. `root` is what is listened for, named in full. */
export function hearingGrammar(files: HearingFiles, root = ROOT): HearingGrammar | GrammarErrors {
  const linked = linkGrammars(files.grammar);
  if (linked.kind === 'errors') return linked;
  const set = linked.grammars;
  return {
    kind: 'grammar',
    near: (canHear) => nearWords(set, canHear),
    network: (canHear) => networkOf({ set, canHear }, root),
  };
}
