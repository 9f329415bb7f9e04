// A visit to the built page in a browser of its own, which notes every complaint and every request that leaves.

import { type Browser, type BrowserContext, chromium, type Locator, type Page } from 'playwright-core';
import { inject } from 'vitest';

export interface Visit {
  readonly page: Page;
  readonly context: BrowserContext;
  /** errors and warnings of the page's console, and errors nobody caught */
  readonly complaints: string[];
  /** addresses asked for that are not the page's own */
  readonly foreign: string[];
  leave(): Promise<void>;
}

export interface VisitOptions {
  readonly width?: number;
  readonly height?: number;
  /** how the page looks from the start */
  readonly look?: string;
  /** run in the page before its own scripts */
  readonly before?: () => void;
  /** opened instead of the page's own address; its origin is the page's then */
  readonly address?: string;
  /** with the worker that keeps the page for a start without a network; the other tests are sooner done without it */
  readonly offline?: boolean;
}

export const ARGUMENTS: readonly string[] = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/**
 * The shell is Chromium without windows and menus; it starts and draws in half the time. It breaks down where the page asks
 * after recognition on the device, so what opens that sheet needs the whole.
 */
export type BrowserKind = 'shell' | 'whole';

/** A browser for one test file; every visit in it begins with nothing stored. Throws what is in the way, in one line. */
export async function startBrowser(kind: BrowserKind = 'shell'): Promise<Browser> {
  const hindrance = inject('hindrance');
  if (hindrance !== '') throw new Error(hindrance);
  const executablePath = inject(kind === 'shell' ? 'shell' : 'chromium');
  return chromium.launch({ executablePath, headless: true, args: [...ARGUMENTS] });
}

/** Opens the page, reads the cautions away, and waits until talk can be read. */
export async function visit(browser: Browser, options: VisitOptions = {}): Promise<Visit> {
  const here = await visitUnread(browser, options);
  await here.page.getByRole('button', { name: 'I have read this' }).click();
  return here;
}

/** Opens the page as at the first start, in a look where one is given, and waits until talk can be read. */
export async function visitUnread(browser: Browser, options: VisitOptions = {}): Promise<Visit> {
  const { width = 1440, height = 900, offline = false } = options;
  const context = await browser.newContext({
    viewport: { width, height },
    serviceWorkers: offline ? 'allow' : 'block',
  });
  const address = options.address ?? inject('page');
  const own = new URL(address).origin;
  const complaints: string[] = [];
  const foreign: string[] = [];
  context.on('request', (request) => {
    const { protocol, origin } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && origin !== own) foreign.push(request.url());
  });
  const page = await context.newPage();
  page.on('console', (message) => {
    const isOfThisTool = message.text().startsWith('Service Worker registration blocked');
    if (!isOfThisTool && (message.type() === 'error' || message.type() === 'warning'))
      complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  if (options.before !== undefined) await page.addInitScript(options.before);
  const { look } = options;
  if (look !== undefined)
    await page.addInitScript((chosen) => localStorage.setItem('fieldsay-look', chosen), look);
  await page.goto(address);
  await ready(page);
  return { page, context, complaints, foreign, leave: () => context.close() };
}

/** Waits until the reader is built and a kept record, where there is one, is open again. */
export async function ready(page: Page): Promise<void> {
  await page.locator('html[data-reader="there"]').waitFor();
}

/** Types one line and says it with Enter. */
export async function say(page: Page, line: string): Promise<void> {
  const field = page.getByLabel('What is said');
  await field.fill(line);
  await field.press('Enter');
}

/** The entries of the panel by their sentences, in the order they stand. */
export const sentences = (page: Page): Promise<readonly string[]> =>
  page.locator('.panel-entries .entry .entry-line').allInnerTexts();

/** Plays an invented examination all at once. */
export async function playAll(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: 'All at once' }).click();
  await page.getByRole('button', { name: `Play “${title}”` }).click();
  await page.getByText('INVENTED EXAM').waitFor();
}

/**
 * Confirms whatever waits on the entries panel, each at its own button, by `press`. A press that the list refuses, as it
 * had just moved, is made again, as a person would; an entry that cannot be confirmed is an error.
 */
export async function confirmAll(
  page: Page,
  press: (one: Locator) => Promise<void> = (one) => one.click(),
): Promise<void> {
  const heard = page.locator('.panel-entries .group .entry.heard');
  for (let tries = 0; tries < 60; tries += 1) {
    const left = await heard.count();
    if (left === 0) return;
    await press(heard.locator('.entry-confirm').first());
    await page
      .waitForFunction(
        (before) => document.querySelectorAll('.panel-entries .group .entry.heard').length < before,
        left,
        { timeout: 2000 },
      )
      .catch(() => undefined);
  }
  throw new Error(`${await heard.count()} entries are still not confirmed`);
}
