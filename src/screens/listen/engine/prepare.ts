// The model on this device: looked for, and fetched when a person asks for it.

import {
  bytesOf,
  fetchModel,
  type ModelStore,
  missingFiles,
  openModelStore,
} from '../../../speech/model/index.ts';
import type { EarParts, Engine } from '../ear.ts';
import { modelParts } from './model.ts';

const NO_STORE = 'This browser does not let the page store the recogniser: type, or use another browser.';

/** Looks for the model, fetches it, and stops fetching. */
export function preparing({ model }: Pick<EarParts, 'model'>): Pick<Engine, 'look' | 'prepare' | 'cancel'> {
  const files = modelParts();
  let abort: AbortController | null = null;

  const store = async (): Promise<ModelStore | null> => {
    try {
      return await openModelStore(caches);
    } catch {
      model.value = { state: 'impossible', why: NO_STORE };
      return null;
    }
  };

  const look = async (why = ''): Promise<void> => {
    const opened = await store();
    if (opened === null) return;
    const missing = await missingFiles(opened, files);
    model.value =
      missing.length === 0 ? { state: 'stored' } : { state: 'missing', bytes: bytesOf(missing), why };
  };

  return {
    look: () => look(),
    prepare: async () => {
      const opened = await store();
      if (opened === null || abort !== null) return;
      abort = new AbortController();
      const { signal } = abort;
      const fetched = await fetchModel({
        store: opened,
        files,
        fetch: (address, options) => fetch(address, options),
        progress: (done, of) => {
          model.value = { state: 'fetching', done, of };
        },
        signal,
      });
      abort = null;
      await look(fetched.kind === 'failed' ? fetched.why : '');
    },
    cancel: () => abort?.abort(),
  };
}
