// Unlocks with a passphrase or a passkey; a wrong one costs nothing but time, and is counted before it is tried.

import { NO_TRIES, seenAt, stillToWait, type Tries } from '../../crypt/index.ts';
import type { Bytes } from '../bytes.ts';
import type { Keys } from '../sealed.ts';
import type { Shelf } from '../shelf.ts';
import { type LockedVault, readVault, TRIES_KEY } from './doc.ts';
import { takeOut } from './inbox.ts';
import { keyFromPassphrase, keyFromSecret, keyOf, unwrap } from './wrap.ts';

export const PASSKEY_PURPOSE = 'fieldsay-passkey/1';

export type Unlocked =
  | { readonly kind: 'open'; readonly keys: Keys; readonly raw: Bytes }
  | { readonly kind: 'wrong'; readonly waitMs: number }
  | { readonly kind: 'wait'; readonly waitMs: number }
  | { readonly kind: 'not-locked' };

async function readTries(shelf: Shelf): Promise<Tries> {
  const stored = (await shelf.get(TRIES_KEY)) as Partial<Tries> | undefined;
  const { wrong, last } = stored ?? {};
  return typeof wrong === 'number' && typeof last === 'number' ? { wrong, last } : NO_TRIES;
}

const keep = (shelf: Shelf, tries: Tries): Promise<void> =>
  shelf.write({ put: [{ key: TRIES_KEY, value: tries }] });

/** Milliseconds until a passphrase may be tried, at `now` (epoch ms). */
export async function waitToTry(shelf: Shelf, now: number): Promise<number> {
  const tries = await readTries(shelf);
  // A clock that was set back must not hold anybody off until it has caught up.
  if (tries.last > now) await keep(shelf, seenAt(tries, now));
  return stillToWait(tries, now);
}

/** Tries a passphrase at `now` (epoch ms). Nothing that is kept changes by a wrong one. */
export async function unlock(shelf: Shelf, passphrase: string, now: number): Promise<Unlocked> {
  const vault = await readVault(shelf);
  if (vault === null || vault === 'unknown' || vault.kind !== 'locked') return { kind: 'not-locked' };
  const waitMs = await waitToTry(shelf, now);
  if (waitMs > 0) return { kind: 'wait', waitMs };
  const tries = { wrong: (await readTries(shelf)).wrong + 1, last: now };
  // Counted before it is tried: closing the page while the key is worked out gives no free try.
  await keep(shelf, tries);
  const { salt, rounds } = vault.passphrase;
  const by = await keyFromPassphrase(passphrase, salt, rounds);
  const raw = await unwrap(by, vault.main, vault.passphrase);
  if (raw === null) return { kind: 'wrong', waitMs: stillToWait(tries, now) };
  await shelf.write({ remove: [TRIES_KEY] });
  return { kind: 'open', keys: await allKeys(vault, raw), raw };
}

/** Unlocks with the secret that the device's authenticator gives for the vault's credential. */
export async function unlockWithSecret(shelf: Shelf, secret: Bytes): Promise<Unlocked> {
  const vault = await readVault(shelf);
  if (vault === null || vault === 'unknown' || vault.kind !== 'locked' || vault.passkey === null)
    return { kind: 'not-locked' };
  const by = await keyFromSecret(secret, vault.passkey.salt, PASSKEY_PURPOSE);
  const raw = await unwrap(by, vault.main, vault.passkey);
  return raw === null ? { kind: 'wrong', waitMs: 0 } : { kind: 'open', keys: await allKeys(vault, raw), raw };
}

/** What the main key opens: itself, older keys, and those that waited in the inbox. */
export async function allKeys(vault: LockedVault, raw: Bytes): Promise<Keys> {
  const main = await keyOf(raw);
  const all = new Map([[vault.main, main]]);
  const keys: Keys = { main: vault.main, all };
  for (const one of vault.older) {
    const older = await unwrap(main, one.name, one);
    if (older !== null) all.set(one.name, await keyOf(older));
  }
  for (const [name, inboxed] of await takeOut(keys, vault)) all.set(name, await keyOf(inboxed));
  return keys;
}

/** The vault as it lies on the shelf, where it is locked by a passphrase; else null. */
export async function lockedVault(shelf: Shelf): Promise<LockedVault | null> {
  const vault = await readVault(shelf);
  return vault !== null && vault !== 'unknown' && vault.kind === 'locked' ? vault : null;
}
