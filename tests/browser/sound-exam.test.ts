// A whole examination by sound: heard through the browser's microphone, which plays a recording made on this machine by a
// synthetic voice, from cold and without a network; confirmed by taps, and read as a handoff. All talk is invented.

import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from 'playwright-core';
import { afterEach, beforeAll, expect, inject, it, vi } from 'vitest';
import { browserHearing, speak } from './spoken.ts';
import { confirmAll, ready } from './visit.ts';

// The recording is played in real time, and a busy machine takes its own time; nothing here is about how long.
vi.setConfig({ testTimeout: 240_000 });
// A machine that is far too busy loses sound on its way from the microphone; such a run is done again.
const AGAIN = { retry: 2 };

const EXAM = [
  'left forearm swelling',
  'no deformity of the right wrist',
  'blood pressure one twenty over eighty',
  'pulse ninety two',
  'tenderness of the right knee',
];

let recording: string;
beforeAll(() => {
  const hindrance = inject('hindrance');
  if (hindrance !== '') throw new Error(hindrance);
  recording = speak(EXAM);
});

const open: BrowserContext[] = [];
afterEach(() => Promise.all(open.splice(0).map((context) => context.close())));

it(
  'a whole examination is heard, confirmed by taps and read as a handoff, from cold and without a network',
  AGAIN,
  async () => {
    const context = await browserHearing(recording, mkdtempSync(join(tmpdir(), 'fieldsay-profile-')));
    open.push(context);
    const own = new URL(inject('page')).origin;
    const foreign: string[] = [];
    context.on('request', (request) => {
      const { protocol, origin } = new URL(request.url());
      if (protocol !== 'data:' && protocol !== 'blob:' && origin !== own) foreign.push(request.url());
    });
    const first = context.pages()[0] ?? (await context.newPage());
    await first.goto(inject('page'));
    await first.getByRole('button', { name: 'I have read this' }).click();
    await ready(first);
    await first.getByRole('button', { name: 'Set up' }).click();
    await first.getByRole('button', { name: /Fetch the recogniser/ }).click();
    await first.getByRole('button', { name: 'Start listening' }).waitFor({ timeout: 60_000 });
    await first.evaluate(() => navigator.serviceWorker.ready.then(() => true));
    await context.setOffline(true);
    const page = await context.newPage();
    await first.close();
    await page.goto(inject('page'));
    await ready(page);
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.getByText('Listening.', { exact: true }).waitFor();
    await page.locator('.panel-entries .entry').nth(4).waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await page.getByText('NOT HEARING').waitFor();
    await confirmAll(page);
    expect(await page.locator('.count').textContent()).toContain('Nothing is left to check.');
    await page.getByRole('button', { name: 'SOAP' }).click();
    const soap = page.locator('.written');
    await soap
      .getByText(/left forearm: swelling/i)
      .first()
      .waitFor();
    const text = (await soap.textContent()) ?? '';
    expect(text).toMatch(/120\/80/);
    expect(text).toMatch(/right knee: tenderness/i);
    expect(text).not.toMatch(/unconfirmed/i);
    expect(foreign).toEqual([]);
  },
);
