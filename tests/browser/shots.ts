// Writes a picture of every screen, in every look and at every size, of an invented examination: `npm run shots`.

import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { shootListening } from './listening-shots.ts';
import { lookForNewVersion, publish } from './new-version.ts';
import { shootPost } from './post-shots.ts';
import { LOOKS, SCREENS, SIDEWAYS, SIZES, type Size } from './screens.ts';

const FOLDER = process.argv[2] ?? 'shots';
/** part of a picture's name, to take those alone: `phone-sun`, `body` */
const ONLY = process.argv[3] ?? '';

const outDir = mkdtempSync(join(tmpdir(), 'fieldsay-shots-'));
await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({
  logLevel: 'warn',
  build: { outDir },
  preview: { port: 0, strictPort: false },
});
const address = server.resolvedUrls?.local[0] ?? '';
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    // A microphone that beeps once a second.
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
  ],
});
mkdirSync(FOLDER, { recursive: true });
try {
  for (const size of SIZES) for (const look of LOOKS) await shoot(browser, size, look);
  for (const size of SIDEWAYS) await shoot(browser, size, 'plain');
  await shootListening({ browser, address, folder: FOLDER, only: ONLY });
  await shootOffer(browser);
  await shootPost({ browser, built: outDir, folder: FOLDER, only: ONLY });
} finally {
  await browser.close();
  await server.close();
  rmSync(outDir, { recursive: true, force: true });
}

async function shoot(from: Browser, size: Size, look: (typeof LOOKS)[number]) {
  const names = SCREENS.map((screen) => `${screen.name}-${size.name}-${look}`);
  if (!names.some((name) => name.includes(ONLY))) return;
  const { width, height } = size;
  const context = await from.newContext({ viewport: { width, height }, reducedMotion: 'reduce' });
  const page: Page = await context.newPage();
  await page.goto(address);
  await page.evaluate((chosen) => localStorage.setItem('fieldsay-look', chosen), look);
  await page.reload();
  await page.locator('html[data-reader="there"]').waitFor();
  for (const [index, screen] of SCREENS.entries()) {
    await screen.open(page);
    const name = names[index] ?? screen.name;
    if (name.includes(ONLY)) await page.screenshot({ path: join(FOLDER, `${name}.png`) });
    await screen.leave?.(page);
  }
  await context.close();
}

/** A new version that waits, on the page as it was served before it. */
async function shootOffer(from: Browser) {
  const name = (size: string, look: string) => `02a-update-offered-${size}-${look}`;
  if (!SIZES.some((size) => LOOKS.some((look) => name(size.name, look).includes(ONLY)))) return;
  const page = await (await from.newContext({ reducedMotion: 'reduce' })).newPage();
  await page.goto(address);
  await page.getByRole('button', { name: 'I have read this' }).click();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await page.locator('html[data-reader="there"]').waitFor();
  publish(outDir);
  await lookForNewVersion(page);
  await page.getByText('A new version of this page waits').waitFor();
  for (const { name: size, width, height } of SIZES)
    for (const look of LOOKS) {
      if (!name(size, look).includes(ONLY)) continue;
      await page.setViewportSize({ width, height });
      await page.evaluate((chosen) => {
        document.documentElement.dataset.look = chosen;
      }, look);
      await page.screenshot({ path: join(FOLDER, `${name(size, look)}.png`) });
    }
  await page.context().close();
}
