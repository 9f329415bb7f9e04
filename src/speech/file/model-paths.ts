// Where the recogniser's files lie on this machine: some in its package, some in the project.

import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DICTIONARY, MODEL_FILES, PACKAGE_FOLDER } from '../engine/model-files.ts';

const WIDE_BAND = fileURLToPath(new URL('../engine/wide-band/', import.meta.url));

/** The package's entry for Node; throws where it is not installed. */
export const packageEntry = (): string => createRequire(import.meta.url).resolve('soundswallower');

/** The model's words with their phones; throws where the package is not installed. */
export const dictionaryPath = (): string => join(dirname(packageEntry()), PACKAGE_FOLDER, DICTIONARY);

/** By the names under which the models' files are handed in; throws where the package is not installed. */
export function modelPaths(): readonly (readonly [name: string, path: string])[] {
  const folders = { package: join(dirname(packageEntry()), PACKAGE_FOLDER), project: WIDE_BAND };
  return MODEL_FILES.map(({ name, of, file }) => [name, join(folders[of], file)] as const);
}
