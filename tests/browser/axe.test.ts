// Every screen in every look at every size: no violation that axe-core knows, targets and contrast as measured in the page.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOOKS, SCREENS, SIZES } from './screens.ts';
import { cutWords, tooSmall, violations } from './violations.ts';
import { startBrowser, visitUnread } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser('whole');
});
afterAll(() => browser?.close());

/** A look is all colours and edges, set on the page's root: a screen is gone to once and looked at in each of them. */
async function faultsIn(page: Page): Promise<readonly string[]> {
  const faults: string[] = [];
  for (const [index, look] of LOOKS.entries()) {
    await page.evaluate((chosen) => {
      document.documentElement.dataset.look = chosen;
    }, look);
    const found = [
      ...(await violations(page, index > 0)),
      ...(await tooSmall(page)),
      ...(await cutWords(page)),
    ];
    faults.push(...found.map((fault) => `${look}: ${fault}`));
  }
  return faults;
}

describe('every screen', () => {
  it.each(SIZES)(
    'on a $name is without violation in every look, its targets fit a gloved finger, and no words are cut off',
    async ({ width, height }) => {
      const { page, foreign, leave } = await visitUnread(browser, { width, height, offline: true });
      const faults: string[] = [];
      for (const screen of SCREENS) {
        await screen.open(page);
        faults.push(...(await faultsIn(page)).map((fault) => `${screen.name} ${fault}`));
        await screen.leave?.(page);
      }
      expect([...new Set(faults)]).toEqual([]);
      expect(foreign).toEqual([]);
      await leave();
    },
    400_000,
  );
});
