// Every screen in every look, at phone and desk size: no violation that axe-core knows, targets and contrast as measured in the page.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOOKS, SCREENS } from './screens.ts';
import { tooSmall, violations } from './violations.ts';
import { startBrowser, visitUnread } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

/** The phone in every look; the desk, where the same parts stand side by side, once. */
const VISITS = [
  ...LOOKS.map((look) => [look, 'phone', 360, 740] as const),
  ['plain', 'desk', 1440, 900] as const,
] as const;

describe('every screen', () => {
  it.each(VISITS)(
    'in the %s look on a %s is without violation, and its targets fit a gloved finger',
    async (look, _name, width, height) => {
      const { page, foreign, leave } = await visitUnread(browser, { width, height, look });
      const faults: string[] = [];
      for (const screen of SCREENS) {
        await screen.open(page);
        const found = [...(await violations(page)), ...(await tooSmall(page))];
        faults.push(...found.map((fault) => `${screen.name}: ${fault}`));
        await screen.leave?.(page);
      }
      expect([...new Set(faults)]).toEqual([]);
      expect(foreign).toEqual([]);
      await leave();
    },
    180_000,
  );
});
