// A spoken examination in a real browser, from cold and in airplane mode: the microphone plays a recording made on this
// machine by a synthetic voice, which only stands in for a person. All talk is invented.

import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { replay } from '../replay/command.ts';
import { browserHearing, speak } from './spoken.ts';
import { befall, keepTrack } from './track.ts';
import { ready, say, sentences } from './visit.ts';

// The recording is played in real time, and a busy machine takes its own time; nothing here is about how long.
vi.setConfig({ testTimeout: 240_000 });
// A machine that is far too busy loses sound on its way from the microphone, as a real one would; what is lost cannot be
// heard, so such a run is done again.
const AGAIN = { retry: 2 };

const EXAM = [
  'left forearm swelling',
  'no deformity of the right wrist',
  'blood pressure one twenty over eighty',
  'pulse ninety two',
  'tenderness of the right knee',
];

let recording: string;
let prepared: string;
beforeAll(() => {
  const hindrance = inject('hindrance');
  if (hindrance !== '') throw new Error(hindrance);
  recording = speak(EXAM);
  prepared = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
});

const open: BrowserContext[] = [];
afterEach(() => Promise.all(open.splice(0).map((context) => context.close())));

/** A browser of its own: a new one, or one that has the recogniser stored and no record yet. */
async function arrive(from: 'new' | 'prepared'): Promise<{ context: BrowserContext; page: Page }> {
  const own = from === 'new' ? prepared : mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
  if (from === 'prepared') cpSync(prepared, own, { recursive: true });
  const context = await browserHearing(recording, own);
  open.push(context);
  return { context, page: context.pages()[0] ?? (await context.newPage()) };
}

/** The words of the entries that the command line makes of the same recording. */
let ofReplay: readonly string[] | null = null;
function replayed(): readonly string[] {
  ofReplay ??= heardByReplay();
  return ofReplay;
}

function heardByReplay(): readonly string[] {
  const { entries } = JSON.parse(replay(['--json', recording]).out) as { entries: { heard: string }[] };
  return entries.map(({ heard }) => heard);
}

describe('the recogniser', () => {
  it('is fetched once, when a person asks for it, from the page’s own address', async () => {
    const { context, page } = await arrive('new');
    const asked: string[] = [];
    context.on('request', (request) => asked.push(request.url()));
    await page.goto(inject('page'));
    await page.getByRole('button', { name: 'I have read this' }).click();
    await ready(page);
    await page.getByRole('button', { name: 'Set up' }).click();
    const fetch = page.getByRole('button', { name: /Fetch the recogniser/ });
    await fetch.waitFor();
    expect(asked.filter((url) => url.includes('/model/'))).toEqual([]);
    expect(await page.getByRole('button', { name: 'Listen', exact: true }).count()).toBe(0);
    await fetch.click();
    await page.getByRole('button', { name: 'Start listening' }).waitFor();
    await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('button', { name: 'Listen', exact: true }).waitFor();
    const fetched = asked.filter((url) => url.includes('/model/'));
    expect(fetched.length).toBeGreaterThan(5);
    expect(new Set(asked.map((url) => new URL(url).origin))).toEqual(
      new Set([new URL(inject('page')).origin]),
    );
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.reload();
    await ready(page);
    await page.getByRole('button', { name: 'Listen', exact: true }).waitFor();
    expect(asked.filter((url) => url.includes('/model/'))).toHaveLength(fetched.length);
  });

  it(
    'hears the examination from a cold start without a network, as replay hears the same recording',
    AGAIN,
    async () => {
      const { context, page } = await arrive('prepared');
      const complaints: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
      });
      page.on('pageerror', (error) => complaints.push(error.message));
      await context.setOffline(true);
      await page.goto(inject('page'));
      await ready(page);
      await page.getByRole('button', { name: 'Listen', exact: true }).click();
      await page.getByText('Listening.', { exact: true }).waitFor();
      await page.locator('.panel-entries .entry').nth(4).waitFor({ timeout: 60_000 });
      expect((await sentences(page)).toSorted()).toEqual([
        'Blood pressure 120/80',
        'LEFT forearm: swelling',
        'Pulse 92',
        'RIGHT knee: tenderness',
        'RIGHT wrist: deformity: NO',
      ]);
      expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(0);
      await page.getByRole('button', { name: 'Stop listening' }).click();
      expect(complaints).toEqual([]);
      const words = (await page.locator('.said-words').allInnerTexts()).map((line) =>
        line.replace(/^[^“]*/, ''),
      );
      expect(words.toReversed()).toEqual(replayed().map((heard) => `“${heard}”`));
    },
  );

  it('hears a recording that is opened, with its progress, as a record of its own', async () => {
    const { page } = await arrive('prepared');
    await page.goto(inject('page'));
    await ready(page);
    await page.getByLabel('Talk file or recording').setInputFiles(recording);
    await page.getByText(/^exam\.wav was heard and opened/).waitFor({ timeout: 120_000 });
    const words = (await page.locator('.said-words').allInnerTexts()).map((line) =>
      line.replace(/^[^“]*/, ''),
    );
    expect(words.toReversed()).toEqual(replayed().map((heard) => `“${heard}”`));
    await page.locator('html[data-kept="all"]').waitFor();
  });

  it('says of a file that is no recording what is wrong with it', async () => {
    const { page } = await arrive('prepared');
    await page.goto(inject('page'));
    await ready(page);
    await page
      .getByLabel('Talk file or recording')
      .setInputFiles({ name: 'song.wav', mimeType: 'audio/wav', buffer: Buffer.from('no sound at all') });
    await page.getByText('song.wav is no WAV recording').waitFor();
  });
});

