// Speech made on this machine by Debian's flite and sox, for a browser whose microphone plays a file. The talk is invented.

import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { inject } from 'vitest';

/** Seconds of stillness before the first line and after each. */
const PAUSE = 1.6;

/** A recording of the lines, 16 bits at 48 000 a second, as a microphone gives it. Throws where flite or sox is missing. */
export function speak(lines: readonly string[], voice = 'awb'): string {
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-spoken-'));
  const pause = join(folder, 'pause.wav');
  execFileSync('sox', ['-n', '-r', '16000', '-b', '16', '-c', '1', pause, 'trim', '0', String(PAUSE)]);
  const parts = lines.flatMap((line, index) => {
    const path = join(folder, `${index}.wav`);
    execFileSync('flite', ['-voice', voice, '-t', line, '-o', path]);
    return [path, pause];
  });
  const whole = join(folder, 'exam.wav');
  execFileSync('sox', [pause, ...parts, '-b', '16', '-r', '48000', whole]);
  return whole;
}

/** A browser with a profile of its own, whose microphone plays the recording once, from when it is first opened. */
export function browserHearing(recording: string, profile: string): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, {
    executablePath: inject('chromium'),
    headless: true,
    viewport: { width: 1440, height: 900 },
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-audio-capture=${recording}%noloop`,
    ],
  });
}
