// Brings the recogniser's compiled code and English models into the build, each file compressed and named by its content,
// and tells the page their names, sizes and SHA-256.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';
import { modelPaths, packageEntry } from '../src/speech/file/model-paths.ts';
import type { ModelPart } from '../src/speech/model/model-part.ts';

/** The compiled code, by its name in the package. */
const CODE = 'soundswallower.web.wasm';
/** The page imports the list under this name. */
const LIST = 'virtual:hearing-model';
const RESOLVED = `\0${LIST}`;

interface Made extends ModelPart {
  readonly content: Uint8Array;
}

function make(name: string, path: string): Made {
  const plain = readFileSync(path);
  const content = gzipSync(plain, { level: 9 });
  const sha256 = createHash('sha256').update(plain).digest('hex');
  // A file's address changes with its content alone, so that what is stored is fetched again only when it changed.
  return { name, address: `model/${sha256.slice(0, 16)}.bin`, bytes: content.length, sha256, content };
}

/** The plugin; while developing it serves the same files. */
export function hearingModel(): Plugin {
  let made: readonly Made[] | null = null;
  const files = (): readonly Made[] => {
    made ??= [[CODE, join(dirname(packageEntry()), CODE)] as const, ...modelPaths()].map(([name, path]) =>
      make(name, path),
    );
    return made;
  };
  return {
    name: 'hearing-model',
    resolveId: (id) => (id === LIST ? RESOLVED : null),
    load(id) {
      if (id !== RESOLVED) return null;
      const list = files().map(({ content: _content, ...file }) => file);
      return `export const hearingModel = ${JSON.stringify(list)};`;
    },
    generateBundle() {
      for (const { address, content } of files())
        this.emitFile({ type: 'asset', fileName: address, source: content });
    },
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const file = files().find(({ address }) => request.url?.endsWith(`/${address}`));
        if (file === undefined) return next();
        response.setHeader('Content-Type', 'application/octet-stream');
        response.end(file.content);
      });
    },
  };
}
