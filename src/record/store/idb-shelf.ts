// The shelf in the browser's own database, through idb-keyval's seam for a store.

import { promisifyRequest, type UseStore } from 'idb-keyval';
import type { Key, Placed, Shelf } from './shelf.ts';
import { createStrictStore } from './strict-store.ts';

export const DATABASE = 'fieldsay';
export const OBJECT_STORE = 'kept';

/** The range of all keys that begin with the prefix: an array sorts after every number and text. */
const rangeUnder = (prefix: Key, from?: number): IDBKeyRange =>
  IDBKeyRange.bound(from === undefined ? [...prefix] : [...prefix, from], [...prefix, []]);

/** A shelf on the device's disk. */
export function createIdbShelf(store: UseStore = createStrictStore(DATABASE, OBJECT_STORE)): Shelf {
  return {
    get: (key) => store('readonly', (on) => promisifyRequest(on.get([...key]))),
    under: (prefix, from) =>
      store('readonly', async (on): Promise<readonly Placed[]> => {
        const range = rangeUnder(prefix, from);
        // Both are asked for at once, so that they see the same state and the transaction does not end between.
        const [keys, values] = await Promise.all([
          promisifyRequest(on.getAllKeys(range)),
          promisifyRequest(on.getAll(range)),
        ]);
        return keys.map((key, index) => ({ key: key as unknown as Key, value: values[index] }));
      }),
    keysUnder: async (prefix) =>
      (await store('readonly', (on) =>
        promisifyRequest(on.getAllKeys(rangeUnder(prefix))),
      )) as unknown as Key[],
    write: ({ absent = [], put = [], add = [], change = [], remove = [], removeUnder = [] }) =>
      store('readwrite', (on) => {
        // An add that finds something there ends the transaction; one that does not is taken back at once.
        for (const key of absent) {
          on.add(0, [...key]);
          on.delete([...key]);
        }
        for (const key of remove) on.delete([...key]);
        for (const prefix of removeUnder) on.delete(rangeUnder(prefix));
        for (const { key, value } of put) on.put(value, [...key]);
        for (const { key, value } of add) on.add(value, [...key]);
        for (const { key, to } of change) {
          const request = on.get([...key]);
          request.onsuccess = () => {
            const next = to(request.result);
            if (next !== undefined) on.put(next, [...key]);
          };
        }
      }),
  };
}
