// The recogniser from the browser's own storage: compiled code and model, without a network and without a fetch.

import createModule from 'soundswallower';
import { type Models, modelsOf } from '../engine/model-files.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { type ModelPart, openModelStore, readModel } from '../model/index.ts';

export interface Recogniser {
  readonly kind: 'recogniser';
  readonly module: SoundModule;
  readonly models: Models;
}

const CODE = /\.wasm$/;

/** `no-model` where it is not stored, or was found damaged. */
export async function loadRecogniser(
  parts: readonly ModelPart[],
): Promise<Recogniser | { readonly kind: 'no-model' }> {
  const read = await readModel(await openModelStore(caches), parts);
  if (read.kind === 'missing') return { kind: 'no-model' };
  const code = [...read.content].find(([name]) => CODE.test(name))?.[1];
  const make = createModule as unknown as (settings: object) => Promise<SoundModule>;
  // With its bytes at hand the package looks for its compiled code nowhere.
  const module = await make({
    wasmBinary: code,
    locateFile: (name: string) => name,
    print: () => undefined,
    printErr: () => undefined,
  });
  return { kind: 'recogniser', module, models: modelsOf(read.content) };
}
