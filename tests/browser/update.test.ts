// A new version of the page: it waits while a patient is examined, is offered after that, and comes only when it is agreed to.

import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { preview } from 'vite';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { ready, say, startBrowser } from './visit.ts';

let browser: Browser;
let folder: string;
let server: Awaited<ReturnType<typeof preview>>;
beforeAll(async () => {
  browser = await startBrowser();
  folder = mkdtempSync(join(tmpdir(), 'fieldsay-update-'));
  cpSync(inject('built'), folder, { recursive: true });
  server = await preview({
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { host: 'localhost', port: 0, strictPort: false, open: false },
  });
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Puts a new version where the page is served from: its document says so, and its worker knows of it. */
function publish(): void {
  const [document, worker] = [join(folder, 'index.html'), join(folder, 'sw.js')];
  writeFileSync(document, readFileSync(document, 'utf8').replace('<html ', '<html data-version="new" '));
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(
    /("?url"?:\s*"index\.html",\s*"?revision"?:\s*")[0-9a-f]{32}/,
    `$1${'0'.repeat(32)}`,
  );
  expect(changed).not.toBe(text);
  writeFileSync(worker, changed);
}

/** Lets the browser look for a new version, and waits until it is there and waits. */
const look = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((done) => setTimeout(done, 50));
  });

it('is not offered during an examination, and is taken after it only when a person agrees; records stay', async () => {
  const page = await (await browser.newContext()).newPage();
  await page.goto(server.resolvedUrls?.local[0] ?? '');
  await page.getByRole('button', { name: 'I have read this' }).click();
  await ready(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await ready(page);
  await say(page, 'left forearm swelling');
  await page.locator('html[data-kept="all"]').waitFor();
  publish();
  await look(page);
  // It is there, and the page knows; a patient is being examined.
  await page.waitForTimeout(1000);
  expect(await page.getByText('A new version of this page waits').count()).toBe(0);
  expect(await page.locator('html[data-version]').count()).toBe(0);
  await page.getByRole('button', { name: 'Records' }).click();
  await page.getByRole('button', { name: 'New incident' }).click();
  await page.getByText('no record yet', { exact: true }).waitFor();
  await page.getByText('A new version of this page waits').waitFor();
  // Nothing comes by itself.
  expect(await page.locator('html[data-version]').count()).toBe(0);
  await page.getByRole('button', { name: 'Take it now' }).click();
  await page.locator('html[data-version="new"]').waitFor();
  await ready(page);
  await page.getByRole('button', { name: 'Records' }).click();
  await page.getByText('1 entries').waitFor();
});
