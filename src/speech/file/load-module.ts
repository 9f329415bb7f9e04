// The recogniser's compiled module and its models, from the package as it is installed and the project; leaves the process as it was.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { MODEL_FILES, type Models, modelsOf, PACKAGE_FOLDER } from '../engine/model-files.ts';
import type { SoundModule } from '../engine/sound-module.ts';

export interface Loaded {
  readonly module: SoundModule;
  readonly models: Models;
}

const WIDE_BAND = fileURLToPath(new URL('../engine/wide-band/', import.meta.url));

/** Loads the module; throws where the package is not installed. */
export async function loadModule(): Promise<Loaded> {
  const path = createRequire(import.meta.url).resolve('soundswallower');
  const handlers = process.listeners('uncaughtException');
  const { default: create } = (await import(pathToFileURL(path).href)) as {
    default: (settings: object) => Promise<SoundModule>;
  };
  const module = await create({ print: () => undefined, printErr: () => undefined });
  // The module takes over faults of the whole process; they are not its to handle.
  for (const handler of process.listeners('uncaughtException'))
    if (!handlers.includes(handler)) process.off('uncaughtException', handler);
  const folders = { package: join(dirname(path), PACKAGE_FOLDER), project: WIDE_BAND };
  const files = await Promise.all(
    MODEL_FILES.map(async ({ name, of, file }) => [name, await readFile(join(folders[of], file))] as const),
  );
  return { module, models: modelsOf(new Map(files)) };
}
