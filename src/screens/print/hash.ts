// The log's fingerprint, so that paper and record can be held against each other: SHA-256 of its events as they are exported.

import type { RecordEvent } from '../../record/index.ts';

/** 64 hexadecimal digits, or null where the browser offers no digest (a page without a secure address). */
export async function hashOf(events: readonly RecordEvent[]): Promise<string | null> {
  const subtle = globalThis.crypto?.subtle;
  if (subtle === undefined) return null;
  const digest = await subtle.digest('SHA-256', new TextEncoder().encode(JSON.stringify(events)));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
