// What crosses the link is opened with the incident's key on its own subject, and nowhere else.

import { createDecipheriv } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { importKey, open, random, seal } from '../../src/link/index.ts';

const SUBJECT = 'rec.invented.ada-1.7';

describe('what is sealed', () => {
  it('is opened as it was', async () => {
    const key = await importKey(random(32));
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), async (value) => {
        const plain = JSON.parse(JSON.stringify(value));
        expect(await open(key, SUBJECT, await seal(key, SUBJECT, plain))).toEqual({
          kind: 'value',
          value: plain,
        });
      }),
      { numRuns: 50 },
    );
  });

  it('is AES-GCM as Node’s own library (OpenSSL) has it, with the subject as associated data', async () => {
    const raw = random(32);
    const bytes = Buffer.from(await seal(await importKey(raw), SUBJECT, { words: 'left forearm' }));
    const decipher = createDecipheriv('aes-256-gcm', raw, bytes.subarray(1, 13));
    decipher.setAAD(Buffer.from(`fieldsay-link/1 ${SUBJECT}`));
    decipher.setAuthTag(bytes.subarray(-16));
    const text = Buffer.concat([decipher.update(bytes.subarray(13, -16)), decipher.final()]).toString('utf8');
    expect(JSON.parse(text)).toEqual({ words: 'left forearm' });
  });

  it('is not opened on another subject, with another key, or after any one bit was turned', async () => {
    const key = await importKey(random(32));
    const bytes = await seal(key, SUBJECT, 'left forearm');
    expect((await open(key, 'rec.invented.ada-1.8', bytes)).kind).toBe('altered');
    expect((await open(key, 'rec.invented.ben-1.7', bytes)).kind).toBe('altered');
    expect((await open(await importKey(random(32)), SUBJECT, bytes)).kind).toBe('altered');
    for (let bit = 8; bit < bytes.length * 8; bit += 1) {
      const turned = bytes.slice();
      turned[bit >> 3] = (turned[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect((await open(key, SUBJECT, turned)).kind).toBe('altered');
    }
  });

  it('never has the same bytes twice, and none of its words can be read in it', async () => {
    const key = await importKey(random(32));
    const [one, other] = [await seal(key, SUBJECT, 'left forearm'), await seal(key, SUBJECT, 'left forearm')];
    expect(Buffer.from(one).equals(Buffer.from(other))).toBe(false);
    expect(Buffer.from(one).includes('forearm')).toBe(false);
  });

  it.each([
    [new Uint8Array()],
    [new Uint8Array([1, 2, 3])],
    [new TextEncoder().encode('{"in":"the open, and long enough"}')],
  ])('is told from what never was', async (bytes) => {
    expect((await open(await importKey(random(32)), SUBJECT, bytes)).kind).toBe('not-sealed');
  });
});
