// How much the page weighs as it is sent: what comes before the first use, and each part that is fetched later.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

export interface Part {
  readonly name: string;
  readonly bytes: number;
  /** as it is sent */
  readonly packed: number;
  /** the document itself asks for it */
  readonly first: boolean;
}

/** Every script and sheet of style of a built page, heaviest first; names without the mark of their content. */
export function partsOf(folder: string): readonly Part[] {
  const html = readFileSync(join(folder, 'index.html'), 'utf8');
  return readdirSync(join(folder, 'assets'))
    .filter((file) => /\.(?:js|css)$/.test(file))
    .map((file): Part => {
      const content = readFileSync(join(folder, 'assets', file));
      const name = file.replace(/-[\w-]{8}(\.\w+)$/, '$1');
      return { name, bytes: content.length, packed: gzipSync(content).length, first: html.includes(file) };
    })
    .toSorted((one, other) => other.packed - one.packed);
}
