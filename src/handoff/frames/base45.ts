// Bytes as the signs of a QR symbol's alphanumeric mode, so that any reader gives them back unchanged: RFC 9285.

/** RFC 9285 (August 2022), table 1; the alphabet of QR's alphanumeric mode (ISO/IEC 18004). From memory, its examples tested. */
const ALPHABET = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

/** Two bytes give three signs, a last single byte two. */
export function toBase45(bytes: Uint8Array): string {
  const signs: string[] = [];
  const put = (value: number, count: number): void => {
    for (let rest = value, at = 0; at < count; at += 1) {
      signs.push(ALPHABET.charAt(rest % 45));
      rest = Math.floor(rest / 45);
    }
  };
  for (let at = 0; at + 1 < bytes.length; at += 2) put((bytes[at] ?? 0) * 256 + (bytes[at + 1] ?? 0), 3);
  if (bytes.length % 2 === 1) put(bytes.at(-1) ?? 0, 2);
  return signs.join('');
}

/** Null where the text is no base45. */
export function fromBase45(text: string): Uint8Array<ArrayBuffer> | null {
  if (text.length % 3 === 1) return null;
  const values = [...text].map((sign) => ALPHABET.indexOf(sign));
  if (values.includes(-1)) return null;
  const bytes: number[] = [];
  for (let at = 0; at < values.length; at += 3) {
    const [low = 0, middle = 0, high] = values.slice(at, at + 3);
    const value = low + 45 * middle + 2025 * (high ?? 0);
    if (value > (high === undefined ? 0xff : 0xffff)) return null;
    if (high !== undefined) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}
