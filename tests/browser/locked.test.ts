// The lock in a real browser: what is said under it cannot be seen, asked for, or found on the disk.

import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { createProfile, type Profile } from './profile.ts';
import { ready, say, sentences } from './visit.ts';

/** Invented, like every word in these tests. */
const PASSPHRASE = 'seven marmots below the col';

const { arrive } = arrivals();

async function setPassphrase(page: Page, passphrase: string): Promise<void> {
  await page.getByRole('button', { name: 'Records' }).click();
  const form = page.locator('details', { hasText: 'Set a passphrase' });
  await form.locator('summary').click();
  await form.getByLabel('New passphrase').fill(passphrase);
  await form.getByLabel('The same again').fill(passphrase);
  await page.getByRole('button', { name: 'Set a passphrase' }).click();
}

async function locked(page: Page): Promise<void> {
  await setPassphrase(page, PASSPHRASE);
  await page.getByRole('button', { name: 'Lock now' }).click();
  await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
}

async function unlock(page: Page, passphrase: string): Promise<void> {
  await page.getByLabel('Passphrase').fill(passphrase);
  await page.getByRole('button', { name: 'Unlock', exact: true }).click();
}

const everything = (page: Page): Promise<string> => page.evaluate(() => document.documentElement.outerHTML);

describe('the lock', () => {
  it('leaves nothing of the record in the page, and gives all of it back for the passphrase', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await locked(page);
    expect(await everything(page)).not.toMatch(/forearm|swelling/i);
    await unlock(page, 'a kettle for the long descent');
    await page.getByText('That is not the passphrase. Nothing was changed or lost.').waitFor();
    await unlock(page, PASSPHRASE);
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    await say(page, 'right knee swelling');
    await page.locator('.saved[data-said="2"]').waitFor();
  });

  it('is shut again by a reload, and answers nothing then', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await locked(page);
    await page.reload();
    await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
    await ready(page);
    expect(await everything(page)).not.toMatch(/forearm|swelling/i);
    expect(await page.getByLabel('What is said').count()).toBe(0);
    await unlock(page, PASSPHRASE);
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
  });

  it('refuses a PIN, with the reason', async () => {
    const { page } = await arrive();
    await setPassphrase(page, '4807');
    await page.getByRole('alert').getByText('A number alone is refused').waitFor();
    expect(await page.getByRole('button', { name: 'Lock now' }).count()).toBe(0);
  });

  it('makes a hand wait after wrong passphrases, also over a reload', async () => {
    const { page } = await arrive();
    await locked(page);
    for (const wrong of ['first wrong one', 'second wrong one', 'third wrong one']) {
      await unlock(page, wrong);
      await page.getByText('That is not the passphrase').waitFor();
      await page.locator('form button:not([aria-busy])').waitFor();
    }
    await page.getByText(/Wait \d+ s before the next try/).waitFor();
    await page.reload();
    await page.getByText(/Wait \d+ s before the next try/).waitFor();
    expect(await page.getByRole('button', { name: 'Unlock', exact: true }).isDisabled()).toBe(true);
  });

  it('never stands between a responder and a patient: an examination begins at once, and is locked like the others', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await locked(page);
    await page.getByRole('button', { name: 'Begin a new examination' }).click();
    await say(page, 'right knee swelling');
    await page.locator('.saved[data-said="1"]').waitFor();
    expect(await sentences(page)).toEqual(['RIGHT knee: swelling']);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('.record').waitFor();
    expect(await page.locator('.record').count()).toBe(1);
    await page.reload();
    await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
    expect(await everything(page)).not.toMatch(/knee/i);
    await unlock(page, PASSPHRASE);
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['RIGHT knee: swelling']);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('.record').nth(1).waitFor();
    expect(await page.locator('.record').count()).toBe(2);
  });

  it('opens by a passkey where the device has one with a secret to give (a virtual authenticator)', async () => {
    const { page } = await arrive();
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('WebAuthn.enable');
    await devtools.send('WebAuthn.addVirtualAuthenticator', {
      options: {
        protocol: 'ctap2',
        ctap2Version: 'ctap2_1',
        transport: 'internal',
        hasResidentKey: true,
        hasUserVerification: true,
        hasPrf: true,
        isUserVerified: true,
        automaticPresenceSimulation: true,
      },
    });
    await say(page, 'left forearm swelling');
    await setPassphrase(page, PASSPHRASE);
    await page.locator('summary', { hasText: 'passkey' }).click();
    await page.getByLabel('Present passphrase').last().fill(PASSPHRASE);
    await page.getByRole('button', { name: 'Unlock with this device’s passkey too' }).click();
    await page.getByText('Done.').waitFor();
    await page.getByRole('button', { name: 'Lock now' }).click();
    await page.getByRole('button', { name: 'Unlock with this device’s passkey' }).click();
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
  });
});

describe('the bytes on the disk', () => {
  let profile: Profile | null = null;
  let context: BrowserContext | null = null;
  afterEach(async () => {
    await context?.close();
    profile?.remove();
  });

  it('hold none of the record’s words after a locked session, and the search would find them', async () => {
    profile = createProfile();
    context = await profile.start();
    const page = await context.newPage();
    await page.goto(inject('page'));
    await page.getByRole('button', { name: 'I have read this' }).click();
    await ready(page);
    // Words that no file of a browser has of its own; one is put in the open, to show that the search finds it.
    const words = ['zorblatt', 'quennifer', 'wexmoor'];
    await say(page, 'patient says her name is quennifer zorblatt');
    await say(page, 'the wexmoor marmots were unimpressed');
    await page.evaluate(() => localStorage.setItem('control', 'vexilquark'));
    await setPassphrase(page, PASSPHRASE);
    await say2(page);
    await context.close();
    context = null;
    expect(profile.find(['vexilquark']).length).toBeGreaterThan(0);
    expect(profile.find([...words, 'marmots were', PASSPHRASE])).toEqual([]);
  });

  async function say2(page: Page): Promise<void> {
    await page.getByRole('button', { name: 'Close' }).click();
    await say(page, 'zorblatt again, left forearm swelling');
    await page.locator('.saved[data-said="3"]').waitFor();
    await page.getByRole('button', { name: 'Lock', exact: true }).click();
    await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
  }
});
