// The recogniser's compiled module and its model, from the package as it is installed; leaves the process as it was.

import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { MODEL_FILES, MODEL_FOLDER, type ModelFiles } from '../engine/model.ts';
import type { SoundModule } from '../engine/sound-module.ts';

export interface Loaded {
  readonly module: SoundModule;
  readonly model: ModelFiles;
}

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
  const folder = join(dirname(path), MODEL_FOLDER);
  const files = await Promise.all(
    MODEL_FILES.map(async (name) => [name, await readFile(join(folder, name))] as const),
  );
  return { module, model: Object.fromEntries(files) as unknown as ModelFiles };
}
