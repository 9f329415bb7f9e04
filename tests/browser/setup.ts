// Builds the page once into a folder of its own and serves it for all browser tests; what is in the way is told by them.

import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** the address of the served page, ending in a slash */
    page: string;
    /** the folder of the built page */
    built: string;
    chromium: string;
    /** Chromium without windows and menus, which starts and draws sooner; Chromium itself where it is not installed */
    shell: string;
    /** why no browser test can run, in one line; empty where they can */
    hindrance: string;
  }
}

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const SHELL = process.env.CHROMIUM ?? '/usr/bin/chromium-headless-shell';

type Served =
  | {
      readonly kind: 'served';
      readonly page: string;
      readonly built: string;
      readonly close: () => Promise<void>;
    }
  | { readonly kind: 'hindered'; readonly why: string };

/** What is in the way is handed to the browser tests, which fail by it: an error thrown here would stop all other tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const served = await serve();
  project.provide('chromium', CHROMIUM);
  project.provide('shell', existsSync(SHELL) ? SHELL : CHROMIUM);
  project.provide('page', served.kind === 'served' ? served.page : '');
  project.provide('built', served.kind === 'served' ? served.built : '');
  project.provide('hindrance', served.kind === 'hindered' ? served.why : '');
  return async () => {
    if (served.kind === 'served') await served.close();
  };
}

async function serve(): Promise<Served> {
  if (!existsSync(CHROMIUM)) {
    const why = `no Chromium at ${CHROMIUM}: apt-get install chromium, or set CHROMIUM to where it lies`;
    return { kind: 'hindered', why };
  }
  const outDir = mkdtempSync(join(tmpdir(), 'fieldsay-page-'));
  try {
    await buildAsSent(outDir);
    const server = await preview({
      logLevel: 'warn',
      build: { outDir },
      preview: { host: 'localhost', port: 0, strictPort: false, open: false },
    });
    const [page] = server.resolvedUrls?.local ?? [];
    const close = async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    };
    return page === undefined
      ? { kind: 'hindered', why: 'the built page is not being served' }
      : { kind: 'served', page, built: outDir, close };
  } catch (error) {
    const [why] = String(error).split('\n');
    return { kind: 'hindered', why: `the page could not be built: ${why}` };
  }
}

/** The page as it is sent: under this runner's own `NODE_ENV` it would be a heavier one, made for looking into. */
async function buildAsSent(outDir: string): Promise<void> {
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  try {
    await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
  } finally {
    if (NODE_ENV === undefined) delete process.env.NODE_ENV;
    else process.env.NODE_ENV = NODE_ENV;
  }
}
