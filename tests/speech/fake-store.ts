// A place for the model in memory, with the part of the browser's cache that is used.

import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import type { ModelPart, ModelStore } from '../../src/speech/model/index.ts';

export interface FakeStore extends ModelStore {
  readonly kept: Map<string, Uint8Array<ArrayBuffer>>;
}

export function fakeStore(): FakeStore {
  const kept = new Map<string, Uint8Array<ArrayBuffer>>();
  return {
    kept,
    match: async (address) => {
      const bytes = kept.get(address);
      return bytes === undefined ? undefined : new Response(bytes);
    },
    put: async (address, content) => {
      kept.set(address, new Uint8Array(await content.arrayBuffer()));
    },
    delete: async (address) => kept.delete(address),
    keys: async () => [...kept.keys()].map((url) => ({ url })),
  };
}

export interface MadePart extends ModelPart {
  readonly plain: Uint8Array<ArrayBuffer>;
  readonly packed: Uint8Array<ArrayBuffer>;
}

/** A part of an invented model, as the build would offer it. */
export function madePart(name: string, text: string): MadePart {
  const plain = new TextEncoder().encode(text);
  const packed = new Uint8Array(gzipSync(plain));
  const sha256 = createHash('sha256').update(plain).digest('hex');
  const address = `https://page.invalid/model/${sha256.slice(0, 16)}.bin`;
  return { name, address, bytes: packed.length, sha256, plain, packed };
}
