// The model is fetched once, only what was built is stored, and what lies damaged is thrown away. Its files are invented.

import { describe, expect, it } from 'vitest';
import { fetchModel, missingFiles, readModel } from '../../src/speech/model/index.ts';
import { sha256 } from '../../src/speech/model/sha256.ts';
import { type FakeStore, fakeStore, type MadePart, madePart } from './fake-store.ts';

const WORDS = madePart('words', 'left L EH F T\nright R AY T\n'.repeat(40));
const SOUNDS = madePart('sounds', 'means and variances'.repeat(60));
const FILES = [WORDS, SOUNDS];

type Answer = (part: MadePart) => Response | Promise<Response>;
const sent: Answer = ({ packed }) => new Response(packed);

async function fetched(store: FakeStore, answer: Answer = sent, signal = new AbortController().signal) {
  const asked: string[] = [];
  const steps: (readonly [number, number])[] = [];
  const result = await fetchModel({
    store,
    files: FILES,
    fetch: async (address) => {
      const part = FILES.find((one) => one.address === address);
      if (part === undefined) throw new Error(`nothing is offered at ${address}`);
      asked.push(part.name);
      return answer(part);
    },
    progress: (done, of) => steps.push([done, of]),
    signal,
  });
  return { result, asked, steps };
}

describe('fetching the model', () => {
  it('stores each file unpacked, and says how far it has come', async () => {
    const store = fakeStore();
    const { result, steps } = await fetched(store);
    expect(result).toEqual({ kind: 'stored' });
    expect(store.kept.get(WORDS.address)).toEqual(WORDS.plain);
    const all = WORDS.bytes + SOUNDS.bytes;
    expect(steps[0]).toEqual([0, all]);
    expect(steps.at(-1)).toEqual([all, all]);
  });

  it('asks for nothing that is stored already', async () => {
    const store = fakeStore();
    await fetched(store);
    expect((await fetched(store)).asked).toEqual([]);
  });

  it('takes a file that the server had unpacked on its way', async () => {
    const store = fakeStore();
    await fetched(store, ({ plain }) => new Response(plain));
    expect(await missingFiles(store, FILES)).toEqual([]);
  });

  it('throws away what an earlier version stored', async () => {
    const store = fakeStore();
    await store.put('https://page.invalid/model/old.bin', new Response('old'));
    await fetched(store);
    expect([...store.kept.keys()]).toEqual(FILES.map(({ address }) => address));
  });

  it.each<readonly [string, Answer]>([
    ['another content', () => new Response(madePart('words', 'other').packed)],
    ['a file cut short', ({ packed }) => new Response(packed.slice(0, -9))],
    ['nothing', () => new Response(new Uint8Array(0))],
    ['an error', () => new Response('gone', { status: 404 })],
    [
      'the page in its place',
      () => new Response('<!doctype html>', { headers: { 'Content-Type': 'text/html' } }),
    ],
    ['a broken connection', () => Promise.reject(new TypeError('network'))],
  ])('stores nothing where it is given %s, and says so', async (_what, answer) => {
    const store = fakeStore();
    const { result } = await fetched(store, answer);
    expect(result.kind).toBe('failed');
    expect(store.kept.size).toBe(0);
  });

  it('keeps what came before the connection broke', async () => {
    const store = fakeStore();
    const breaks: Answer = (part) => {
      if (part === SOUNDS) throw new TypeError('network');
      return sent(part);
    };
    expect((await fetched(store, breaks)).result.kind).toBe('failed');
    expect((await fetched(store)).asked).toEqual(['sounds']);
  });

  it('says that there is no room', async () => {
    const store = {
      ...fakeStore(),
      put: () => Promise.reject(new DOMException('full', 'QuotaExceededError')),
    };
    const { result } = await fetched(store);
    expect(result.kind === 'failed' && result.why).toMatch(/no room/);
  });

  it('ends when it is cancelled', async () => {
    const cancel = new AbortController();
    const { result } = await fetched(
      fakeStore(),
      () => {
        cancel.abort();
        throw cancel.signal.reason;
      },
      cancel.signal,
    );
    expect(result).toEqual({ kind: 'cancelled' });
  });
});

describe('reading the model', () => {
  it('gives every file by its name', async () => {
    const store = fakeStore();
    await fetched(store);
    const read = await readModel(store, FILES);
    expect(read.kind === 'model' && read.content.get('sounds')).toEqual(SOUNDS.plain);
  });

  it('throws a damaged file away, so that it is fetched again', async () => {
    const store = fakeStore();
    await fetched(store);
    const damaged = new Uint8Array(WORDS.plain);
    damaged[7] = 0;
    store.kept.set(WORDS.address, damaged);
    expect(await readModel(store, FILES)).toEqual({ kind: 'missing', files: [WORDS] });
    expect((await fetched(store)).asked).toEqual(['words']);
  });
});

// Source: NIST, "Example algorithms: SHA-256" (FIPS 180-4), the one-block and the two-block message.
describe('the checksum', () => {
  it.each([
    ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
  ])('of %s is the published one', async (text, published) => {
    expect(await sha256(new TextEncoder().encode(text))).toBe(published);
  });
});
