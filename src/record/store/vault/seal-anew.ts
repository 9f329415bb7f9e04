// Brings everything under the main key, in steps that may be broken off anywhere. No key is ever thrown away by it.

import type { Bytes } from '../bytes.ts';
import { placeOf, SEALED_PREFIXES } from '../places.ts';
import { isSealed, type Keys, sealBytes, unsealBytes } from '../sealed.ts';
import type { Key, Shelf, Write } from '../shelf.ts';

const STEP = 200;

const same = (one: Bytes, other: Bytes): boolean => one.every((byte, at) => byte === other[at]);

/**
 * Seals anew what lies under another key than the main one; gives how many rows that were. What cannot be opened stays
 * as it lies. The older keys stay in the vault, under the main one: another page may still write with them.
 */
export async function sealAnew(shelf: Shelf, keys: Keys): Promise<number> {
  let done = 0;
  for (const prefix of SEALED_PREFIXES) {
    const all = await shelf.keysUnder(prefix);
    for (let at = 0; at < all.length; at += STEP) {
      const fresh = (await Promise.all(all.slice(at, at + STEP).map(anew))).flat();
      if (fresh.length > 0) await shelf.write({ change: fresh });
      done += fresh.length;
    }
  }
  return done;

  async function anew(key: Key): Promise<NonNullable<Write['change']>> {
    const stored = await shelf.get(key);
    if (!isSealed(stored) || stored.key === keys.main) return [];
    const opened = await unsealBytes(keys, placeOf(key), stored);
    if (opened.kind !== 'bytes') return [];
    const value = await sealBytes(keys, placeOf(key), opened.bytes);
    // The end of a log may have moved on meanwhile: what was written since is newer, and stays.
    return [{ key, to: (lies) => (isSealed(lies) && same(lies.iv, stored.iv) ? value : undefined) }];
  }
}
