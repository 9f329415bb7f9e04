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
    const told = page.getByRole('status').filter({ hasText: 'The list had just moved' });
    await told.waitFor();
    expect(await page.locator('.entry.confirmed').count()).toBe(0);
    // To tell it moved nothing, and it lies over nothing that is needed; the next press counts and takes it away.
    const stands = await boxOf(page, 'Confirm: LEFT forearm: swelling');
    await page.waitForTimeout(800);
    await button(page, 'Confirm: RIGHT knee: deformity').click();
    await page.locator('.entry.confirmed', { hasText: 'RIGHT knee' }).waitFor();
    expect(await told.count()).toBe(0);
    expect(await boxOf(page, 'Confirm: LEFT forearm: swelling')).toEqual(stands);
  });
});

describe('a press on a sheet', () => {
  it('is no press on the list beneath it, however that has just moved', async () => {
    const { page } = await arrive(PHONE);
    for (const place of ['neck', 'trachea', 'sternum', 'chest', 'pelvis'])
      await say(page, `${place} swelling and deformity`);
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    const way = button(page, /^Check \d+ plain ones together: Neck/);
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

describe('a notice of what was done last', () => {
  it.each([
    ['phone', 360, 740],
    ['phone held sideways', 740, 360],
    ['tablet', 768, 1024],
    ['desk', 1440, 900],
  ])(
    'moves nothing on a %s, and covers neither the head, the site in mind, the line nor the foot',
    async (_, width, height) => {
      const { page } = await arrive({ width, height });
      for (const place of ['wrist', 'elbow', 'forearm', 'knee']) await say(page, `left ${place} swelling`);
      await button(page, 'Confirm: LEFT knee: swelling').first().waitFor();
      const kept = '.head-who, .head button, .site-in-mind, .talk-line > *, .foot button, .ear .button';
      const boxes = () =>
        page.locator(kept).evaluateAll((all) =>
          all.map((one) => {
            const { left, top, right, bottom } = one.getBoundingClientRect();
            return { left, top, right, bottom };
          }),
        );
      const before = await boxes();
      const list = await boxOf(page, 'Confirm: LEFT knee: swelling');
      // Of what is told, this alone leaves the record and so the list as it is.
      await page.evaluate(() => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([''], 'empty-invented.talk', { type: 'text/plain' }));
        window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
      });
      const notice = page.locator('.notices .notice', { hasText: 'empty-invented.talk holds no words' });
      await notice.waitFor();
      const told = await notice.boundingBox();
      if (told === null) throw new Error('the notice is not there');
      expect(await boxes()).toEqual(before);
      const covered = before.filter(
        ({ left, top, right, bottom }) =>
          Math.min(right, told.x + told.width) - Math.max(left, told.x) > 1 &&
          Math.min(bottom, told.y + told.height) - Math.max(top, told.y) > 1,
      );
      expect(covered).toEqual([]);
      expect((await boxOf(page, 'Confirm: LEFT knee: swelling')).x).toBe(list.x);
    },
  );
});
