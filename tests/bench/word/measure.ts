// The way of a word through the built page in Chromium: from the end of speech, and from Enter, to what is drawn; and memory.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { build, preview } from 'vite';
import { beganAt, powerOf, type Stamped } from './align.ts';
import { NOTES_WORDS } from './in-page.ts';

interface Noted {
  readonly levels: readonly Stamped[];
  readonly words: readonly { readonly at: number; readonly words: string }[];
  readonly said: readonly { readonly at: number; readonly words: string }[];
  readonly entries: readonly { readonly at: number; readonly words: string }[];
  readonly enters: readonly number[];
}

export interface Measured {
  /** ms from the end of speech until the words stood as they stayed, one for each sentence */
  readonly words: readonly number[];
  /** and until the entry was drawn */
  readonly entry: readonly number[];
  /** sentences that gave no time: not heard, or their sound did not arrive whole */
  readonly left: number;
  /** ms from Enter until the entry was drawn */
  readonly typed: readonly number[];
  /** bytes of page and workers by the browser's own account, while listening; null where it gives none */
  readonly memory: number | null;
}

const RATE = 16_000;
/** Stillness between the sentences, seconds: longer than any wait that is measured. */
const PAUSE = 2.5;
/** Speech is over where the voice stays under this share of its highest value. */
const OVER = 0.02;

/** One spoken sentence: where in the file it begins and where its voice ends, ms. */
interface Place {
  readonly from: number;
  readonly to: number;
}

const pcm = (path: string): Float32Array => {
  const words = [path, '-t', 'raw', '-e', 'signed', '-b', '16', '-r', `${RATE}`, '-c', '1', '-'];
  const bytes = execFileSync('sox', words, { maxBuffer: 2 ** 28 });
  return Float32Array.from(
    new Int16Array(bytes.buffer, bytes.byteOffset, bytes.length >> 1),
    (v) => v / 32_768,
  );
};

/** Speaks the sentences into one file, and says where each is in it. */
function speak(
  folder: string,
  sentences: readonly string[],
  voice: string,
): { file: string; places: Place[] } {
  const pause = join(folder, 'pause.wav');
  execFileSync('sox', ['-n', '-r', `${RATE}`, '-b', '16', '-c', '1', pause, 'trim', '0', `${PAUSE}`]);
  let at = PAUSE * 1000;
  const places: Place[] = [];
  const parts = sentences.flatMap((sentence, index) => {
    const path = join(folder, `${index}.wav`);
    execFileSync('flite', ['-voice', voice, '-t', sentence, '-o', path]);
    const samples = pcm(path);
    const highest = samples.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const last = samples.findLastIndex((value) => Math.abs(value) > OVER * highest);
    places.push({ from: at, to: at + (last / RATE) * 1000 });
    at += (samples.length / RATE + PAUSE) * 1000;
    return [path, pause];
  });
  const file = join(folder, 'said.wav');
  execFileSync('sox', [pause, ...parts, '-b', '16', '-r', '48000', file]);
  return { file, places };
}

const plain = (text: string): string => (/“(.*?)(?: …)?”/.exec(text)?.[1] ?? '').trim();

/** The first moment from which on the words shown were those that stayed. */
function stood({ words }: Noted, until: number, final: string, since: number): number {
  let from: number | null = null;
  for (const one of words) {
    if (one.at < since || one.at > until) continue;
    from = plain(one.words) === final ? (from ?? one.at) : one.words === '' ? from : null;
  }
  return from ?? until;
}

async function prepared(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('button', { name: 'I have read this' }).click();
  await page.locator('html[data-reader="there"]').waitFor();
  await page.getByRole('button', { name: 'Set up' }).click();
  await page.getByRole('button', { name: /Fetch the recogniser/ }).click();
  await page.getByRole('button', { name: 'Start listening' }).waitFor({ timeout: 120_000 });
}

async function memoryOf(page: Page): Promise<number | null> {
  const asked = page
    .evaluate<number | null>(
      '("measureUserAgentSpecificMemory" in performance) ? performance.measureUserAgentSpecificMemory().then(({ bytes }) => bytes) : null',
    )
    .catch(() => null);
  const late = new Promise<null>((resolve) => setTimeout(() => resolve(null), 60_000).unref());
  return Promise.race([asked, late]);
}

/** Speaks and types the sentences to the built page. Throws where Chromium, flite or sox is missing. */
export async function measureWords(
  sentences: readonly string[],
  typed: readonly string[],
  voice = 'awb',
): Promise<Measured> {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-word-'));
  const outDir = join(folder, 'built');
  const { file, places } = speak(folder, sentences, voice);
  await build({ logLevel: 'error', build: { outDir, emptyOutDir: true } });
  // The browser tells a page's memory only where nothing foreign can be within it.
  const headers = {
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Embedder-Policy': 'require-corp',
  };
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { host: 'localhost', port: 0, strictPort: false, open: false, headers },
  });
  const context = await chromium.launchPersistentContext(join(folder, 'profile'), {
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    headless: true,
    viewport: { width: 1440, height: 900 },
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--no-first-run',
      '--enable-blink-features=ForceEagerMeasureMemory',
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-audio-capture=${file}%noloop`,
    ],
  });
  try {
    const page = await context.newPage();
    await page.addInitScript(NOTES_WORDS);
    await prepared(page, server.resolvedUrls?.local[0] ?? '');
    await page.getByRole('button', { name: 'Start listening' }).click();
    await page.getByText('Listening.', { exact: true }).waitFor({ timeout: 60_000 });
    const last = places.at(-1)?.to ?? 0;
    await page.waitForTimeout(last / 2);
    const memory = await memoryOf(page);
    await page.waitForTimeout(last / 2 + 4000);
    const heard = await page.evaluate<Noted>('noted');
    await page.getByRole('button', { name: 'Stop listening' }).click();
    for (const line of typed) {
      await page.getByLabel('What is said').fill(line);
      await page.getByLabel('What is said').press('Enter');
      await page.waitForTimeout(700);
    }
    const { enters, entries } = await page.evaluate<Noted>('noted');
    const times = timesOf(heard, { file, places });
    return {
      ...times,
      left: sentences.length - times.entry.length,
      typed: enters.flatMap((at, index) => {
        const until = enters[index + 1] ?? Number.POSITIVE_INFINITY;
        const drawn = entries.find((one) => one.at >= at && one.at < until);
        return drawn === undefined ? [] : [drawn.at - at];
      }),
      memory,
    };
  } finally {
    await context.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

function timesOf(
  noted: Noted,
  { file, places }: { readonly file: string; readonly places: readonly Place[] },
): Pick<Measured, 'words' | 'entry'> {
  const sound = { sums: powerOf(pcm(file)), rate: RATE };
  const [first] = noted.levels;
  const times: { words: number; entry: number }[] = [];
  // The file began with the first sound, give or take; each sentence tells the place anew, within what a busy machine shifts it.
  let guess = first?.from ?? 0;
  for (const place of places) {
    const began = beganAt(noted.levels, sound, place, guess, 1500);
    if (began === null) continue;
    guess = began;
    const end = began + place.to;
    const isSoon = ({ at }: { readonly at: number }) => at > began + place.from && at < end + PAUSE * 1000;
    const [drawn, said] = [noted.entries.find(isSoon), noted.said.find(isSoon)];
    if (drawn === undefined || said === undefined) continue;
    const words = stood(noted, said.at, plain(said.words), began + place.from) - end;
    times.push({ words, entry: drawn.at - end });
  }
  return { words: times.map(({ words }) => words), entry: times.map(({ entry }) => entry) };
}
