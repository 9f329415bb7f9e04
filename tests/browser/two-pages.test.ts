// Two pages of one browser: one writes, the other follows live and says so, and can take over without losing a word.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { ready, say, sentences, startBrowser, visit } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

describe('the second page', () => {
  it('follows live, keeps what is said in it waiting, and takes over without losing a word', async () => {
    const { page, context, complaints, leave } = await visit(browser);
    await say(page, 'left forearm swelling');
    await page.locator('.saved[data-said="1"]').waitFor();
    const second = await context.newPage();
    await second.goto(inject('page'));
    await ready(second);
    await second.getByText('This page follows').waitFor();
    expect(await sentences(second)).toEqual(['LEFT forearm: swelling']);
    await say(page, 'right knee swelling');
    await second.locator('.panel-entries .entry', { hasText: 'knee' }).waitFor();
    await say(second, 'left ankle swelling');
    await second.getByText('Waiting to be read').waitFor();
    await second.getByRole('button', { name: 'Record here' }).click();
    await second.locator('.panel-entries .entry', { hasText: 'ankle' }).waitFor();
    await second.locator('.saved[data-said="3"]').waitFor();
    // The first page follows now, and shows what the second one wrote.
    await page.getByText('This page follows').waitFor();
    await page.locator('.panel-entries .entry', { hasText: 'ankle' }).waitFor();
    const expected = ['LEFT forearm: swelling', 'LEFT ankle: swelling', 'RIGHT knee: swelling'];
    expect((await sentences(page)).toSorted()).toEqual(expected.toSorted());
    // When the writer goes, the one that is left writes by itself.
    await second.close();
    await say(page, 'left wrist swelling');
    await page.locator('.saved[data-said="4"]').waitFor();
    expect(await page.locator('.notice.trouble').count()).toBe(0);
    expect(complaints).toEqual([]);
    await leave();
  });

  it('is locked with the first one, though the passphrase was set there only', async () => {
    const { page, context, complaints, leave } = await visit(browser);
    await say(page, 'left forearm swelling');
    await page.locator('.saved[data-said="1"]').waitFor();
    const second = await context.newPage();
    await second.goto(inject('page'));
    await ready(second);
    await second.locator('.panel-entries .entry').waitFor();
    await page.getByRole('button', { name: 'Records' }).click();
    const form = page.locator('details', { hasText: 'Set a passphrase' });
    await form.locator('summary').click();
    await form.getByLabel('New passphrase').fill('seven marmots below the col');
    await form.getByLabel('The same again').fill('seven marmots below the col');
    await page.getByRole('button', { name: 'Set a passphrase' }).click();
    await page.getByRole('button', { name: 'Lock now' }).click();
    for (const one of [page, second]) {
      await one.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
      expect(await one.evaluate(() => document.documentElement.outerHTML)).not.toMatch(/forearm|swelling/i);
    }
    // Each is opened by itself, and the one that writes goes on.
    await page.getByLabel('Passphrase').fill('seven marmots below the col');
    await page.getByRole('button', { name: 'Unlock', exact: true }).click();
    await page.locator('.panel-entries .entry').waitFor();
    await say(page, 'right knee swelling');
    await page.locator('.saved[data-said="2"]').waitFor();
    expect(await second.locator('.entry').count()).toBe(0);
    expect(complaints).toEqual([]);
    await leave();
  });
});
