// The words of the trade that the browser's own recognition is told of, from the files as they were bundled.

import pronunciations from '/grammar/pronunciations.dict?raw';
import { type LikelyPhrase, likelyPhrases } from '../../../speech/browser/index.ts';
import { grammarFiles } from '../../later/grammar.ts';

export const likely = (): readonly LikelyPhrase[] => likelyPhrases(grammarFiles(), pronunciations);
