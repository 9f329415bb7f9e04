// What the page keeps in a real browser: the record over a reload, the page itself without a network.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { ready, say, sentences, startBrowser, visit } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

describe('a record', () => {
  it('is there again after a reload, with its states, and goes on', async () => {
    const { page, complaints, leave } = await visit(browser);
    await say(page, 'left forearm swelling');
    await page
      .locator('.panel-entries')
      .getByRole('button', { name: /^Confirm: LEFT forearm/ })
      .click();
    await say(page, 'no bleeding of the right wrist');
    await page.locator('html[data-kept="all"]').waitFor();
    await page.reload();
    await ready(page);
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling', 'RIGHT wrist: bleeding: NO']);
    expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(1);
    await say(page, 'left knee swelling');
    await page.locator('html[data-kept="all"]').waitFor();
    await page.reload();
    await ready(page);
    expect(await sentences(page)).toHaveLength(3);
    expect(complaints).toEqual([]);
    await leave();
  });

  it('stays kept when a new one is begun, and can be opened and removed', async () => {
    const { page, leave } = await visit(browser);
    await say(page, 'left forearm swelling');
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByRole('button', { name: 'New incident' }).click();
    await page.getByText('no record yet', { exact: true }).waitFor();
    await say(page, 'right knee swelling');
    expect(await sentences(page)).toEqual(['RIGHT knee: swelling']);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('.record').nth(1).waitFor();
    expect(await page.locator('.record').count()).toBe(2);
    expect(await page.getByRole('dialog').textContent()).toContain('until a passphrase is set');
    await page.getByRole('button', { name: 'Open', exact: true }).click();
    await page.locator('.panel-entries .entry-line', { hasText: 'LEFT forearm' }).waitFor();
    await page.getByRole('button', { name: 'Records' }).click();
    const other = page.locator('.record').filter({ hasNotText: 'open now' });
    await other.getByRole('button', { name: 'Wipe …' }).click();
    expect(await other.getByRole('button', { name: 'Wipe for good' }).isDisabled()).toBe(true);
    await other.getByLabel('Type “wipe”').fill('wipe');
    await other.getByRole('button', { name: 'Wipe for good' }).click();
    await page.waitForFunction(() => document.querySelectorAll('.record').length === 1);
    await leave();
  });
});

describe('the page', () => {
  it('starts from cold without a network, with the record and the invented examinations', async () => {
    const { page, context, leave } = await visit(browser, { offline: true });
    await say(page, 'left forearm swelling');
    await page.locator('html[data-kept="all"]').waitFor();
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await context.setOffline(true);
    await page.close();
    const cold = await context.newPage();
    await cold.goto(inject('page'));
    await ready(cold);
    expect(await sentences(cold)).toEqual(['LEFT forearm: swelling']);
    await cold.getByRole('button', { name: 'Records' }).click();
    await cold.getByRole('button', { name: 'All at once' }).click();
    await cold.getByRole('button', { name: 'Play “Last ski run”' }).click();
    await cold.getByText('INVENTED EXAM').waitFor();
    expect((await sentences(cold)).length).toBeGreaterThan(50);
    await leave();
  });

  it('has a policy that allows its own origin only, and no script in the page itself', async () => {
    const { page, leave } = await visit(browser);
    const policy = await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content');
    expect(policy).toContain("default-src 'self'");
    expect(policy?.replace("'wasm-unsafe-eval'", '')).not.toContain('unsafe');
    expect(await page.locator('script:not([src])').count()).toBe(0);
    await leave();
  });
});
