// The sound of what was said: kept beside its words, heard again with the ear deaf, and gone when it is meant to be gone.
// The microphone plays a recording made on this machine by a synthetic voice. All talk is invented.

import { cpSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterEach, beforeAll, describe, expect, inject, it, vi } from 'vitest';
import { browserHearing, speak } from './spoken.ts';
import { ready, say } from './visit.ts';

vi.setConfig({ testTimeout: 240_000 });

/** The second line is nothing that can be understood: its sound is wanted most of all. */
const EXAM = [
  'left forearm swelling',
  'my cousin sells antique typewriters in a harbour town',
  'tenderness of the right knee',
];

let recording: string;
let prepared: string;
const open: BrowserContext[] = [];
afterEach(() => Promise.all(open.splice(0).map((context) => context.close())));

async function start(profile: string): Promise<Page> {
  const context = await browserHearing(recording, profile);
  open.push(context);
  return context.pages()[0] ?? (await context.newPage());
}

beforeAll(async () => {
  const hindrance = inject('hindrance');
  if (hindrance !== '') throw new Error(hindrance);
  recording = speak(EXAM);
  prepared = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
  const page = await start(prepared);
  await page.goto(inject('page'));
  await page.getByRole('button', { name: 'I have read this' }).click();
  await ready(page);
  await page.getByRole('button', { name: 'Set up' }).click();
  await page.getByRole('button', { name: /Fetch the recogniser/ }).click();
  await page.getByRole('button', { name: 'Start listening' }).waitFor();
  await Promise.all(open.splice(0).map((context) => context.close()));
}, 180_000);

interface Watched {
  readonly played: { readonly seconds: number; readonly loud: number }[];
  readonly deaf: { readonly from: number; readonly to: number | null }[];
}

/** Notes what is played, and what the ear is told not to hear. */
function watch(): void {
  const watched: Watched = { played: [], deaf: [] };
  Object.assign(window, { watched });
  const begin = AudioBufferSourceNode.prototype.start;
  AudioBufferSourceNode.prototype.start = function start(this: AudioBufferSourceNode, ...when) {
    const sound = this.buffer?.getChannelData(0) ?? new Float32Array(0);
    const loud = Math.max(...Array.from({ length: 200 }, (_, at) => Math.abs(sound[at * 50] ?? 0)));
    watched.played.push({ seconds: this.buffer?.duration ?? 0, loud });
    begin.apply(this, when);
  };
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function postMessage(
    this: Worker,
    ...given: Parameters<Worker['postMessage']>
  ) {
    const [message] = given as [{ kind?: string; from: number; to: number | null }];
    if (message.kind === 'deaf') watched.deaf.push({ from: message.from, to: message.to });
    post.apply(this, given);
  } as Worker['postMessage'];
}

const watchedIn = (page: Page): Promise<Watched> =>
  page.evaluate(() => (window as unknown as { watched: Watched }).watched);

/** Which utterances' sound lies on the disk, in bytes. */
const clips = (page: Page): Promise<Readonly<Record<string, number>>> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.open('fieldsay');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const database = request.result;
          const found: Record<string, number> = {};
          const range = IDBKeyRange.bound(['clip'], ['clip', []]);
          const walk = database.transaction('kept').objectStore('kept').openCursor(range);
          walk.onsuccess = () => {
            const cursor = walk.result;
            if (cursor === null) {
              database.close();
              resolve(found);
              return;
            }
            found[String((cursor.key as IDBValidKey[])[2])] = (
              cursor.value as { data: Uint8Array }
            ).data.length;
            cursor.continue();
          };
        };
      }),
  );

async function heard(): Promise<Page> {
  const own = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
  cpSync(prepared, own, { recursive: true });
  const page = await start(own);
  await page.addInitScript(watch);
  await page.goto(inject('page'));
  await ready(page);
  await page.getByRole('button', { name: 'Listen', exact: true }).click();
  await page.locator('.said-words', { hasText: 'knee' }).waitFor({ timeout: 90_000 });
  return page;
}

/** In each list it stands beside the same entry. */
const hearAgain = (page: Page, what: RegExp) =>
  page.locator('.panel-talk').getByRole('button', { name: what }).first();

/** Presses it, again where the page says that its list had just moved, and waits until it has sounded to its end. */
async function play(page: Page, what: RegExp): Promise<void> {
  const stop = page.locator('.panel-talk').getByRole('button', { name: 'Stop the sound' });
  const moved = page.getByRole('status').filter({ hasText: 'Press again' });
  for (let presses = 1; ; presses += 1) {
    await hearAgain(page, what).click();
    await stop.first().or(moved).waitFor();
    if (!(await moved.isVisible())) break;
    if (presses === 5) throw new Error('five presses in a row were refused');
    await page.waitForTimeout(1000);
  }
  await stop.first().waitFor({ state: 'detached', timeout: 30_000 });
}

