// The texts that the recogniser is told, as they were bundled.

import own from '/grammar/hearing/hearing.jsgf?raw';
import ordinary from '/grammar/hearing/ordinary.txt?raw';
import ordinaryWords from '/grammar/hearing/ordinary-words.txt?raw';
import spoken from '/grammar/hearing/spoken.txt?raw';
import pronunciations from '/grammar/pronunciations.dict?raw';
import type { HearingFiles } from '../../../speech/index.ts';
import { grammarFiles } from '../../later/grammar.ts';

/** Grammars, pronunciations, sentences and words. */
export const hearingFiles = (): HearingFiles => ({
  grammar: [...grammarFiles(), { file: 'grammar/hearing/hearing.jsgf', text: own }],
  pronunciations,
  spoken,
  ordinary,
  ordinaryWords,
});
