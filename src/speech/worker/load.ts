// The recogniser from the browser's own storage: compiled code and model, without a network and without a fetch.

import createModule from 'soundswallower';
import type { ModelFiles } from '../engine/model.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { type ModelPart, openModelStore, readModel } from '../model/index.ts';

export interface Recogniser {
  readonly kind: 'recogniser';
  readonly module: SoundModule;
  readonly model: ModelFiles;
}

const CODE = /\.wasm$/;

/** `no-model` where it is not stored, or was found damaged. */
export async function loadRecogniser(
  parts: readonly ModelPart[],
): Promise<Recogniser | { readonly kind: 'no-model' }> {
  const read = await readModel(await openModelStore(caches), parts);
  if (read.kind === 'missing') return { kind: 'no-model' };
  const files = [...read.content];
  const code = files.find(([name]) => CODE.test(name))?.[1];
  const make = createModule as unknown as (settings: object) => Promise<SoundModule>;
  // With its bytes at hand the package looks for its compiled code nowhere.
  const module = await make({
    wasmBinary: code,
    locateFile: (name: string) => name,
    print: () => undefined,
    printErr: () => undefined,
  });
  const model = Object.fromEntries(files.filter(([name]) => !CODE.test(name))) as unknown as ModelFiles;
  return { kind: 'recogniser', module, model };
}
