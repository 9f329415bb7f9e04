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
  let opening: Opening | null = null;
  const forget = (): void => {
    opening = null;
  };
  const open = async (): Promise<IDBDatabase> => {
    opening ??= openDatabase(database, name, forget);
    const mine = opening;
    try {
      return await mine.opened();
    } catch (error) {
      // One that is blocked still waits, and comes when the other page lets go; a second request would wait behind it
      // without being told that it does.
      if (opening === mine && failureOf(error, 'unavailable').failure !== 'blocked') forget();
      throw error;
    }
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

interface Opening {
  /** rejects where another page holds an older version open for too long; it may be asked again */
  opened(): Promise<IDBDatabase>;
}

function openDatabase(database: string, name: string, lost: () => void): Opening {
  let isBlocked = false;
  let giveUp: (() => void)[] = [];
  const asked = new Promise<IDBDatabase>((resolve, reject) => {
    let request: IDBOpenDBRequest;
    try {
      request = indexedDB.open(database, VERSION);
    } catch (error) {
      reject(failureOf(error, 'unavailable'));
      return;
    }
    request.onupgradeneeded = () => {
      if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
    };
    // A page of an earlier version that does not let go would otherwise keep this one waiting without a word.
    request.onblocked = () => {
      isBlocked = true;
      for (const one of giveUp) setTimeout(one, PATIENCE);
    };
    request.onerror = () => reject(failureOf(request.error, 'unavailable'));
    request.onsuccess = () => {
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
  // Whoever asks takes the failure; nobody may be asking at that moment.
  asked.catch(() => undefined);
  return {
    opened: () =>
      new Promise((resolve, reject) => {
        const late = (): void => reject(storeFailure('blocked', database));
        giveUp = [...giveUp, late];
        if (isBlocked) setTimeout(late, PATIENCE);
        asked.then(resolve, reject).finally(() => {
          giveUp = giveUp.filter((one) => one !== late);
        });
      }),
  };
}
