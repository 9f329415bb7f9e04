// How the data keys are kept: each wrapped by something, and never lying open beside what they seal.

import type { Bytes } from '../bytes.ts';
import type { Sealed } from '../sealed.ts';
import type { Placed, Shelf } from '../shelf.ts';

/** AES-GCM of a data key's 32 bytes, bound to the key's name. */
export interface Wrapped {
  readonly iv: Bytes;
  readonly data: Bytes;
}

/** PBKDF2-HMAC-SHA-256 (RFC 8018). */
export interface PassphraseLock extends Wrapped {
  readonly salt: Bytes;
  readonly rounds: number;
}

/** The output of the PRF extension (Web Authentication Level 3, W3C) for one credential, through HKDF (RFC 5869). */
export interface PasskeyLock extends Wrapped {
  readonly credential: Bytes;
  readonly salt: Bytes;
}

/** A data key that anybody may put in and only the passphrase takes out: ECDH on P-256 with a key of one use. */
export interface InboxKey extends Wrapped {
  readonly name: string;
  readonly sender: Bytes;
}

/** Until a passphrase is set: the wrapping key lies in the database too, usable and not to be read out by scripts. */
export interface DeviceVault {
  readonly version: 1;
  readonly kind: 'device';
  readonly main: string;
  readonly device: CryptoKey;
  readonly wrapped: Wrapped;
}

export interface LockedVault {
  readonly version: 1;
  readonly kind: 'locked';
  readonly main: string;
  readonly passphrase: PassphraseLock;
  readonly passkey: PasskeyLock | null;
  /** for an examination that must begin while nobody has time to unlock */
  readonly inbox: { readonly publicKey: Bytes; readonly privateKey: Sealed };
  readonly waiting: readonly InboxKey[];
  /** data keys of before, under the main key, until all they sealed is sealed anew */
  readonly older: readonly (Wrapped & { readonly name: string })[];
}

export type Vault = DeviceVault | LockedVault;

export const VAULT_KEY = ['vault'] as const;
export const TRIES_KEY = ['vault-tries'] as const;

/** Null before the first use. What lies there and is no vault of this version is an error, never overwritten. */
export async function readVault(shelf: Shelf): Promise<Vault | null | 'unknown'> {
  const stored = (await shelf.get(VAULT_KEY)) as Partial<Vault> | undefined;
  if (stored === undefined) return null;
  if (stored.version !== 1 || (stored.kind !== 'device' && stored.kind !== 'locked')) return 'unknown';
  return stored as Vault;
}

/**
 * Changes a locked vault where it lies, so that nothing another page put there in between is lost. False where it is no
 * longer the vault that was read.
 */
export async function changeVault(
  shelf: Shelf,
  read: LockedVault,
  to: (vault: LockedVault) => LockedVault,
): Promise<boolean> {
  let changed = false;
  const change = (lies: unknown): LockedVault | undefined => {
    const vault = lies as LockedVault | undefined;
    changed = vault?.kind === 'locked' && vault.main === read.main;
    return vault !== undefined && changed ? to(vault) : undefined;
  };
  await shelf.write({ change: [{ key: VAULT_KEY, to: change }] });
  return changed;
}

export const vaultRow = (vault: Vault): Placed => ({ key: VAULT_KEY, value: vault });
