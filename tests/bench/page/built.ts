// The page as it is built, served from this machine, and a browser to look at it with; both are gone when the work is done.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { build, preview } from 'vite';

export interface Built {
  readonly browser: Browser;
  readonly address: string;
  /** the folder that was built */
  readonly folder: string;
}

/** Does the work with the built page; throws what the build or the browser throws. */
export async function withBuilt<T>(work: (built: Built) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-bench-'));
  await build({ logLevel: 'error', build: { outDir: folder, emptyOutDir: true } });
  const server = await preview({
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { port: 0, strictPort: false },
  });
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  });
  try {
    return await work({ browser, folder, address: server.resolvedUrls?.local[0] ?? '' });
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
