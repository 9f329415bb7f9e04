// The model's own place in the browser's storage, apart from the page's files: what is there, and what is read back whole.

import type { ModelPart } from './model-part.ts';
import { sha256 } from './sha256.ts';

/** Never cleared by an update of the page. */
export const MODEL_CACHE = 'fieldsay-model';

/** The part of the browser's `Cache` that is used. */
export interface ModelStore {
  match(address: string): Promise<Response | undefined>;
  put(address: string, content: Response): Promise<void>;
  delete(address: string): Promise<boolean>;
  /** the addresses of all that is stored */
  keys(): Promise<readonly { readonly url: string }[]>;
}

/** Opens it; rejects where the browser refuses storage. */
export const openModelStore = (caches: CacheStorage): Promise<ModelStore> => caches.open(MODEL_CACHE);

/** Those of the files that are not stored yet. */
export async function missingFiles(
  store: ModelStore,
  files: readonly ModelPart[],
): Promise<readonly ModelPart[]> {
  const there = await Promise.all(files.map(({ address }) => store.match(address)));
  return files.filter((_file, index) => there[index] === undefined);
}

export type ReadModel =
  | { readonly kind: 'model'; readonly content: ReadonlyMap<string, Uint8Array<ArrayBuffer>> }
  /** these are not there, or were damaged where they lay and have been thrown away */
  | { readonly kind: 'missing'; readonly files: readonly ModelPart[] };

/** Every file by its name, each checked again: storage can be damaged, and a damaged model hears other words. */
export async function readModel(store: ModelStore, files: readonly ModelPart[]): Promise<ReadModel> {
  const content = new Map<string, Uint8Array<ArrayBuffer>>();
  const missing: ModelPart[] = [];
  for (const file of files) {
    const stored = await store.match(file.address);
    const bytes = stored === undefined ? null : new Uint8Array(await stored.arrayBuffer());
    if (bytes !== null && (await sha256(bytes)) === file.sha256) content.set(file.name, bytes);
    else {
      if (bytes !== null) await store.delete(file.address);
      missing.push(file);
    }
  }
  return missing.length === 0 ? { kind: 'model', content } : { kind: 'missing', files: missing };
}

/** Throws away what no file of the list needs: the model of an earlier version. */
export async function forgetOthers(store: ModelStore, files: readonly ModelPart[]): Promise<void> {
  for (const { url } of await store.keys())
    if (!files.some(({ address }) => url === address)) await store.delete(url);
}
