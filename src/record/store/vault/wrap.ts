// Wraps and unwraps data keys: AES-256 keys that are never written down bare.

import { settledPassphrase } from '../../crypt/index.ts';
import { type Bytes, random, utf8 } from '../bytes.ts';
import type { Wrapped } from './doc.ts';

/** OWASP's password storage cheat sheet asks for 600,000 rounds of PBKDF2-HMAC-SHA-256; from memory. */
export const ROUNDS = 600_000;

const GCM = { name: 'AES-GCM', length: 256 } as const;
const USES: KeyUsage[] = ['encrypt', 'decrypt'];

export const newRawKey = (): Bytes => random(32);

/** A key that this page can use and no script can read out. */
export const keyOf = (raw: Bytes): Promise<CryptoKey> =>
  crypto.subtle.importKey('raw', raw, GCM, false, USES);

export const newDeviceKey = (): Promise<CryptoKey> => crypto.subtle.generateKey(GCM, false, USES);

/** The wrapping key that a passphrase gives. */
export async function keyFromPassphrase(passphrase: string, salt: Bytes, rounds: number): Promise<CryptoKey> {
  const base = await crypto.subtle.importKey('raw', utf8(settledPassphrase(passphrase)), 'PBKDF2', false, [
    'deriveKey',
  ]);
  return crypto.subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds },
    base,
    GCM,
    false,
    USES,
  );
}

/** The wrapping key that a secret of high entropy gives, for one purpose. */
export async function keyFromSecret(secret: Bytes, salt: Bytes, purpose: string): Promise<CryptoKey> {
  const base = await crypto.subtle.importKey('raw', secret, 'HKDF', false, ['deriveKey']);
  return crypto.subtle.deriveKey(
    { name: 'HKDF', hash: 'SHA-256', salt, info: utf8(purpose) },
    base,
    GCM,
    false,
    USES,
  );
}

const params = (iv: Bytes, name: string): AesGcmParams => ({
  name: 'AES-GCM',
  iv,
  additionalData: utf8(`fieldsay-key/1 ${name}`),
});

export async function wrap(by: CryptoKey, name: string, raw: Bytes): Promise<Wrapped> {
  const iv = random(12);
  return { iv, data: new Uint8Array(await crypto.subtle.encrypt(params(iv, name), by, raw)) };
}

/** Null where the wrapping key is not the one it was wrapped by. */
export async function unwrap(by: CryptoKey, name: string, { iv, data }: Wrapped): Promise<Bytes | null> {
  try {
    return new Uint8Array(await crypto.subtle.decrypt(params(iv, name), by, data));
  } catch {
    return null;
  }
}
