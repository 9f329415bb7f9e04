// SHA-1 and version 5 UUIDs, against published examples and an independent implementation.

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sha1 } from '../../src/handoff/fhir/sha1.ts';
import { uuid5 } from '../../src/handoff/fhir/uuid.ts';

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
const ascii = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('SHA-1', () => {
  // Source: NIST's examples for FIPS 180 ("abc", the 448-bit message) and the digest of nothing; from memory.
  test.each([
    ['abc', 'a9993e364706816aba3e25717850c26c9cd0d89d'],
    ['abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq', '84983e441c3bd26ebaae4aa1f95129e5e54670f1'],
    ['', 'da39a3ee5e6b4b0d3255bfef95601890afd80709'],
  ])('of %j', (text, digest) => {
    expect(hex(sha1(ascii(text)))).toBe(digest);
  });

  // Source: OpenSSL, through node:crypto.
  test('agrees with OpenSSL at every length about a block, and on bytes by chance', () => {
    for (let length = 0; length < 200; length += 1) {
      const bytes = Uint8Array.from({ length }, (_, index) => (index * 37 + length) % 256);
      expect(hex(sha1(bytes))).toBe(createHash('sha1').update(bytes).digest('hex'));
    }
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(hex(sha1(bytes))).toBe(createHash('sha1').update(bytes).digest('hex'));
      }),
    );
  });
});

describe('a version 5 UUID', () => {
  const DNS = '6ba7b810-9dad-11d1-80b4-00c04fd430c8';

  // Source: RFC 9562, appendix A.4 (from memory), and the Python documentation's example of python.org (from memory).
  test.each([
    ['www.example.com', '2ed6657d-e927-568b-95e1-2665a8aea6a2'],
    ['python.org', '886313e1-3b8a-5372-9b90-0c9aee199e5d'],
  ])('of %s in the namespace of DNS', (name, uuid) => {
    expect(uuid5(DNS, name)).toBe(uuid);
  });

  // Source: RFC 9562, section 5.5, over OpenSSL's SHA-1 and the platform's UTF-8.
  test('of any name is the digest of namespace and UTF-8 name, with its version and variant', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const namespace = Buffer.from(DNS.replaceAll('-', ''), 'hex');
        const digest = createHash('sha1').update(namespace).update(ascii(name)).digest('hex');
        const uuid = uuid5(DNS, name).replaceAll('-', '');
        expect(uuid.slice(0, 12) + uuid.slice(13, 16) + uuid.slice(17)).toBe(
          digest.slice(0, 12) + digest.slice(13, 16) + digest.slice(17, 32),
        );
        expect(uuid).toMatch(/^.{12}5.{3}[89ab]/);
      }),
    );
  });

  test('of half a surrogate pair is that of the replacement character, as the platform encodes it', () => {
    expect(uuid5(DNS, 'a\ud800b')).toBe(uuid5(DNS, 'a\ufffdb'));
  });
});
