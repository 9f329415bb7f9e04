// What axe-core finds on a page as it stands, and which targets are too small for a glove.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

// axe-core is the outside reference for WCAG 2.2 (A and AA) and its best practices; `color-contrast-enhanced` is WCAG 1.4.6 (7:1).
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rule, place and reason of each violation; the page's own policy forbids a script tag, so the source is evaluated. */
export async function violations(page: Page): Promise<readonly string[]> {
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
export const tooSmall = (page: Page): Promise<readonly string[]> =>
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
