// Leaves nothing of this page on the device: its database, its caches, its settings and its service worker.

import { DATABASE } from './idb-shelf.ts';

/** What is still there after a wipe, in words; empty where nothing is. */
export type Left = readonly string[];

const deleted = (): Promise<boolean> =>
  new Promise((resolve) => {
    const request = indexedDB.deleteDatabase(DATABASE);
    request.onsuccess = () => resolve(true);
    request.onerror = () => resolve(false);
    // Other pages let go when they are told; one that hangs is said to hold it.
    setTimeout(() => resolve(false), 8000);
  });

/** Wipes everything that this page keeps, without a network. */
export async function wipeEverything(): Promise<Left> {
  const left: string[] = [];
  if (!(await deleted()))
    left.push('the records: another page of this browser holds them open; close it and wipe again');
  try {
    localStorage.clear();
    sessionStorage.clear();
  } catch {
    left.push('settings');
  }
  try {
    for (const name of await caches.keys()) await caches.delete(name);
    for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
  } catch {
    left.push('the page itself, kept for use without a network');
  }
  return left;
}
