// What is passed on comes out as it went in; without the right passphrase, or with one bit turned, nothing comes out.

import { describe, expect, it } from 'vitest';
import { pack, unpack } from '../../src/screens/qr/pack.ts';

const CONTENTS = {
  facts: { id: 'made-up', kind: 'invented', title: '', startedAt: '2026-05-03T14:02:00-06:00' },
  events: [],
} as const;

const WORDS = 'seven wet ropes uphill';

describe('a packed record', () => {
  it('opens without a passphrase where none was set', async () => {
    const read = await unpack(await pack(CONTENTS, ''), '');
    expect(read).toEqual({ kind: 'contents', schema: 'fieldsay-transfer/1', ...CONTENTS });
  });

  it('that is sealed asks for its passphrase and opens with it alone', async () => {
    const bytes = await pack(CONTENTS, WORDS);
    expect(new TextDecoder('latin1').decode(bytes)).not.toContain('made-up');
    expect((await unpack(bytes, '')).kind).toBe('sealed');
    expect((await unpack(bytes, `${WORDS}!`)).kind).toBe('unreadable');
    expect((await unpack(bytes, ` ${WORDS} `)).kind).toBe('contents');
  }, 30_000);

  it('is never sealed twice alike', async () => {
    const [one, other] = await Promise.all([pack(CONTENTS, WORDS), pack(CONTENTS, WORDS)]);
    expect(one).not.toEqual(other);
  }, 30_000);

  it('that was altered or cut anywhere is refused and never half read', async () => {
    const bytes = await pack(CONTENTS, WORDS);
    for (const at of [2, 7, 30, 40, bytes.length - 1]) {
      const turned = bytes.slice();
      turned[at] = (turned[at] ?? 0) ^ 1;
      expect((await unpack(turned, WORDS)).kind).toBe('unreadable');
    }
    expect((await unpack(bytes.slice(0, -1), WORDS)).kind).toBe('unreadable');
    expect((await unpack(bytes.slice(0, 20), WORDS)).kind).toBe('unreadable');
    expect((await unpack(Uint8Array.of(), '')).kind).toBe('unreadable');
    expect((await unpack(Uint8Array.of(9, 9, 9), '')).kind).toBe('unreadable');
  }, 60_000);
});
