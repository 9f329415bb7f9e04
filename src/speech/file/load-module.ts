// The recogniser's compiled module and its models, as they lie on this machine; leaves the process as it was.

import { readFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { type Models, modelsOf } from '../engine/model-files.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { modelPaths, packageEntry } from './model-paths.ts';

export interface Loaded {
  readonly module: SoundModule;
  readonly models: Models;
}

/** Loads the module; throws where the package is not installed. */
export async function loadModule(): Promise<Loaded> {
  const handlers = process.listeners('uncaughtException');
  const { default: create } = (await import(pathToFileURL(packageEntry()).href)) as {
    default: (settings: object) => Promise<SoundModule>;
  };
  const module = await create({ print: () => undefined, printErr: () => undefined });
  // The module takes over faults of the whole process; they are not its to handle.
  for (const handler of process.listeners('uncaughtException'))
    if (!handlers.includes(handler)) process.off('uncaughtException', handler);
  const files = await Promise.all(
    modelPaths().map(async ([name, path]) => [name, await readFile(path)] as const),
  );
  return { module, models: modelsOf(new Map(files)) };
}
