// What axe-core finds on a page as it stands, and which targets are too small for a glove.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

// axe-core is the outside reference for WCAG 2.2 (A and AA) and its best practices; `color-contrast-enhanced` is WCAG 1.4.6 (7:1).
const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules that can find something else in another look: it changes colours and edges, and nothing of the document. */
const OF_THE_LOOK = ['color-contrast-enhanced', 'link-in-text-block'];

/**
 * Rule, place and reason of each violation; the page's own policy forbids a script tag, so the source is evaluated.
 * With `lookOnly` only what a look can change, where all else was looked at on the same screen in another one.
 */
export async function violations(page: Page, lookOnly = false): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(AXE);
  return page.evaluate(
    async (only) => {
      const { axe } = window as unknown as { axe: typeof import('axe-core') };
      const { violations: found } = await axe.run(document, {
        // What falls short of 4.5:1 falls short of 7:1, so the weaker rule would only count it again.
        rules: { 'color-contrast-enhanced': { enabled: true }, 'color-contrast': { enabled: false } },
        ...(only === null ? {} : { runOnly: { type: 'rule' as const, values: [...only] } }),
        resultTypes: ['violations'],
      });
      return found.flatMap(({ id, nodes }) =>
        nodes.map((node) => `${id}: ${node.html.slice(0, 140)} ${node.any[0]?.message ?? ''}`),
      );
    },
    lookOnly ? OF_THE_LOOK : null,
  );
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

/** Words that nobody can read: in a box that cuts off what does not fit it. */
export const cutWords = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body *')]
      .filter((box) => {
        const { overflowY, fontSize } = getComputedStyle(box);
        const hasWords = [...box.childNodes].some(
          (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim() !== '',
        );
        const isCut = overflowY === 'hidden' || overflowY === 'clip';
        return (
          hasWords &&
          isCut &&
          box.checkVisibility() &&
          // What is for a screen reader alone is a dot.
          box.clientWidth > 2 &&
          box.clientHeight < Number.parseFloat(fontSize)
        );
      })
      .map((box) => `cut off: ${box.outerHTML.slice(0, 90)}`),
  );
