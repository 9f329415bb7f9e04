// Gives out the files of the built page and nothing else of this machine.

import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import type { ServerResponse } from 'node:http';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.wasm': 'application/wasm',
  '.talk': 'text/plain; charset=utf-8',
};

/** As the page's own policy says, for whatever is fetched from here. */
const POLICY =
  "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; img-src 'self' data:; object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

export const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};

/** The file that a path means, within the folder, or null. */
export function fileFor(folder: string, path: string): string | null {
  let plain: string;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return null;
  }
  if (plain.includes('\0')) return null;
  const inside = normalize(`/${plain}`);
  return join(folder, inside.endsWith('/') ? `${inside}index.html` : inside);
}

/** Sends the file; 404 where there is none. */
export async function sendFile(
  folder: string,
  path: string,
  response: ServerResponse,
  bare: boolean,
): Promise<void> {
  const file = fileFor(folder, path);
  const found = file === null ? null : await stat(file).catch(() => null);
  if (file === null || found === null || !found.isFile()) {
    response.writeHead(404, { ...HEADERS, 'content-type': 'text/plain' });
    response.end('There is no such page here.\n');
    return;
  }
  // Files under assets/ and model/ are named by their content; the rest is asked for each time.
  const lasting = /\/(assets|model)\//.test(path);
  response.writeHead(200, {
    ...HEADERS,
    'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
    'content-length': found.size,
    'cache-control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache',
  });
  if (bare) response.end();
  else createReadStream(file).pipe(response);
}
