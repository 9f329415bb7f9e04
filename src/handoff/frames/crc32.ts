// A checksum that finds what a camera misread; against a person who alters something there is the passphrase.

/** CRC-32 of ISO 3309 and ITU-T V.42, as in PNG and zip (from memory; its check value is tested). */
const POLYNOMIAL = 0xedb88320;

const TABLE: readonly number[] = Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? POLYNOMIAL ^ (value >>> 1) : value >>> 1;
  return value >>> 0;
});

/** 0 to 2³² − 1. */
export function crc32(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (TABLE[(value ^ byte) & 0xff] ?? 0) ^ (value >>> 8);
  return (value ^ 0xffffffff) >>> 0;
}

/** Eight capital hexadecimal digits. */
export const crcText = (bytes: Uint8Array): string =>
  crc32(bytes).toString(16).toUpperCase().padStart(8, '0');
