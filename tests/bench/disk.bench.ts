// What an append costs on a real disk in a real Chromium, beside ten events and beside ten thousand; and opening them.

import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';
import type { Bench, Row } from './bench.ts';
import type { OnDisk } from './disk/page.ts';

const CHROMIUM = process.env.CHROMIUM ?? '/usr/bin/chromium';
const RUNS = 200;

const middle = (times: readonly number[]): number => times.toSorted((a, b) => a - b)[times.length >> 1] ?? 0;

/** The code that runs in the browser, served from this machine: only such a page may encrypt. */
async function serve(): Promise<Server> {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('disk/page.ts', import.meta.url))],
    bundle: true,
    write: false,
    format: 'iife',
    target: 'es2023',
  });
  const script = outputFiles[0]?.text ?? '';
  const server = createServer(({ url }, response) => {
    const isScript = url === '/page.js';
    response.setHeader('content-type', isScript ? 'text/javascript' : 'text/html');
    response.end(isScript ? script : '<!doctype html><script src="page.js"></script>');
  });
  await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
  return server;
}

async function onDisk(): Promise<OnDisk> {
  const server = await serve();
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-bench-'));
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: CHROMIUM,
    headless: true,
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--enable-precise-memory-info'],
  });
  try {
    const page = await context.newPage();
    await page.goto(`http://localhost:${(server.address() as AddressInfo).port}/`);
    return await page.evaluate(
      ([runs]) =>
        (
          globalThis as unknown as { measure(few: number, many: number, runs: number): Promise<OnDisk> }
        ).measure(10, 10_000, runs ?? 1),
      [RUNS],
    );
  } finally {
    await context.close();
    server.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

export const benches: readonly Bench[] = [
  {
    title: 'Adding an utterance and its entry to a log on the disk, in Chromium',
    method: `the middle of ${RUNS} times each, by turns, each written strictly; beside ten events is 1; opening is one run`,
    run: async (): Promise<readonly Row[]> => {
      const { few, many, openMs, events, heap } = await onDisk();
      const one = middle(few);
      return [
        { what: 'beside 10 events', medianMs: one, ratio: 1 },
        { what: 'beside 10,000 events', medianMs: middle(many), ratio: middle(many) / one },
        { what: `reading, verifying and folding ${events}`, medianMs: openMs, ratio: openMs / one },
        ...(heap === null
          ? []
          : [{ what: `memory after it: ${Math.round(heap / 1e6)} MB of heap`, medianMs: 0, ratio: 0 }]),
      ];
    },
  },
];
