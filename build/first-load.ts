// Fails the build where the scripts that come before the first usable screen weigh more than they may as they are sent.

import { gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

/** Bytes, compressed, of the page's first script and all that it imports before it runs. */
const MOST = 90_000;

interface Chunk {
  readonly type: 'chunk';
  /** the module that the chunk begins with; a page's is its document */
  readonly facadeModuleId: string | null;
  readonly code: string;
  readonly imports: readonly string[];
}

type Bundle = Readonly<Record<string, Chunk | { readonly type: 'asset' }>>;

/** Compressed bytes of each script that is loaded before the first one of `page` runs, by its file name. */
export function firstLoad(bundle: Bundle, page = 'index.html'): ReadonlyMap<string, number> {
  const sizes = new Map<string, number>();
  const take = (name: string): void => {
    const chunk = bundle[name];
    if (chunk?.type !== 'chunk' || sizes.has(name)) return;
    sizes.set(name, gzipSync(chunk.code).length);
    for (const other of chunk.imports) take(other);
  };
  for (const [name, chunk] of Object.entries(bundle))
    if (chunk.type === 'chunk' && chunk.facadeModuleId?.endsWith(`/${page}`) === true) take(name);
  return sizes;
}

/** What is wrong with so much, in one sentence, or null. */
export function tooMuch(sizes: ReadonlyMap<string, number>, most: number = MOST): string | null {
  const all = [...sizes.values()].reduce((sum, size) => sum + size, 0);
  if (all <= most) return null;
  const parts = [...sizes].map(([name, size]) => `${name} ${(size / 1000).toFixed(1)}`).join(', ');
  return `the first load is ${(all / 1000).toFixed(1)} kB, more than ${most / 1000} kB: ${parts}`;
}

/** The check as a part of the build. */
export const limitFirstLoad = (): Plugin => ({
  name: 'limit-first-load',
  apply: 'build',
  generateBundle(_options, bundle) {
    const sizes = firstLoad(bundle as unknown as Bundle);
    // A build of something else, such as a worker of the page, has no page in it.
    const wrong = tooMuch(sizes);
    if (wrong !== null) this.error(wrong);
  },
});
