// Fetches what is missing of the model from the page's own address, and stores nothing that is not what was built.

import { bytesOf, type ModelPart } from './model-part.ts';
import { sha256 } from './sha256.ts';
import { forgetOthers, type ModelStore, missingFiles } from './store.ts';

export interface FetchParts {
  readonly store: ModelStore;
  readonly files: readonly ModelPart[];
  readonly fetch: (address: string, options: { readonly signal: AbortSignal }) => Promise<Response>;
  /** bytes fetched so far of bytes to fetch */
  readonly progress: (done: number, of: number) => void;
  readonly signal: AbortSignal;
}

export type Fetched =
  | { readonly kind: 'stored' }
  | { readonly kind: 'cancelled' }
  /** a sentence; what was stored before it stays, and is not fetched again */
  | { readonly kind: 'failed'; readonly why: string };

const failed = (why: string): Fetched => ({ kind: 'failed', why });

/** Fetches, checks and stores the missing files, one after another. */
export async function fetchModel(parts: FetchParts): Promise<Fetched> {
  const { store, files, progress, signal } = parts;
  const missing = await missingFiles(store, files);
  const of = bytesOf(missing);
  let done = 0;
  progress(done, of);
  for (const file of missing) {
    try {
      const whole = await fetchOne(parts, file, (bytes) => progress(done + bytes, of));
      if (whole === null) return failed('The page’s address does not offer the recogniser’s files.');
      const bytes = await unpacked(whole);
      if (bytes === null || (await sha256(bytes)) !== file.sha256)
        return failed('A file arrived damaged, and was not stored. Try again, on a better connection.');
      await store.put(file.address, new Response(bytes));
    } catch (error) {
      if (signal.aborted) return { kind: 'cancelled' };
      return failed(
        (error as Error).name === 'QuotaExceededError'
          ? 'The browser has no room for it: free some storage, then try again.'
          : 'The connection broke. What was fetched is kept; try again when there is a network.',
      );
    }
    done += file.bytes;
    progress(done, of);
  }
  await forgetOthers(store, files);
  return { kind: 'stored' };
}

/** The file as it was sent; null where the address has none. */
async function fetchOne(
  { fetch, signal }: FetchParts,
  { address }: ModelPart,
  arrived: (bytes: number) => void,
): Promise<Blob | null> {
  const answer = await fetch(address, { signal });
  // An address that answers unknown files with the page itself offers nothing.
  const isPage = answer.headers.get('Content-Type')?.startsWith('text/html') === true;
  if (!answer.ok || answer.body === null || isPage) return null;
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const reader = answer.body.getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return new Blob(pieces);
    pieces.push(value);
    bytes += value.length;
    arrived(bytes);
  }
}

/** The content of a compressed file; a server that says how it is compressed has it unpacked on the way. Null if damaged. */
async function unpacked(sent: Blob): Promise<Uint8Array<ArrayBuffer> | null> {
  const [first, second] = new Uint8Array(await sent.slice(0, 2).arrayBuffer());
  const isPacked = first === 0x1f && second === 0x8b;
  const stream = isPacked ? sent.stream().pipeThrough(new DecompressionStream('gzip')) : sent.stream();
  try {
    return new Uint8Array(await new Response(stream).arrayBuffer());
  } catch {
    return null;
  }
}
