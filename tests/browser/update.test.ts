// A new version of the page: it waits while a patient is examined, is offered after that, and comes only when it is agreed to.

import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { preview } from 'vite';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { lookForNewVersion, publish } from './new-version.ts';
import { LOOKS, SIZES } from './screens.ts';
import { tooSmall, violations } from './violations.ts';
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
  publish(folder);
  await lookForNewVersion(page);
  // It is there, and the page knows; a patient is being examined.
  await page.waitForTimeout(1000);
  expect(await page.getByText('A new version of this page waits').count()).toBe(0);
  expect(await page.locator('html[data-version]').count()).toBe(0);
  await page.getByRole('button', { name: 'Records' }).click();
  await page.getByRole('button', { name: 'New incident' }).click();
  await page.getByText('no record yet', { exact: true }).waitFor();
  await page.getByText('A new version of this page waits').waitFor();
  const faults: string[] = [];
  for (const { name, width, height } of SIZES) {
    await page.setViewportSize({ width, height });
    for (const look of LOOKS) {
      await page.evaluate((chosen) => {
        document.documentElement.dataset.look = chosen;
      }, look);
      const found = [...(await violations(page)), ...(await tooSmall(page))];
      faults.push(...found.map((fault) => `${name} ${look}: ${fault}`));
    }
  }
  expect(faults).toEqual([]);
  // It lies over nothing, and can be left for later.
  const records = page.getByRole('button', { name: 'Records' });
  await page.setViewportSize({ width: 360, height: 740 });
  await records.click({ trial: true });
  await page.getByRole('button', { name: 'Not now' }).click();
  await page.getByText('A new version of this page waits').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'More' }).click();
  // Nothing comes by itself.
  expect(await page.locator('html[data-version]').count()).toBe(0);
  await page.getByRole('button', { name: 'Take the new version of this page' }).click();
  await page.locator('html[data-version="new"]').waitFor();
  await ready(page);
  await page.getByRole('button', { name: 'Records' }).click();
  await page.getByText('1 entry', { exact: true }).waitFor();
});
