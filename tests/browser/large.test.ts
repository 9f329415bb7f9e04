// The page at twice the text size, and on a phone held sideways: nothing is cut off, nothing lies over another, and the newest
// entry is seen.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { SCREENS } from './screens.ts';
import { playAll, ready, say, type VisitOptions } from './visit.ts';

const { arrive } = arrivals('whole');

/** The browser's own text size, as a person sets it, at twice its default (WCAG 2.2, 1.4.4). */
async function twice(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } });
  await page.reload();
  await ready(page);
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe('32px');
}

/** Boxes that are wider than their place, and words that are cut off. */
const cutOff = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const seen = (box: Element) => box.checkVisibility() && box.getBoundingClientRect().width > 2;
    const boxes = [
      document.documentElement,
      ...document.querySelectorAll('.panel:not([hidden]), dialog, .sheet-body'),
    ];
    const wide = boxes.filter((box) => seen(box) && box.scrollWidth > box.clientWidth + 1);
    // A strip that is pushed sideways on purpose has its own scroll.
    const buttons = [...document.querySelectorAll('button:not(.jump)')].filter((one) => {
      const { left, right } = one.getBoundingClientRect();
      const isCut = one.scrollWidth > one.clientWidth + 2 || left < -1 || right > window.innerWidth + 1;
      return seen(one) && isCut && one.closest('.jumps, .patients') === null;
    });
    return [...wide, ...buttons].map(
      (one) => `${one.tagName} ${one.className} ${one.textContent?.slice(0, 30)}`,
    );
  });

/** How many entries are seen whole on the exam panel. */
const entriesSeen = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const panel = document.querySelector('.panel-talk');
    if (panel === null) return 0;
    const whole = (row: Element): boolean => {
      const { top, bottom, left } = row.getBoundingClientRect();
      return [top + 4, bottom - 4].every((y) => row.contains(document.elementFromPoint(left + 20, y)));
    };
    return [...panel.querySelectorAll('.entry')].filter(whole).length;
  });

const SIZES: readonly (readonly [string, VisitOptions, boolean])[] = [
  ['on a phone with twice the text', { width: 360, height: 740 }, true],
  ['on a phone held sideways', { width: 740, height: 360 }, false],
  ['on a tablet with twice the text', { width: 768, height: 1024 }, true],
];

describe.each(SIZES)('%s', (_name, size, isLarge) => {
  it('no screen is wider than the window, and no button is cut off', async () => {
    const { page } = await arrive(size);
    if (isLarge) await twice(page);
    const faults: string[] = [];
    for (const screen of SCREENS.slice(1)) {
      await screen.open(page);
      faults.push(...(await cutOff(page)).map((fault) => `${screen.name}: ${fault}`));
      await screen.leave?.(page);
    }
    expect([...new Set(faults)]).toEqual([]);
  }, 120_000);
});

describe('the newest entries have the room', () => {
  it.each([
    ['a phone', 360, 740, 3],
    ['a small phone held sideways', 740, 360, 1],
    ['a tablet', 768, 1024, 5],
  ] as const)('on %s, whether or not the recogniser is stored', async (_name, width, height, least) => {
    const { page } = await arrive({ width, height });
    for (const line of [
      'left forearm swelling',
      'no bleeding of the left forearm',
      'pulse ninety two',
      'right knee deformity',
      'no pain in the neck',
      'left ankle tenderness',
    ])
      await say(page, line);
    await page.getByText('NOT HEARING').waitFor();
    await page.locator('.entry', { hasText: 'LEFT ankle' }).first().waitFor();
    expect(await entriesSeen(page)).toBeGreaterThanOrEqual(least);
  });

  it('on a phone with twice the text they are scrolled to and lie under nothing', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await twice(page);
    await say(page, 'left forearm swelling');
    // A press that meets anything else fails.
    await page.getByRole('button', { name: 'Confirm: LEFT forearm: swelling' }).click();
    await page.locator('.entry.confirmed').waitFor();
  });
});

describe('reduced motion', () => {
  it('is kept: nothing on any panel moves by itself', async () => {
    const { page } = await arrive();
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await playAll(page, 'Fall on wet rock');
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
    const moving = await page.evaluate(
      () =>
        [...document.querySelectorAll('*')].filter((one) => {
          const { animationName, transitionDuration } = getComputedStyle(one);
          return animationName !== 'none' || Number.parseFloat(transitionDuration) > 0;
        }).length,
    );
    expect(moving).toBe(0);
  });
});
