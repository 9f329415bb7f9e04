// Brings everything under the main key, in steps that may be broken off anywhere. No key is ever thrown away by it.

import { placeOf, SEALED_PREFIXES } from '../places.ts';
import { isSealed, type Keys, sealBytes, unsealBytes } from '../sealed.ts';
import type { Placed, Shelf } from '../shelf.ts';

const STEP = 200;

/**
 * Seals anew what lies under another key than the main one; gives how many rows that were. What cannot be opened stays
 * as it lies. The older keys stay in the vault, under the main one: another page may still write with them.
 */
export async function sealAnew(shelf: Shelf, keys: Keys): Promise<number> {
  let done = 0;
  for (const prefix of SEALED_PREFIXES) {
    const rows = (await shelf.under(prefix)).filter(
      ({ value }) => isSealed(value) && value.key !== keys.main,
    );
    for (let at = 0; at < rows.length; at += STEP) {
      const fresh: Placed[] = [];
      for (const { key, value } of rows.slice(at, at + STEP)) {
        const opened = await unsealBytes(keys, placeOf(key), value);
        if (opened.kind === 'bytes')
          fresh.push({ key, value: await sealBytes(keys, placeOf(key), opened.bytes) });
      }
      await shelf.write({ put: fresh });
      done += fresh.length;
    }
  }
  return done;
}
