// Whether the browser promises to keep the page's storage, and how much room there is.

import { type Signal, signal } from '@preact/signals';

export type Persistence = 'asking' | 'promised' | 'not-promised' | 'unknown';

/** Asks the browser not to clear the storage on its own (Storage, WHATWG); some ask the person in turn. */
export function askToPersist(): Signal<Persistence> {
  const answer = signal<Persistence>('asking');
  const ask = async (): Promise<Persistence> => {
    if (navigator.storage?.persist === undefined) return 'unknown';
    return (await navigator.storage.persisted()) || (await navigator.storage.persist())
      ? 'promised'
      : 'not-promised';
  };
  ask().then(
    (given) => {
      answer.value = given;
    },
    () => {
      answer.value = 'unknown';
    },
  );
  return answer;
}

export const PERSISTENCE_WORDS: Readonly<Record<Persistence, string>> = {
  asking: 'The browser is asked to keep this storage.',
  promised: 'The browser promises not to clear this storage on its own.',
  'not-promised':
    'The browser does not promise to keep this storage: when room is short it may clear it. Export what must last; adding this page to the home screen helps.',
  unknown: 'The browser does not say whether it may clear this storage. Export what must last.',
};

/** `12 MB of 2.1 GB are used.`, or empty where the browser does not tell. */
export async function roomInWords(): Promise<string> {
  try {
    const { usage, quota } = await navigator.storage.estimate();
    return usage === undefined || quota === undefined ? '' : `${size(usage)} of ${size(quota)} are used.`;
  } catch {
    return '';
  }
}

/** Bytes that the browser would still give the page, or null where it does not tell. */
export async function bytesLeft(): Promise<number | null> {
  try {
    const { usage, quota } = await navigator.storage.estimate();
    return usage === undefined || quota === undefined ? null : quota - usage;
  } catch {
    return null;
  }
}

/** Bytes by their decimal multiples. */
export function size(bytes: number): string {
  if (bytes < 1e6) return `${Math.ceil(bytes / 1000)} kB`;
  return bytes < 1e9 ? `${(bytes / 1e6).toFixed(1)} MB` : `${(bytes / 1e9).toFixed(1)} GB`;
}
