// How soon the page can be used with the processor slowed: when the line to type in was drawn, beside an empty page.

import type { Browser } from 'playwright-core';
import { NOTES_WHEN_DRAWN, NOTES_WHEN_USABLE } from './in-page.ts';

export const SLOWER = 4;

export interface FirstUse {
  /** ms since the visit began */
  readonly usable: number;
  /** ms until talk is read */
  readonly read: number;
}

const slowed = async (
  browser: Browser,
  before?: (page: Awaited<ReturnType<typeof open>>) => Promise<void>,
) => {
  const page = await open(browser);
  await before?.(page);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  return page;
};

const open = async (browser: Browser) =>
  (await browser.newContext({ viewport: { width: 360, height: 740 } })).newPage();

/** A page with one line of text, from the same server: what the browser itself takes. */
export async function emptyPage(browser: Browser, address: string): Promise<number> {
  const page = await slowed(browser);
  await page.route('**/*', (route) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html><p id="talk-line">Nothing</p>' }),
  );
  await page.addInitScript(NOTES_WHEN_DRAWN);
  await page.goto(address);
  await page.locator('html[data-usable]').waitFor();
  const told = Number(await page.locator('html').getAttribute('data-usable'));
  await page.context().close();
  return told;
}

/** One first visit, or one start from what the device keeps, without a network. */
export async function firstUse(browser: Browser, address: string, offline: boolean): Promise<FirstUse> {
  const page = await slowed(browser, async (fresh) => {
    if (!offline) return;
    await fresh.goto(address);
    await fresh.locator('html[data-reader="there"]').waitFor();
    await fresh.evaluate('navigator.serviceWorker.ready.then(() => true)');
    await fresh.waitForFunction('navigator.serviceWorker.controller !== null');
    await fresh.context().setOffline(true);
  });
  await page.addInitScript(NOTES_WHEN_USABLE);
  await page.goto(address);
  await page.locator('html[data-read]').waitFor();
  const noted = async (name: string): Promise<number> =>
    Number(await page.locator('html').getAttribute(`data-${name}`));
  const told = { usable: await noted('usable'), read: await noted('read') };
  await page.context().close();
  return told;
}
