// What can be moved in the hearing, so that each lever's worth can be measured against the hearing as it is built.

import { readFileSync } from 'node:fs';
import { workedOutOnce } from '../../../src/replay/worked-out-once.ts';
import { dictionaryPath } from '../../../src/speech/file/index.ts';
import { hearingGrammar } from '../../../src/speech/hearing/network-of-files.ts';
import {
  type HearingFiles,
  type HearingParts,
  type WorkedOut,
  workedOutOf,
  workOut,
} from '../../../src/speech/index.ts';
import { says } from '../../speech/says.ts';

type Moved = Pick<HearingParts, 'highPass' | 'band' | 'without'> & { readonly root?: string };

/** The root of a grammar that is listened for where a vital sign is expected, and nothing else. */
const VITALS = 'hearing.vital';

export const LEVERS: Readonly<Record<string, Moved>> = {
  'as built': {},
  'no words in any order': { without: ['any-order'] },
  'no trust asked for': { without: ['trust'] },
  'no floor of noise': { without: ['floor'] },
  'the model for telephones': { band: 'narrow' },
  'high-pass at 150 Hz': { highPass: 150 },
  'high-pass at 300 Hz': { highPass: 300 },
  'whole grammar, vital signs said': {},
  'vital signs alone': { root: VITALS },
};

/** Which sentences are heard with the lever: both sizes of grammar are compared on what the smaller one lets be said. */
export function saidWith(lever: string, files: HearingFiles): (sentence: string) => boolean {
  if (!lever.includes('vital signs')) return () => true;
  const grammar = hearingGrammar(files, VITALS);
  if (grammar.kind === 'errors') throw new Error('The hearing grammar has faults.');
  const network = grammar.network(() => true);
  return (sentence) => says(network, sentence);
}

/** What is listened for with it. */
export function workedOutWith({ root }: Moved, files: HearingFiles): WorkedOut {
  if (root === undefined) return workedOutOf(workedOutOnce(files));
  const worked = workOut(files, readFileSync(dictionaryPath(), 'utf8'), root);
  if (worked.kind === 'errors') throw new Error('The hearing grammar has faults.');
  return worked;
}
