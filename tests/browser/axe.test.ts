// Every screen in every look, at phone and desk size: no violation that axe-core knows, targets and contrast as measured in the page.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LOOKS, SCREENS } from './screens.ts';
import { startBrowser, visitUnread } from './visit.ts';

// axe-core is the outside reference for WCAG 2.2 (A and AA) and its best practices; `color-contrast-enhanced` is WCAG 1.4.6 (7:1).
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

/** Rule, place and reason of each violation; the page's own policy forbids a script tag, so the source is evaluated. */
async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: typeof import('axe-core') };
    const { violations: found } = await axe.run(document, {
      rules: { 'color-contrast-enhanced': { enabled: true } },
    });
    return found.flatMap(({ id, nodes }) =>
      nodes.map((node) => `${id}: ${node.html.slice(0, 140)} ${node.any[0]?.message ?? ''}`),
    );
  });
}

/** Buttons that are seen and smaller than a gloved finger needs: 20 mm for what matters most, 15 mm for the rest. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<Element>('button, summary, select, .touch, input:not([hidden])')]
      .filter((target) => target.checkVisibility())
      .flatMap((target) => {
        const { width, height } = target.getBoundingClientRect();
        const least = target.matches('.primary, .entry-confirm') ? 76 : 57;
        return height < least - 0.5 || width < least - 0.5
          ? [`${Math.round(width)}×${Math.round(height)} ${target.outerHTML.slice(0, 90)}`]
          : [];
      }),
  );

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
