// The log's fingerprint, so that paper and record can be held against each other: the hash of its last event in the chain.

import { beginChain, linkAfter } from '../../record/chain/index.ts';
import type { RecordEvent } from '../../record/index.ts';

/** SHA-256 of a text in hexadecimal, or null where the browser offers no digest (a page without a secure address). */
function digestHere(): ((text: string) => Promise<string>) | null {
  const subtle = globalThis.crypto?.subtle;
  if (subtle === undefined) return null;
  return async (text) => {
    const bytes = await subtle.digest('SHA-256', new TextEncoder().encode(text));
    return Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('');
  };
}

/** 64 hexadecimal digits: each event is hashed with the hash before it, the first with the record's name. */
export async function hashOf(record: string, events: readonly RecordEvent[]): Promise<string | null> {
  const digest = digestHere();
  if (digest === null) return null;
  let hash = await beginChain(record, digest);
  for (const event of events) hash = await linkAfter(hash, event, digest);
  return hash;
}
