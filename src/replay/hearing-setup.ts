// What the hearing of recordings needs, as it lies beside the program.

import { readFileSync } from 'node:fs';
import type { HearingSetup } from '../speech/file/index.ts';
import type { HearingFiles } from '../speech/index.ts';
import { grammarFiles } from './grammar-files.ts';
import { workedOutOnce } from './worked-out-once.ts';

const FOLDER = new URL('../../grammar/', import.meta.url);

const textOf = (name: string): string => readFileSync(new URL(name, FOLDER), 'utf8');

/** The grammars, the words and their pronunciations. */
export const hearingFiles = (): HearingFiles => ({
  grammar: [
    ...grammarFiles(),
    { file: 'grammar/hearing/hearing.jsgf', text: textOf('hearing/hearing.jsgf') },
  ],
  pronunciations: textOf('pronunciations.dict'),
  spoken: textOf('hearing/spoken.txt'),
  ordinary: textOf('hearing/ordinary.txt'),
  ordinaryWords: textOf('hearing/ordinary-words.txt'),
});

/** What is listened for, and the thread's address. */
export function hearingSetup(): HearingSetup {
  const worked = workedOutOnce(hearingFiles());
  return { worked, thread: new URL('../speech/file/thread.mjs', import.meta.url) };
}
