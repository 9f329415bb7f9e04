// A whole examination by typed talk: confirmed by taps or by the keyboard alone, and read as a handoff, from cold and without
// a network. All talk is invented.

import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { SCREENS } from './screens.ts';
import { confirmAll, ready, say } from './visit.ts';

const { arrive } = arrivals('whole');

const EXAM = [
  'my patient is a thirty four year old woman, she slipped off a wet slab',
  'no tenderness of the skull',
  'is your neck sore? no',
  'right ribs, tenderness',
  'abdomen unremarkable',
  'left forearm deformity and swelling',
  'correction, right forearm',
  'no bleeding of the right forearm',
  'pulse ninety two, strong and regular',
  'blood pressure one eighteen over seventy six',
  'allergic to penicillin',
];

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });
const panel = (page: Page, name: string) => page.locator('.foot-way', { hasText: name });

/** What is told of it when all of it is confirmed. */
async function expectHandoff(page: Page): Promise<void> {
  expect(await page.locator('.count').textContent()).toContain('Nothing is left to check.');
  const way = panel(page, 'Report');
  if ((await way.count()) > 0) await way.click();
  await button(page, 'SOAP').click();
  const soap = page.locator('.written');
  await soap
    .getByText(/right forearm: deformity and swelling/i)
    .first()
    .waitFor();
  const text = (await soap.textContent()) ?? '';
  expect(text).toMatch(/penicillin/i);
  expect(text).toMatch(/118\/76/);
  expect(text).toMatch(/not examined/i);
  // What was corrected away is nowhere told as found.
  expect(text).not.toMatch(/left forearm: deformity/i);
  expect(text).not.toMatch(/\bnormal\b/i);
}

describe('a whole examination', () => {
  it('on a phone is typed, confirmed by taps and read as a handoff, from cold and without a network', async () => {
    const { page, context, foreign } = await arrive({ width: 360, height: 740, offline: true });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await context.setOffline(true);
    await page.close();
    const cold = await context.newPage();
    await cold.goto(inject('page'));
    await ready(cold);
    for (const line of EXAM) await say(cold, line);
    await panel(cold, 'Entries').click();
    await confirmAll(cold);
    expect(await cold.locator('.panel-entries .entry.confirmed').count()).toBeGreaterThan(9);
    await expectHandoff(cold);
    expect(foreign).toEqual([]);
  });

  it('by the keyboard alone: said, confirmed, changed, read', async () => {
    const { page } = await arrive();
    const tabTo = async (one: ReturnType<Page['locator']>): Promise<void> => {
      for (let step = 0; step < 400; step += 1) {
        if (await one.evaluate((element) => element === document.activeElement)) return;
        await page.keyboard.press('Tab');
      }
      throw new Error('the keyboard does not reach it');
    };
    await tabTo(page.locator('#talk-line'));
    for (const line of EXAM) {
      await page.keyboard.type(line);
      await page.keyboard.press('Enter');
    }
    await confirmAll(page, async (one) => {
      await tabTo(one);
      await page.keyboard.press('Enter');
    });
    // An entry is opened, made its opposite and back, by keys.
    const row = page.locator('.panel-entries').getByRole('button', { name: /^Change or strike: RIGHT ribs/ });
    await tabTo(row);
    await page.keyboard.press('Enter');
    const no = page.getByRole('dialog').getByRole('button', { name: 'NO', exact: true });
    await tabTo(no);
    await page.keyboard.press('Space');
    await page.getByRole('dialog').locator('.sheet-entry', { hasText: 'NO' }).waitFor();
    const yes = page.getByRole('dialog').getByRole('button', { name: 'YES', exact: true });
    await tabTo(yes);
    await page.keyboard.press('Space');
    const confirm = button(page, 'Confirm as it stands');
    await tabTo(confirm);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await expectHandoff(page);
  });
});

describe('without a network, from cold', () => {
  it('every screen opens', async () => {
    const { page, context, foreign } = await arrive({ width: 360, height: 740, offline: true });
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await context.setOffline(true);
    await page.close();
    const cold = await context.newPage();
    const complaints: string[] = [];
    cold.on('pageerror', ({ message }) => complaints.push(message));
    await cold.goto(inject('page'));
    await ready(cold);
    for (const screen of SCREENS.slice(1)) {
      await screen.open(cold);
      expect(await cold.locator('main, dialog').last().textContent(), screen.name).not.toContain(
        'could not be loaded',
      );
      await screen.leave?.(cold);
    }
    expect({ complaints, foreign }).toEqual({ complaints: [], foreign: [] });
  }, 120_000);
});
