// The encodings of QR frames against their published examples.

import { describe, expect, it } from 'vitest';
import { crc32, fromBase45, toBase45 } from '../../src/handoff/frames/index.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** RFC 9285 (August 2022), sections 4.3 and 4.4; from memory. */
const BASE45 = [
  ['AB', 'BB8'],
  ['Hello!!', '%69 VD92EX0'],
  ['base-45', 'UJCLQE7W581'],
  ['ietf!', 'QED8WEX0'],
] as const;

describe('base45', () => {
  it.each(BASE45)('writes %j as %j and reads it back', (text, coded) => {
    expect(toBase45(utf8(text))).toBe(coded);
    expect(fromBase45(coded)).toEqual(utf8(text));
  });

  /** RFC 9285 section 6: a triplet above FFFF, and one sign alone, are to be refused; from memory. */
  it.each(['GGW', ':::', 'A', 'a!'])('refuses %j', (text) => {
    expect(fromBase45(text)).toBeNull();
  });
});

describe('the checksum', () => {
  /** The check value that catalogues of CRCs give for CRC-32/ISO-HDLC; from memory. */
  it('of “123456789” is CBF43926', () => {
    expect(crc32(utf8('123456789'))).toBe(0xcbf43926);
  });
});
