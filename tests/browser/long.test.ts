// A very long examination: with two thousand entries on the record the page still takes the next one, and draws only what can be looked at.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { longTalk } from '../bench/page/long-talk.ts';
import { say, startBrowser, visit } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const ENTRIES = 2000;
/** The longest gap between two frames while `act` runs, ms. */
async function longestFrame(page: Page, act: () => Promise<void>): Promise<number> {
  await page.evaluate(() => {
    const watch = { longest: 0, on: true };
    Object.assign(window, { watch });
    let last = performance.now();
    const frame = (now: number) => {
      watch.longest = Math.max(watch.longest, now - last);
      last = now;
      if (watch.on) requestAnimationFrame(frame);
    };
    requestAnimationFrame((now) => {
      last = now;
      requestAnimationFrame(frame);
    });
  });
  await act();
  return page.evaluate(() => (window as unknown as { watch: { longest: number } }).watch.longest);
}

describe(`with ${ENTRIES} entries`, () => {
  it.each([
    ['a phone', 360, 740],
    ['a desk', 1440, 900],
  ])(
    'a new one is taken on %s',
    async (name, width, height) => {
      const { page, complaints, leave } = await visit(browser, { width, height });
      await page.getByLabel('Talk file').setInputFiles({
        name: 'long-invented.talk',
        mimeType: 'text/plain',
        buffer: Buffer.from(longTalk(ENTRIES)),
      });
      await page.getByText('READ FROM A FILE').waitFor({ timeout: 60_000 });
      await page.locator('.said-one').first().waitFor();
      await page.locator('html[data-kept="all"]').waitFor({ timeout: 60_000 });
      await page.waitForTimeout(500);
      const frames: number[] = [];
      for (const line of ['swelling of the left cheek', 'no bleeding of the nose', 'pulse ninety two']) {
        const longest = await longestFrame(page, async () => {
          await say(page, line);
          await page.locator('.said-words', { hasText: line }).waitFor();
          await page.waitForTimeout(300);
        });
        frames.push(Math.round(longest));
      }
      // Speed depends on the machine and is told, not asserted; how much is drawn is asserted.
      const [drawn, lines] = [await page.locator('.entry').count(), await page.locator('.moment').count()];
      expect(drawn).toBeLessThan(600);
      expect(lines).toBeLessThanOrEqual(200);
      console.info(
        `${name}: ${drawn} entries and ${lines} lines drawn, longest frames ${frames.join(', ')} ms`,
      );
      expect(complaints).toEqual([]);
      await leave();
    },
    180_000,
  );
});
