// Nothing jumps while a thumb is on its way: what is heard meanwhile waits, what a hand did shows at once, and a press on a
// list that moved under it is refused.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { hear } from './hear.ts';
import { say, type VisitOptions } from './visit.ts';

const { arrive } = arrivals();
const PHONE: VisitOptions = { width: 360, height: 740 };

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

const boxOf = async (page: Page, name: string | RegExp) => {
  const box = await button(page, name).first().boundingBox();
  if (box === null) throw new Error('the button is not there');
  return box;
};

/** Waits until the page has drawn what it was told. */
const drawn = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

describe('while a finger is down', () => {
  it('what is heard waits, the button stays where it is, and the press does what it was meant to', async () => {
    const { page } = await arrive(PHONE);
    await say(page, 'left forearm swelling');
    const confirm = 'Confirm: LEFT forearm: swelling';
    const before = await boxOf(page, confirm);
    await page.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
    await page.mouse.down();
    await hear(page, 'right knee deformity');
    await page.getByText('1 newer').waitFor();
    expect(await boxOf(page, confirm)).toEqual(before);
    await page.mouse.up();
    await page.locator('.entry.confirmed', { hasText: 'LEFT forearm: swelling' }).waitFor();
    await button(page, 'Confirm: RIGHT knee: deformity').waitFor();
    expect(await page.locator('.entry.confirmed').count()).toBe(1);
  });
});

describe('in the moment after a press', () => {
  it('the next button stays under the thumb, and what was pressed shows at once', async () => {
    const { page } = await arrive(PHONE);
    await say(page, 'left forearm swelling and deformity');
    await button(page, 'Confirm: LEFT forearm: swelling').click();
    await page.locator('.entry.confirmed', { hasText: 'swelling' }).waitFor();
    const next = 'Confirm: LEFT forearm: deformity';
    const before = await boxOf(page, next);
    await button(page, next).dispatchEvent('pointerdown');
    await button(page, next).dispatchEvent('pointerup');
    await hear(page, 'right knee deformity');
    await drawn(page);
    expect(await boxOf(page, next)).toEqual(before);
    // The moment passes by itself.
    await button(page, 'Confirm: RIGHT knee: deformity').waitFor();
    expect((await boxOf(page, next)).y).toBeGreaterThan(before.y);
  });
});

describe('a press on a list that has just moved', () => {
  it('is refused and said to be, and confirms nothing', async () => {
    const { page } = await arrive(PHONE);
    await say(page, 'left forearm swelling');
    const { x, y, width, height } = await boxOf(page, 'Confirm: LEFT forearm: swelling');
    // One turn of the page: the list has moved and the thumb comes down where the other button was.
    await page.evaluate(
      async ([left, top]) => {
        const field = document.querySelector<HTMLInputElement>('#talk-line');
        if (field === null) return;
        field.value = 'right knee deformity';
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        field.form?.requestSubmit();
        await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
        const met = document.elementFromPoint(left ?? 0, top ?? 0)?.closest('button');
        const event = { bubbles: true, cancelable: true, detail: 1, clientX: left ?? 0, clientY: top ?? 0 };
        met?.dispatchEvent(new MouseEvent('click', event));
      },
      [x + width / 2, y + height / 2],
    );
    await page.getByText('The list had just moved').waitFor();
    expect(await page.locator('.entry.confirmed').count()).toBe(0);
  });
});

describe('a press on a sheet', () => {
  it('is no press on the list beneath it, however that has just moved', async () => {
    const { page } = await arrive(PHONE);
    for (const place of ['upper arm', 'elbow', 'forearm', 'wrist', 'hand'])
      await say(page, `left ${place} swelling and deformity`);
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    const way = button(page, /^Check \d+ plain ones together: Arm/);
    await way.click();
    const { x, y, width, height } = await boxOf(page, 'Not yet');
    await button(page, 'Not yet').click();
    await page.waitForTimeout(800);
    // The list moves, the sheet comes over it, and the press is made before the list has stood for long.
    await hear(page, 'swelling of the left cheek');
    await drawn(page);
    await way.evaluate((one: HTMLElement) => one.click());
    await drawn(page);
    await page.mouse.click(x + width / 2, y + height / 2);
    await button(page, 'Not yet').waitFor({ state: 'detached', timeout: 3000 });
  });
});
