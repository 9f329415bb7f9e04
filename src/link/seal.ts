// Seals what crosses the link with AES-GCM (NIST SP 800-38D) under the incident's key, bound to the subject it travels on.

import { type Bytes, random, textOf, utf8 } from './bytes.ts';

const VERSION = 1;
const IV = 12;
const TAG = 16;

export type Opened =
  | { readonly kind: 'value'; readonly value: unknown }
  /** altered, sealed with another key, or written for another subject: these cannot be told apart */
  | { readonly kind: 'altered' }
  /** no sealed bytes of this version at all */
  | { readonly kind: 'not-sealed' };

const params = (iv: Bytes, subject: string): AesGcmParams => ({
  name: 'AES-GCM',
  iv,
  additionalData: utf8(`fieldsay-link/1 ${subject}`),
});

/** The incident's key from its 32 bytes; it cannot be read out again. */
export const importKey = (raw: Bytes): Promise<CryptoKey> =>
  crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['encrypt', 'decrypt']);

/** A JSON value as bytes: a version, a fresh 96-bit IV, and what only the key opens on this very subject. */
export async function seal(key: CryptoKey, subject: string, value: unknown): Promise<Bytes> {
  const iv = random(IV);
  const data = await crypto.subtle.encrypt(params(iv, subject), key, utf8(JSON.stringify(value)));
  const bytes = new Uint8Array(1 + IV + data.byteLength);
  bytes[0] = VERSION;
  bytes.set(iv, 1);
  bytes.set(new Uint8Array(data), 1 + IV);
  return bytes;
}

/** What was sealed for this subject; never throws. */
export async function open(key: CryptoKey, subject: string, bytes: Bytes): Promise<Opened> {
  if (bytes[0] !== VERSION || bytes.length < 1 + IV + TAG) return { kind: 'not-sealed' };
  try {
    const iv = bytes.slice(1, 1 + IV);
    const plain = await crypto.subtle.decrypt(params(iv, subject), key, bytes.slice(1 + IV));
    return { kind: 'value', value: JSON.parse(textOf(plain)) };
  } catch {
    return { kind: 'altered' };
  }
}
