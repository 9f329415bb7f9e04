// Bytes as text and back, fresh random bytes, and SHA-256; the same in a browser and in Node.

export type Bytes = Uint8Array<ArrayBuffer>;

const toText = new TextDecoder('utf-8', { fatal: true });
const toBytes = new TextEncoder();

export const utf8 = (text: string): Bytes => toBytes.encode(text);
/** Throws where the bytes are no UTF-8. */
export const textOf = (bytes: Bytes | ArrayBuffer): string => toText.decode(bytes);
export const random = (length: number): Bytes => crypto.getRandomValues(new Uint8Array(length));

export const hex = (bytes: Bytes): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

/** Base64url without padding (RFC 4648, section 5). */
export function base64url(bytes: Bytes): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += 8192)
    text += String.fromCharCode(...bytes.subarray(at, at + 8192));
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** Null where the text is none. */
export function fromBase64url(text: string): Bytes | null {
  if (!/^[\w-]*$/.test(text)) return null;
  try {
    const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(plain, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, in hexadecimal. */
export const sha256 = async (text: string): Promise<string> =>
  hex(new Uint8Array(await crypto.subtle.digest('SHA-256', utf8(text))));
