// How soon the page can be used with the processor slowed four times, and the longest frame while a very long exam takes
// another entry: `npm run bench:page`. Figures depend on the machine and what else it does; nothing is asserted.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { FORGETS_FRAMES, LONGEST_FRAME, NOTES_WHEN_USABLE, WATCHES_FRAMES } from './in-page.ts';
import { longTalk } from './long-talk.ts';

const SLOWER = 4;
const RUNS = 5;
const LINES = ['swelling of the left cheek', 'no bleeding of the nose', 'pulse ninety two'];

const outDir = mkdtempSync(join(tmpdir(), 'fieldsay-bench-'));
await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
const server = await preview({
  logLevel: 'warn',
  build: { outDir },
  preview: { port: 0, strictPort: false },
});
const address = server.resolvedUrls?.local[0] ?? '';
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  for (const from of ['the network', 'the device, offline'] as const) {
    const times = [];
    for (let run = 0; run < RUNS; run += 1) times.push(await usableAfter(browser, from !== 'the network'));
    const middle = times.map(({ usable }) => usable).toSorted((a, b) => a - b)[Math.floor(RUNS / 2)];
    const reader = times.map(({ read }) => read).toSorted((a, b) => a - b)[Math.floor(RUNS / 2)];
    console.log(
      `from ${from}, processor ${SLOWER} times slower: usable after ${middle} ms, talk is read after ${reader} ms (middle of ${RUNS})`,
    );
  }
  for (const [name, width, height, panel] of [
    ['phone, exam', 360, 740, null],
    ['desk, report', 1440, 900, null],
    ['desk, body', 1440, 900, 'Body'],
    ['desk, signs', 1440, 900, 'Signs'],
  ] as const) {
    const page = await (await browser.newContext({ viewport: { width, height } })).newPage();
    const { entry, scroll } = await longExam(page, panel);
    console.log(
      `2000 entries, ${name}: longest frame with a new entry ${entry.join(', ')} ms, while scrolling ${scroll} ms`,
    );
    await page.context().close();
  }
} finally {
  await browser.close();
  await server.close();
  rmSync(outDir, { recursive: true, force: true });
}

/** Milliseconds from the start of the visit until the line to type in is drawn, and until talk is read. */
async function usableAfter(
  from: Browser,
  offline: boolean,
): Promise<{ readonly usable: number; readonly read: number }> {
  const context = await from.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  if (offline) {
    await page.goto(address);
    await page.locator('html[data-reader="there"]').waitFor();
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
    await page.waitForTimeout(1000);
    await context.setOffline(true);
  }
  const slow = await context.newCDPSession(page);
  await slow.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await page.addInitScript(NOTES_WHEN_USABLE);
  await page.goto(address);
  await page.locator('html[data-read]').waitFor();
  const noted = async (name: string): Promise<number> =>
    Number(await page.locator('html').getAttribute(`data-${name}`));
  const told = { usable: await noted('usable'), read: await noted('read') };
  await context.close();
  return told;
}

/** The longest gaps between two frames, ms: for each new entry, and while a list is scrolled. */
async function longExam(
  page: Page,
  panel: string | null,
): Promise<{ readonly entry: readonly number[]; readonly scroll: number }> {
  await page.goto(address);
  await page.locator('html[data-reader="there"]').waitFor();
  await page.getByRole('button', { name: 'I have read this' }).click();
  const file = { name: 'long-invented.talk', mimeType: 'text/plain', buffer: Buffer.from(longTalk(2000)) };
  await page.getByLabel('Talk file').setInputFiles(file);
  await page.getByText('READ FROM A FILE').waitFor({ timeout: 120_000 });
  await page.locator('html[data-kept="all"]').waitFor({ timeout: 120_000 });
  if (panel !== null) await page.locator('.foot-way', { hasText: panel }).click();
  await page.waitForTimeout(1000);
  await page.evaluate(WATCHES_FRAMES);
  const longest = async (act: () => Promise<void>): Promise<number> => {
    await page.evaluate(FORGETS_FRAMES);
    await act();
    return page.evaluate<number>(LONGEST_FRAME);
  };
  const entry = [];
  for (const line of LINES)
    entry.push(
      await longest(async () => {
        await page.locator('#talk-line').fill(line);
        await page.locator('#talk-line').press('Enter');
        await page.waitForTimeout(1000);
      }),
    );
  const scroll = await longest(async () => {
    await page.mouse.move(100, 400);
    for (let step = 0; step < 20; step += 1) {
      await page.mouse.wheel(0, 500);
      await page.waitForTimeout(30);
    }
  });
  return { entry, scroll };
}
