// A whole round with two keys, as by switches or a keyboard alone: Tab goes on and Enter or Space presses; the focus is always seen
// and never lost, whatever a press takes away. All talk is invented.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { say, type VisitOptions } from './visit.ts';

const { arrive } = arrivals();

interface Focused {
  readonly name: string;
  /** why it cannot be seen, or empty */
  readonly unseen: string;
}

/** What has the focus, by its name, and whether it is seen to have it. */
const focused = (page: Page): Promise<Focused> =>
  page.evaluate(() => {
    const now = document.activeElement;
    if (now === null || now === document.body) return { name: '', unseen: 'nothing has the focus' };
    const label = now.getAttribute('aria-label') ?? now.getAttribute('aria-labelledby');
    const name = (label ?? now.textContent ?? '').trim().slice(0, 80);
    const { outlineStyle, outlineWidth } = getComputedStyle(now);
    const { left, top, right, bottom, width, height } = now.getBoundingClientRect();
    const [x, y] = [(left + right) / 2, Math.min((top + bottom) / 2, top + 30)];
    const met = document.elementFromPoint(x, y);
    const isMet = met !== null && (now.contains(met) || met.contains(now));
    const unseen =
      outlineStyle === 'none' || Number.parseFloat(outlineWidth) < 3
        ? 'no outline'
        : width === 0 || height === 0 || !isMet
          ? `under something or outside the window: ${met?.className}`
          : '';
    return { name, unseen };
  });

/** Goes on with Tab until what is named has the focus; every stop on the way must be seen. */
async function tabTo(page: Page, name: RegExp, most = 90): Promise<void> {
  const passed: string[] = [];
  for (let step = 0; step < most; step += 1) {
    const now = await focused(page);
    expect(now, `after ${passed.slice(-3).join(' > ')}`).toMatchObject({ unseen: '' });
    if (name.test(now.name)) return;
    passed.push(now.name);
    await page.keyboard.press('Tab');
    // Past the end the browser itself has the focus; one more step is the first of the page again.
    if ((await focused(page)).name === '') await page.keyboard.press('Tab');
  }
  throw new Error(`no ${name} among ${[...new Set(passed)].join(' | ')}`);
}

/** Presses what has the focus, and holds the page to have kept it where it is seen. */
async function press(page: Page, key: 'Enter' | 'Space'): Promise<Focused> {
  await page.keyboard.press(key);
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  await page.waitForTimeout(100);
  const now = await focused(page);
  expect(now.unseen).toBe('');
  return now;
}

const SIZES: readonly (readonly [string, VisitOptions])[] = [
  ['a phone', { width: 360, height: 740 }],
  ['a desk', { width: 1440, height: 900 }],
];

describe.each(SIZES)('with two keys on %s', (name, size) => {
  it('entries are confirmed, changed and struck, and the focus stays with what it was on', async () => {
    const { page } = await arrive(size);
    const toEntries = async () => {
      if (name !== 'a phone') return;
      await tabTo(page, /^Entries$/);
      await press(page, 'Enter');
    };
    for (const line of ['left forearm swelling', 'left forearm deformity', 'right knee laceration three cm'])
      await say(page, line);
    await toEntries();
    const entries = page.locator('.panel-entries .entry');
    // Each stop passed is on the exam panel first where that stands beside.
    await entries.first().locator('.entry-text').focus();
    await page.keyboard.press('Shift+Tab');
    await tabTo(page, /^Confirm: LEFT forearm: swelling/);
    expect((await press(page, 'Space')).name).toMatch(/^Change or strike: LEFT forearm: swelling/);
    await page.locator('.panel-entries .entry.confirmed', { hasText: 'swelling' }).waitFor();
    // The key once more opens the entry and confirms nothing else.
    expect(await page.locator('.panel-entries .entry.heard').count()).toBe(2);

    await tabTo(page, /^Change or strike: LEFT forearm: deformity/);
    await press(page, 'Enter');
    await tabTo(page, /^RIGHT$/);
    await press(page, 'Enter');
    await page.getByRole('dialog').getByText('RIGHT forearm').waitFor();
    await tabTo(page, /^Not forearm: choose another/);
    expect((await press(page, 'Enter')).name).not.toBe('');
    await tabTo(page, /^elbow$/);
    expect((await press(page, 'Space')).name).toMatch(/^Not elbow: choose another/);
    await tabTo(page, /^Close$/);
    expect((await press(page, 'Enter')).name).toMatch(/^Change or strike/);
    await page.locator('.panel-entries .entry.heard', { hasText: 'RIGHT elbow: deformity' }).waitFor();

    await tabTo(page, /^Change or strike: RIGHT knee: laceration/);
    await press(page, 'Enter');
    await tabTo(page, /^Size, cm: one more$/);
    await press(page, 'Space');
    await tabTo(page, /^Change the number$/);
    expect((await press(page, 'Enter')).name).toBe('Change the number');
    await page.getByRole('dialog').getByText('laceration 4 cm').first().waitFor();
    await tabTo(page, /^Strike$/);
    // A key that is held down does not go on to strike.
    expect((await press(page, 'Enter')).name).toBe('Keep it');
    await page.keyboard.press('Shift+Tab');
    await press(page, 'Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page
      .getByText(/\d replaced or struck/)
      .first()
      .waitFor();
    expect(await page.locator('.panel-entries .entry.heard').count()).toBe(1);
  });

  it('the record is handed over: read by radio, written, as symbols; each sheet gives the focus back', async () => {
    const { page } = await arrive(size);
    for (const line of [
      'forty one year old man',
      'left forearm laceration three centimetres',
      'pulse ninety two',
    ])
      await say(page, line);
    await tabTo(page, /^Report$/);
    await press(page, 'Enter');
    await tabTo(page, /^Read over the radio$/);
    await press(page, 'Enter');
    await tabTo(page, /^Report/);
    await press(page, 'Enter');
    await page.locator('.reader-text').waitFor();
    await tabTo(page, /^Leave$/);
    await press(page, 'Space');
    await tabTo(page, /^Close$/);
    expect((await press(page, 'Space')).name).toBe('Read over the radio');
    await tabTo(page, /^SOAP$/);
    expect((await press(page, 'Enter')).name).toBe('SOAP');
    await tabTo(page, /^QR or file$/);
    await press(page, 'Enter');
    await tabTo(page, /^Show the symbols$/);
    await press(page, 'Enter');
    await page.locator('canvas.symbol').waitFor();
    await tabTo(page, /^Close$/);
    expect((await press(page, 'Enter')).name).toBe('QR or file');
  });
});
