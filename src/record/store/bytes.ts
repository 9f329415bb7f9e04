// Bytes as text and back, and fresh random bytes.

export type Bytes = Uint8Array<ArrayBuffer>;

const toText = new TextDecoder();
const toBytes = new TextEncoder();

export const utf8 = (text: string): Bytes => toBytes.encode(text);
export const textOf = (bytes: ArrayBuffer | Bytes): string => toText.decode(bytes);
export const random = (length: number): Bytes => crypto.getRandomValues(new Uint8Array(length));
/** A short name that no other key, record or clip has. */
export const newName = (): string => hex(random(8));

export const hex = (bytes: Bytes): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

/** Base64 (RFC 4648), in pieces: a call takes only so many arguments. */
export function base64(bytes: Bytes): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(text);
}

/** Null where the text is no base64. */
export function fromBase64(text: string): Bytes | null {
  try {
    return Uint8Array.from(atob(text), (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, in hexadecimal. */
export const sha256 = async (text: string): Promise<string> =>
  hex(new Uint8Array(await crypto.subtle.digest('SHA-256', utf8(text))));