describe('a microphone that is taken away', () => {
  /** Opens the page and listens; the words by which it says that it does. */
  const listenTo = async (page: Page) => {
    await page.goto(inject('page'));
    await ready(page);
    await say(page, 'left knee swelling');
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    const listening = page.getByText('Listening.', { exact: true });
    await listening.waitFor();
    return listening;
  };

  it('is said, comes back by itself, and the gaps stand in the timeline', async () => {
    const { page } = await arrive('prepared');
    await keepTrack(page);
    const listening = await listenTo(page);
    await befall(page, 'mute');
    await page.getByText(/NOT HEARING: another app or the device took the microphone/).waitFor();
    await befall(page, 'unmute');
    await listening.waitFor();
    // An end of which no event tells: sound goes on to come, and is all zeros.
    await page.evaluate(() => (window as unknown as { track: MediaStreamTrack }).track.stop());
    await page.getByText(/NOT HEARING: the microphone was unplugged or taken away/).waitFor();
    await listening.waitFor();
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await page.getByRole('button', { name: 'Report' }).click();
    const gaps = await page.locator('.timeline .moment.gap').allInnerTexts();
    expect(
      gaps.filter((line) => line.includes('another app or the device took the microphone')),
    ).toHaveLength(1);
  });

  /** Each gap of the timeline as its seconds and why. */
  const gapsOf = async (page: Page) =>
    (await page.locator('.timeline .moment.gap').allInnerTexts()).map((line) => {
      const [, seconds = '', why = ''] = /NOT LISTENING for (\d+) s, until \d\d:\d\d: (.*)/.exec(line) ?? [];
      return { seconds: Number(seconds), why };
    });

  it('for good and then there again, or with the page frozen by the device: each is a gap of its length in the log', async () => {
    const { context, page } = await arrive('prepared');
    await page.addInitScript(() => {
      const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      const plug = { isOut: false };
      Object.assign(window, { plug });
      navigator.mediaDevices.getUserMedia = async (wanted) => {
        if (plug.isOut) throw new DOMException('', 'NotFoundError');
        return ask(wanted);
      };
    });
    const unplugged = (is: boolean) =>
      page.evaluate((isOut) => {
        Object.assign((window as unknown as { plug: object }).plug, { isOut });
        navigator.mediaDevices.dispatchEvent(new Event('devicechange'));
      }, is);
    const listening = await listenTo(page);

    // What is no longer allowed ends in the browser itself, as what is pulled out does.
    await unplugged(true);
    const session = await context.newCDPSession(page);
    const { origin } = new URL(inject('page'));
    const lost = Date.now();
    await session.send('Browser.setPermission', {
      permission: { name: 'microphone' },
      setting: 'denied',
      origin,
    });
    await page.getByText(/NOT HEARING: (the microphone was unplugged|No microphone was found)/).waitFor();
    await page.waitForTimeout(1500);
    await unplugged(false);
    await listening.waitFor();
    const away = (Date.now() - lost) / 1000;
    await expect.poll(() => gapsOf(page)).toHaveLength(1);
    const [first] = await gapsOf(page);
    expect(first?.why).toBe('the microphone was unplugged or taken away');
    expect(first?.seconds).toBeGreaterThanOrEqual(1);
    expect(first?.seconds).toBeLessThanOrEqual(Math.ceil(away) + 1);

    // Stopped as a whole, with its worker and its sound, as a phone stops a page that it puts aside.
    const ofBrowser = await context.browser()?.newBrowserCDPSession();
    const { processInfo = [] } = (await ofBrowser?.send('SystemInfo.getProcessInfo')) ?? {};
    const renderers = processInfo.filter(({ type }) => type === 'renderer');
    for (const { id } of renderers) process.kill(id, 'SIGSTOP');
    await new Promise((done) => setTimeout(done, 3000));
    for (const { id } of renderers) process.kill(id, 'SIGCONT');
    await expect.poll(() => gapsOf(page)).toHaveLength(2);
    await listening.waitFor();
    const frozen = (await gapsOf(page)).at(-1);
    expect(frozen?.seconds).toBeGreaterThanOrEqual(2);
    expect(frozen?.why).toMatch(/no sound came from the microphone|the device paused the sound/);
  });
});
