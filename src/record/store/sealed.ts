// A value sealed with AES-GCM (NIST SP 800-38D) under a fresh 96-bit IV, bound to the place where it lies.

import { type Bytes, random, textOf, utf8 } from './bytes.ts';

/** What lies on the disk: nothing of the value can be read from it but its length. */
export interface Sealed {
  /** version of this shape */
  readonly v: 1;
  /** the data key it is under */
  readonly key: string;
  readonly iv: Bytes;
  readonly data: Bytes;
}

/** The data keys at hand by name, and which of them seals what is new. */
export interface Keys {
  readonly main: string;
  readonly all: ReadonlyMap<string, CryptoKey>;
}

export type Unsealed =
  | { readonly kind: 'value'; readonly value: unknown }
  | { readonly kind: 'bytes-altered' | 'no-key' | 'not-sealed'; readonly key: string | null };

export const isSealed = (stored: unknown): stored is Sealed =>
  typeof stored === 'object' &&
  stored !== null &&
  'v' in stored &&
  stored.v === 1 &&
  'key' in stored &&
  typeof stored.key === 'string' &&
  'iv' in stored &&
  stored.iv instanceof Uint8Array &&
  'data' in stored &&
  stored.data instanceof Uint8Array;

const params = (iv: Bytes, place: string): AesGcmParams => ({
  name: 'AES-GCM',
  iv,
  additionalData: utf8(place),
});

/** Seals bytes for a place: opened at any other place they count as altered. */
export async function sealBytes(keys: Keys, place: string, bytes: Bytes): Promise<Sealed> {
  const key = keys.all.get(keys.main);
  if (key === undefined) throw new Error('the main key is not at hand');
  const iv = random(12);
  const data = new Uint8Array(await crypto.subtle.encrypt(params(iv, place), key, bytes));
  return { v: 1, key: keys.main, iv, data };
}

/** Seals a JSON value for a place. */
export const seal = (keys: Keys, place: string, value: unknown): Promise<Sealed> =>
  sealBytes(keys, place, utf8(JSON.stringify(value)));

export type UnsealedBytes =
  | { readonly kind: 'bytes'; readonly bytes: Bytes }
  | Exclude<Unsealed, { readonly kind: 'value' }>;

export async function unsealBytes(keys: Keys, place: string, stored: unknown): Promise<UnsealedBytes> {
  if (!isSealed(stored)) return { kind: 'not-sealed', key: null };
  const key = keys.all.get(stored.key);
  if (key === undefined) return { kind: 'no-key', key: stored.key };
  try {
    const bytes = await crypto.subtle.decrypt(params(stored.iv, place), key, stored.data);
    return { kind: 'bytes', bytes: new Uint8Array(bytes) };
  } catch {
    return { kind: 'bytes-altered', key: stored.key };
  }
}

/** The value that was sealed for this place, or why there is none. */
export async function unseal(keys: Keys, place: string, stored: unknown): Promise<Unsealed> {
  const opened = await unsealBytes(keys, place, stored);
  if (opened.kind !== 'bytes') return opened;
  try {
    return { kind: 'value', value: JSON.parse(textOf(opened.bytes)) };
  } catch {
    return { kind: 'bytes-altered', key: isSealed(stored) ? stored.key : null };
  }
}
