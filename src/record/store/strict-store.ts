// A store for idb-keyval that has written to the disk when it says so, and names every way in which it may fail.

import type { UseStore } from 'idb-keyval';
import { failureOf, storeFailure } from './failure.ts';

/** The version of the database's own shape; what lies in it has versions of its own. */
const VERSION = 2;
/** How long another page may hold the database's older version open, ms. */
const PATIENCE = 4000;

/**
 * A `UseStore` with strict durability: a write resolves when its transaction is complete, and what was said to be
 * written is on the disk. It rejects with a `StoreFailure`.
 */
export function createStrictStore(database: string, name: string): UseStore {
  let opened: Promise<IDBDatabase> | null = null;
  const forget = (): void => {
    opened = null;
  };
  const open = (): Promise<IDBDatabase> => {
    opened ??= openDatabase(database, name, forget).catch((error) => {
      forget();
      throw error;
    });
    return opened;
  };
  return async (mode, callback) => {
    const transaction = begin(await open(), name, mode) ?? begin(await reopen(), name, mode);
    if (transaction === null) throw storeFailure('aborted', 'the database closes');
    const complete = completion(transaction);
    try {
      const result = await callback(transaction.objectStore(name));
      if (mode !== 'readonly') await complete;
      else complete.catch(() => undefined);
      return result;
    } catch (error) {
      // The transaction's own reason says more than that of the request that fell with it.
      const reason = await complete.then(
        () => null,
        (why) => why,
      );
      throw reason ?? failureOf(error, 'request');
    }
  };

  function reopen(): Promise<IDBDatabase> {
    forget();
    return open();
  }
}

/** Null where the connection was closed meanwhile: some browsers close it on their own. */
function begin(database: IDBDatabase, name: string, mode: IDBTransactionMode): IDBTransaction | null {
  try {
    return database.transaction(name, mode, { durability: 'strict' });
  } catch {
    return null;
  }
}

const completion = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    let failed: DOMException | null = null;
    transaction.onerror = ({ target }) => {
      failed ??= (target as IDBRequest | null)?.error ?? null;
    };
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(failureOf(transaction.error ?? failed, 'aborted'));
  });

function openDatabase(database: string, name: string, lost: () => void): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    let request: IDBOpenDBRequest;
    try {
      request = indexedDB.open(database, VERSION);
    } catch (error) {
      reject(failureOf(error, 'unavailable'));
      return;
    }
    let timer: ReturnType<typeof setTimeout> | null = null;
    request.onupgradeneeded = () => {
      if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
    };
    // A page of an earlier version that does not let go would otherwise keep this one waiting without a word.
    request.onblocked = () => {
      timer = setTimeout(() => reject(storeFailure('blocked', database)), PATIENCE);
    };
    request.onerror = () => reject(failureOf(request.error, 'unavailable'));
    request.onsuccess = () => {
      if (timer !== null) clearTimeout(timer);
      const made = request.result;
      made.onclose = lost;
      // A later version wants in: this page lets go, and its next use opens anew or says that it is too old.
      made.onversionchange = () => {
        made.close();
        lost();
      };
      resolve(made);
    };
  });
}
