// The vault: the device's key until a passphrase is set, and then nothing but the passphrase.

import { pbkdf2Sync } from 'node:crypto';
import { describe, expect, it, vi } from 'vitest';
import { judgePassphrase, NO_TRIES, stillToWait } from '../../../src/record/crypt/index.ts';
import {
  addPasskey,
  appendToLog,
  changePassphrase,
  emptyEnd,
  type Keys,
  listRecords,
  openForOne,
  openVault,
  ROUNDS,
  readLog,
  type Shelf,
  sealAnew,
  setPassphrase,
  unlock,
  unlockWithSecret,
  waitToTry,
} from '../../../src/record/store/index.ts';
import { keyFromPassphrase } from '../../../src/record/store/vault/wrap.ts';
import { type MemoryShelf, memoryShelf } from './memory-shelf.ts';

/** Invented, like every word in these tests. */
const PASSPHRASE = 'seven marmots below the col';
const OTHER = 'a kettle for the long descent';
// The rounds of the key take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const NOW = Date.UTC(2031, 3, 5, 10);

async function open(shelf: Shelf): Promise<Keys> {
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  return opened.keys;
}

async function keepWords(shelf: Shelf, keys: Keys, id: string, words: string): Promise<void> {
  const facts = { id, kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
  await appendToLog(shelf, keys, await emptyEnd(id), {
    facts,
    summary: {},
    events: [{ id: 'x-1', words }],
    open: true,
  });
}

const wordsIn = async (shelf: Shelf, keys: Keys, id: string) => (await readLog(shelf, keys, id)).events;

async function locked(): Promise<MemoryShelf> {
  const shelf = memoryShelf();
  const keys = await open(shelf);
  await keepWords(shelf, keys, 'r1', 'before');
  expect((await setPassphrase(shelf, PASSPHRASE)).kind).toBe('set');
  return shelf;
}

describe('the vault', () => {
  it('is there at once, and the same at the next start', async () => {
    const shelf = memoryShelf();
    await keepWords(shelf, await open(shelf), 'r1', 'first');
    expect(await wordsIn(shelf, await open(shelf), 'r1')).toEqual([{ id: 'x-1', words: 'first' }]);
  });

  it('is made by one of two pages that begin at once', async () => {
    const shelf = memoryShelf();
    const [a, b] = await Promise.all([open(shelf), open(shelf)]);
    expect(a.main).toBe(b.main);
  });

  it('with a passphrase holds no device key, and opens with that passphrase only', async () => {
    const shelf = await locked();
    expect((await openVault(shelf)).kind).toBe('locked');
    expect([...shelf.lies.values()].some((value) => JSON.stringify(value).includes('device'))).toBe(false);
    expect((await unlock(shelf, OTHER, NOW)).kind).toBe('wrong');
    const opened = await unlock(shelf, ` ${PASSPHRASE} `, NOW);
    expect(opened.kind).toBe('open');
    if (opened.kind === 'open')
      expect(await wordsIn(shelf, opened.keys, 'r1')).toEqual([{ id: 'x-1', words: 'before' }]);
  });

  it('seals anew under the new key what the device key sealed', async () => {
    const shelf = await locked();
    const opened = await unlock(shelf, PASSPHRASE, NOW);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    expect(await sealAnew(shelf, opened.keys)).toBe(2);
    expect(await sealAnew(shelf, opened.keys)).toBe(0);
    expect(await wordsIn(shelf, opened.keys, 'r1')).toEqual([{ id: 'x-1', words: 'before' }]);
  });

  it('seals nothing anew over what was written meanwhile: the end of a log is never put back', async () => {
    const shelf = memoryShelf();
    const before = await open(shelf);
    await keepWords(shelf, before, 'r1', 'first');
    const set = await setPassphrase(shelf, PASSPHRASE);
    if (set.kind !== 'set') throw new Error(set.kind);
    let end = (await readLog(shelf, set.keys, 'r1')).verdict.end;
    const facts = { id: 'r1', kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' } as const;
    // The page goes on writing between the reading of the log's end and its writing.
    const busy: Shelf = {
      ...shelf,
      write: async (write) => {
        const addition = { facts, summary: {}, events: [{ id: `x-${end.count + 1}` }], open: true };
        if (write.change?.some(({ key }) => key[0] === 'head'))
          end = await appendToLog(shelf, set.keys, end, addition);
        await shelf.write(write);
      },
    };
    await sealAnew(busy, set.keys);
    const log = await readLog(shelf, set.keys, 'r1');
    expect(log.verdict).toMatchObject({ faults: [], end });
    expect(end.count).toBe(2);
  });

  it('is given one passphrase by two pages that set one at once; the other is told so', async () => {
    const shelf = memoryShelf();
    await keepWords(shelf, await open(shelf), 'r1', 'before');
    const both = await Promise.all([setPassphrase(shelf, PASSPHRASE), setPassphrase(shelf, OTHER)]);
    expect(both.map(({ kind }) => kind).toSorted()).toEqual(['refused', 'set']);
    const holds = both[0]?.kind === 'set' ? PASSPHRASE : OTHER;
    const opened = await unlock(shelf, holds, NOW);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    expect(await wordsIn(shelf, opened.keys, 'r1')).toHaveLength(1);
  });

  it('keeps the key of every examination begun while locked, whoever else changes it at once', async () => {
    const shelf = await locked();
    const made = {
      credential: new Uint8Array([1]),
      salt: new Uint8Array(32),
      secret: new Uint8Array(32).fill(7),
    };
    const changing = changePassphrase(shelf, PASSPHRASE, OTHER, NOW);
    const begun = await Promise.all(['r2', 'r3', 'r4'].map(() => openForOne(shelf)));
    expect((await changing).kind).toBe('set');
    expect((await addPasskey(shelf, OTHER, made, NOW)).kind).toBe('set');
    for (const [index, keys] of begun.entries()) await keepWords(shelf, keys, `r${index + 2}`, 'at once');
    const opened = await unlock(shelf, OTHER, NOW);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    for (const id of ['r1', 'r2', 'r3', 'r4']) expect(await wordsIn(shelf, opened.keys, id)).toHaveLength(1);
  });

  it('takes an examination while locked, which only the passphrase reads afterwards', async () => {
    const shelf = await locked();
    const one = await openForOne(shelf);
    await keepWords(shelf, one, 'r2', 'at once');
    expect(await wordsIn(shelf, one, 'r2')).toHaveLength(1);
    expect(await wordsIn(shelf, one, 'r1')).toHaveLength(0);
    expect((await listRecords(shelf, one)).records.map(({ facts }) => facts.id)).toEqual(['r2']);
    const opened = await unlock(shelf, PASSPHRASE, NOW);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    expect(await wordsIn(shelf, opened.keys, 'r2')).toEqual([{ id: 'x-1', words: 'at once' }]);
    // A second such examination is locked for the first one's key.
    expect(await wordsIn(shelf, await openForOne(shelf), 'r2')).toHaveLength(0);
  });

  it('changes its passphrase only for who knows the old one', async () => {
    const shelf = await locked();
    expect((await changePassphrase(shelf, OTHER, 'quite another row of words', NOW)).kind).toBe('wrong');
    expect((await changePassphrase(shelf, PASSPHRASE, '123456', NOW)).kind).toBe('refused');
    expect((await changePassphrase(shelf, PASSPHRASE, OTHER, NOW)).kind).toBe('set');
    expect((await unlock(shelf, PASSPHRASE, NOW)).kind).toBe('wrong');
    const opened = await unlock(shelf, OTHER, NOW);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    expect(await wordsIn(shelf, opened.keys, 'r1')).toHaveLength(1);
  });

  it('opens with a passkey’s secret beside the passphrase, and with no other secret', async () => {
    const shelf = await locked();
    const secret = new Uint8Array(32).fill(7);
    const made = { credential: new Uint8Array([1]), salt: new Uint8Array(32).fill(9), secret };
    expect((await addPasskey(shelf, PASSPHRASE, made, NOW)).kind).toBe('set');
    expect((await unlockWithSecret(shelf, secret)).kind).toBe('open');
    expect((await unlockWithSecret(shelf, new Uint8Array(32))).kind).toBe('wrong');
    expect((await unlock(shelf, PASSPHRASE, NOW)).kind).toBe('open');
  });

  it('of a later version is left alone', async () => {
    const shelf = memoryShelf(new Map([['["vault"]', { version: 2, kind: 'device' }]]));
    expect((await openVault(shelf)).kind).toBe('unusable');
    expect(shelf.lies.get('["vault"]')).toEqual({ version: 2, kind: 'device' });
  });
});

describe('wrong passphrases', () => {
  it('make the next try wait longer and longer, over reloads, until the right one', async () => {
    const shelf = await locked();
    let now = NOW;
    const waits: number[] = [];
    for (let time = 0; time < 6; time += 1) {
      const tried = await unlock(shelf, OTHER, now);
      if (tried.kind !== 'wrong') throw new Error(tried.kind);
      waits.push(tried.waitMs);
      if (tried.waitMs > 0)
        expect((await unlock(shelf, PASSPHRASE, now + tried.waitMs - 1)).kind).toBe('wait');
      now += tried.waitMs;
    }
    expect(waits).toEqual([0, 0, 5000, 10_000, 20_000, 40_000]);
    expect((await unlock(shelf, PASSPHRASE, now)).kind).toBe('open');
    expect(await waitToTry(shelf, now)).toBe(0);
  });

  it('do not lock anybody out when the clock is set back by an hour', async () => {
    const shelf = await locked();
    for (let time = 0; time < 3; time += 1) await unlock(shelf, OTHER, NOW);
    const back = NOW - 3_600_000;
    expect(await waitToTry(shelf, back)).toBe(5000);
    expect(await waitToTry(shelf, back + 5000)).toBe(0);
    expect((await unlock(shelf, PASSPHRASE, back + 5000)).kind).toBe('open');
  });

  it('wait a quarter of an hour at most', () => {
    expect(stillToWait({ wrong: 60, last: NOW }, NOW)).toBe(15 * 60_000);
    expect(stillToWait(NO_TRIES, NOW)).toBe(0);
  });
});

describe('a passphrase', () => {
  it.each([
    '',
    '   ',
    '1234',
    '123456',
    '12 34 56 78 90 12 34 56',
    '2031-04-05 2031-04-05',
    '٣٤٥٦٧٨٩٠١٢٣٤٥٦٧٨',
    'short one',
    'aaaa aaaa aaaa aaaa',
  ])('%j is refused with the reason', (passphrase) => {
    const judged = judgePassphrase(passphrase);
    expect(judged.kind).toBe('refused');
    if (judged.kind === 'refused') expect(judged.why).toMatch(/\w{3}/);
  });

  it.each([PASSPHRASE, OTHER, 'marmot 4807 kettle', 'quatre chênes très verts'])(
    '%j is taken',
    (passphrase) => {
      expect(judgePassphrase(passphrase)).toEqual({ kind: 'taken' });
    },
  );

  it('gives the key of PBKDF2-HMAC-SHA-256 (RFC 8018) with at least 600,000 rounds', async () => {
    expect(ROUNDS).toBeGreaterThanOrEqual(600_000);
    // Against OpenSSL through Node; the key cannot be read out, so what each seals is opened by the other.
    const salt = new Uint8Array(16).fill(3);
    const bytes = pbkdf2Sync('caf\u00e9 on the long moraine', salt, 1000, 32, 'sha256');
    const same = await crypto.subtle.importKey('raw', bytes, 'AES-GCM', false, ['decrypt']);
    // Typed with a combining accent, it is the same passphrase.
    const ours = await keyFromPassphrase('cafe\u0301 on the long moraine ', salt, 1000);
    const iv = new Uint8Array(12);
    const sealed = await crypto.subtle.encrypt({ name: 'AES-GCM', iv }, ours, new Uint8Array([1, 2, 3]));
    const opened = await crypto.subtle.decrypt({ name: 'AES-GCM', iv }, same, sealed);
    expect([...new Uint8Array(opened)]).toEqual([1, 2, 3]);
  });
});