describe('what was said', () => {
  it('is kept as sound, refused speech too, and heard again beside its entry while the ear is deaf, also after a reload', async () => {
    const page = await heard();
    await hearAgain(page, /^Hear again: RIGHT knee/).waitFor();
    await play(page, /^Hear again: LEFT forearm/);
    await page.locator('html[data-kept="all"]').waitFor();
    const said = await page.locator('.said-one').count();
    const kept = await clips(page);
    // The room sounds a moment longer than the sound.
    await page.waitForFunction(() => (window as unknown as { watched: Watched }).watched.deaf.length > 1);
    // Every utterance has its sound, whatever became of it.
    expect(said).toBeGreaterThanOrEqual(3);
    expect(Object.keys(kept)).toHaveLength(said);
    const { played, deaf } = await watchedIn(page);
    expect(played).toHaveLength(1);
    const [{ seconds = 0, loud = 0 } = {}] = played;
    expect(seconds).toBeGreaterThan(0.8);
    expect(seconds).toBeLessThan(6);
    expect(loud).toBeGreaterThan(0.01);
    // Deaf from before the sound until after it has died away.
    const [begun, ended] = deaf;
    expect(begun?.to).toBeNull();
    expect(ended?.from).toBe(begun?.from);
    expect((ended?.to ?? 0) - (ended?.from ?? 0)).toBeGreaterThan(seconds * 1000);
    // Speech that was not understood can be heard as well.
    await play(page, /^Hear again: .*\[not understood/);
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await page.reload();
    await ready(page);
    await play(page, /^Hear again: LEFT forearm/);
    expect((await watchedIn(page)).played[0]?.seconds).toBeCloseTo(seconds, 2);
    // The last words are heard again when that is asked for in words.
    await say(page, 'hear that again');
    await page.waitForFunction(() => (window as unknown as { watched: Watched }).watched.played.length > 1);
    const bytes = Object.values(kept).reduce((sum, size) => sum + size, 0);
    console.log(`sound of ${said} utterances: ${bytes} bytes on the disk`);
  });

  it('loses its sound when the record is closed, unless the responder wants it kept; a wipe takes it all the same', async () => {
    const page = await heard();
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await hearAgain(page, /^Hear again: RIGHT knee/).waitFor();
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByLabel('Kept on this device').selectOption('kept');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    const before = await clips(page);
    const close = async () => {
      await page.getByRole('button', { name: 'Records' }).click();
      await page.locator('summary', { hasText: 'label, tag, place' }).click();
      await page.getByText(/Keep the sound of \d+ utterances \(\d+ kB\)/).waitFor();
      await page.getByRole('button', { name: 'Close this record' }).click();
      await page.getByText('no record yet', { exact: true }).waitFor();
    };
    await close();
    expect(await clips(page)).toEqual(before);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByLabel('Kept on this device').selectOption('until-closed');
    await page.getByRole('button', { name: 'Reopen' }).click();
    await hearAgain(page, /^Hear again: LEFT forearm/).waitFor();
    await close();
    expect(await clips(page)).toEqual({});
    // Heard again after it was opened anew, and wiped with its record.
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByRole('button', { name: 'Reopen' }).click();
    await page.locator('.panel-entries .entry').first().waitFor();
    expect(await page.locator('.hear-again').count()).toBe(0);
  });

  it('goes with its record when that is wiped', async () => {
    const page = await heard();
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await hearAgain(page, /^Hear again: RIGHT knee/).waitFor();
    await page.getByRole('button', { name: 'Records' }).click();
    const item = page.locator('.record');
    await item.getByRole('button', { name: 'Wipe …' }).click();
    await item.getByLabel('Type “wipe”').fill('wipe');
    await item.getByRole('button', { name: 'Wipe for good' }).click();
    await page.getByText('No record is kept yet.').waitFor();
    expect(await clips(page)).toEqual({});
  });

  it('is not kept as sound where the responder wants none, and typed words have none', async () => {
    const own = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
    cpSync(prepared, own, { recursive: true });
    const page = await start(own);
    await page.goto(inject('page'));
    await ready(page);
    await say(page, 'left ankle swelling');
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByText(/8\.1 kB a second, 29 MB for an hour of speech/).waitFor();
    await page.getByLabel('Kept on this device').selectOption('off');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.locator('.said-words', { hasText: 'knee' }).waitFor({ timeout: 90_000 });
    await page.locator('html[data-kept="all"]').waitFor();
    expect(await clips(page)).toEqual({});
    expect(await page.locator('.hear-again').count()).toBe(0);
  });

  it('is heard no more once the page is locked, and can be heard again once it is open', async () => {
    const own = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
    cpSync(prepared, own, { recursive: true });
    const page = await start(own);
    await page.addInitScript(watch);
    await page.addInitScript(() => {
      const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      const tracks: MediaStreamTrack[] = [];
      Object.assign(window, { tracks });
      navigator.mediaDevices.getUserMedia = async (wanted) => {
        const stream = await ask(wanted);
        tracks.push(...stream.getTracks());
        return stream;
      };
    });
    await page.goto(inject('page'));
    await ready(page);
    await page.getByRole('button', { name: 'Records' }).click();
    const form = page.locator('details', { hasText: 'Set a passphrase' });
    await form.locator('summary').click();
    await form.getByLabel('New passphrase').fill('seven marmots below the col');
    await form.getByLabel('The same again').fill('seven marmots below the col');
    await page.getByRole('button', { name: 'Set a passphrase' }).click();
    await page.getByRole('button', { name: 'Lock now' }).waitFor();
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.locator('.said-words', { hasText: 'forearm' }).waitFor({ timeout: 60_000 });
    await page.getByRole('button', { name: 'Lock', exact: true }).click();
    await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
    const states = () =>
      page.evaluate(() =>
        (window as unknown as { tracks: MediaStreamTrack[] }).tracks.map((one) => one.readyState),
      );
    expect(await states()).toEqual(['ended']);
    const before = await clips(page);
    expect(Object.keys(before).length).toBeGreaterThan(0);
    // The recording goes on; a locked page keeps and shows nothing of it.
    await page.waitForTimeout(6000);
    expect(await clips(page)).toEqual(before);
    expect(await page.evaluate(() => document.documentElement.outerHTML)).not.toMatch(
      /forearm|knee|swelling/i,
    );
    await page.getByLabel('Passphrase').fill('seven marmots below the col');
    await page.getByRole('button', { name: 'Unlock', exact: true }).click();
    await play(page, /^Hear again: LEFT forearm/);
    expect((await watchedIn(page)).played).toHaveLength(1);
  });
});
