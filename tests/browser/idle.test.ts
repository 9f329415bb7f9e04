// The lock that comes by itself: after the chosen time untouched, and not while somebody is at work.

import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say } from './visit.ts';

/** Invented. */
const PASSPHRASE = 'seven marmots below the col';
const { arrive } = arrivals();

/** The page again, by a clock that the test moves on, with a passphrase and the given time to the lock. */
async function withLock(minutes: string): Promise<Page> {
  const { page } = await arrive();
  await page.clock.install();
  await page.goto(inject('page'));
  await ready(page);
  await say(page, 'left forearm swelling');
  await page.getByRole('button', { name: 'Records' }).click();
  const form = page.locator('details', { hasText: 'Set a passphrase' });
  await form.locator('summary').click();
  await form.getByLabel('New passphrase').fill(PASSPHRASE);
  await form.getByLabel('The same again').fill(PASSPHRASE);
  await page.getByRole('button', { name: 'Set a passphrase' }).click();
  await page.getByRole('button', { name: 'Lock now' }).waitFor();
  await page.getByLabel('Lock by itself after').selectOption(minutes);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  return page;
}

const isLocked = (page: Page) => page.getByRole('heading', { name: 'Fieldsay is locked' });

describe('a page that nobody touches', () => {
  it('locks itself after the chosen time, shows nothing then, and gives all back for the passphrase', async () => {
    const page = await withLock('2');
    await page.clock.fastForward(110_000);
    expect(await isLocked(page).count()).toBe(0);
    await page.clock.fastForward(20_000);
    await isLocked(page).waitFor();
    expect(await page.evaluate(() => document.documentElement.outerHTML)).not.toMatch(/forearm|swelling/i);
    await page.getByLabel('Passphrase').fill(PASSPHRASE);
    await page.getByRole('button', { name: 'Unlock', exact: true }).click();
    await page.locator('.panel-entries .entry').waitFor();
  });

  it('stays open while it is touched or spoken to', async () => {
    const page = await withLock('2');
    for (const line of ['right knee swelling', 'left ankle swelling', 'left wrist swelling']) {
      await page.clock.fastForward(90_000);
      await say(page, line);
    }
    await page.clock.fastForward(90_000);
    await page.mouse.click(700, 600);
    await page.clock.fastForward(90_000);
    expect(await isLocked(page).count()).toBe(0);
    await page.clock.fastForward(60_000);
    await isLocked(page).waitFor();
  });

  it('never locks itself where that is chosen', async () => {
    const page = await withLock('0');
    await page.clock.fastForward(24 * 3_600_000);
    await page.locator('.panel-entries .entry').waitFor();
    expect(await isLocked(page).count()).toBe(0);
  });
});
