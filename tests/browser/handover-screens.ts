// The sheets by which a record is handed over, and the way to each, for the pictures and for the checks that hold on each screen.

import type { Page } from 'playwright-core';
import type { Screen } from './screens.ts';

const inSheet = (page: Page, name: string | RegExp) =>
  page.getByRole('dialog').getByRole('button', { name, exact: typeof name === 'string' });

const close = (page: Page) => inSheet(page, 'Close').click();

async function openWay(page: Page, name: string): Promise<void> {
  const way = page.locator('.foot-way', { hasText: 'Report' });
  if ((await way.count()) > 0) await way.click();
  await page.getByRole('button', { name, exact: true }).first().click();
  await page.getByRole('dialog').getByRole('heading').first().waitFor();
}

export const HANDOVER_SCREENS: readonly Screen[] = [
  {
    name: '09-radio',
    open: async (page) => {
      await openWay(page, 'Read over the radio');
      await inSheet(page, /^Report/).waitFor();
    },
  },
  {
    name: '09a-radio-piece',
    open: async (page) => {
      await inSheet(page, /^Report/).click();
      await page.locator('.reader-text').waitFor();
    },
    leave: (page) => inSheet(page, 'Leave').click(),
  },
  {
    name: '09b-read-back',
    open: async (page) => {
      await inSheet(page, 'Check what they read back').click();
      await page.getByLabel('What they said').fill('pressure niner five, pulse one two four');
      await inSheet(page, 'Compare').click();
      await page.locator('.read-back-rows > li').first().waitFor();
    },
    leave: (page) => inSheet(page, 'Back').click(),
  },
  {
    name: '09c-their-questions',
    open: async (page) => {
      await inSheet(page, /^Their questions/).click();
      await page.getByLabel('They asked').fill('any blood thinners');
      await inSheet(page, 'Keep the question').click();
      await page
        .getByLabel(/^Answer to/)
        .first()
        .waitFor();
    },
    leave: async (page) => {
      await inSheet(page, 'Back').click();
      await close(page);
    },
  },
  {
    name: '09d-print',
    open: async (page) => {
      await openWay(page, 'Print or PDF');
      await page.locator('html[data-paper="there"]').waitFor();
    },
    leave: close,
  },
  {
    name: '09e-pass-on',
    open: (page) => openWay(page, 'QR or file'),
  },
  {
    name: '09f-symbols',
    open: async (page) => {
      await inSheet(page, 'Show the symbols').click();
      await page.locator('canvas.symbol').waitFor();
    },
    leave: close,
  },
  {
    name: '09g-receive',
    open: async (page) => {
      await openWay(page, 'Receive a record');
      await inSheet(page, 'Or choose a file').waitFor();
    },
    leave: close,
  },
];
