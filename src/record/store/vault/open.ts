// Opens the vault at the start: at once under the device key, or not before the passphrase is given.

import { newName } from '../bytes.ts';
import { storeFailure } from '../failure.ts';
import type { Keys } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import { changeVault, type DeviceVault, readVault, VAULT_KEY, vaultRow } from './doc.ts';
import { putIn } from './inbox.ts';
import { keyOf, newDeviceKey, newRawKey, unwrap, wrap } from './wrap.ts';

export type Opened =
  | { readonly kind: 'open'; readonly keys: Keys; readonly vault: 'device' }
  | { readonly kind: 'locked'; readonly hasPasskey: boolean }
  /** the vault cannot be used; what it guards stays as it is */
  | { readonly kind: 'unusable'; readonly why: string };

/** Opens the vault; the first time on a device it is made, under a key of the device. */
export async function openVault(shelf: Shelf): Promise<Opened> {
  const vault = await readVault(shelf);
  if (vault === 'unknown')
    return { kind: 'unusable', why: 'The keys were written by another version of this page.' };
  if (vault === null) return begin(shelf);
  if (vault.kind === 'locked') return { kind: 'locked', hasPasskey: vault.passkey !== null };
  const keys = await deviceKeys(vault);
  if (keys === null) return { kind: 'unusable', why: 'The device key does not fit what is kept here.' };
  return { kind: 'open', keys, vault: 'device' };
}

export async function deviceKeys(vault: DeviceVault): Promise<Keys | null> {
  const raw = await unwrap(vault.device, vault.main, vault.wrapped);
  return raw === null ? null : { main: vault.main, all: new Map([[vault.main, await keyOf(raw)]]) };
}

async function begin(shelf: Shelf): Promise<Opened> {
  const [main, raw, device] = [newName(), newRawKey(), await newDeviceKey()];
  const vault: DeviceVault = {
    version: 1,
    kind: 'device',
    main,
    device,
    wrapped: await wrap(device, main, raw),
  };
  try {
    // Two pages may begin at once: only one of them makes the vault.
    await shelf.write({ add: [vaultRow(vault)] });
  } catch (error) {
    if ((await shelf.get(VAULT_KEY)) === undefined) throw error;
    return openVault(shelf);
  }
  return { kind: 'open', keys: { main, all: new Map([[main, await keyOf(raw)]]) }, vault: 'device' };
}

/**
 * Keys for an examination that begins while the page is locked: they read nothing that was kept before, and what they
 * seal can be read again only with the passphrase.
 */
export async function openForOne(shelf: Shelf): Promise<Keys> {
  const vault = await readVault(shelf);
  if (vault === null || vault === 'unknown' || vault.kind !== 'locked')
    throw storeFailure('request', 'the vault is not locked');
  const [main, raw] = [newName(), newRawKey()];
  const one = await putIn(vault.inbox.publicKey, main, raw);
  // A key that is not in the vault opens nothing later: then the examination must not begin under it.
  if (!(await changeVault(shelf, vault, (now) => ({ ...now, waiting: [...now.waiting, one] }))))
    throw storeFailure('request', 'the vault was changed by another page');
  return { main, all: new Map([[main, await keyOf(raw)]]) };
}
