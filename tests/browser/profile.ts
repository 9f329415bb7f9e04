// A browser with a profile folder of its own, so that what lies on the disk can be looked at, and the browser killed.

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';
import { inject } from 'vitest';
import { ARGUMENTS } from './visit.ts';

export interface Profile {
  readonly folder: string;
  start(): Promise<BrowserContext>;
  /** every file of the profile that holds one of the words, as UTF-8 or UTF-16, and which */
  find(words: readonly string[]): readonly string[];
  remove(): void;
}

export function createProfile(): Profile {
  const hindrance = inject('hindrance');
  if (hindrance !== '') throw new Error(hindrance);
  const folder = mkdtempSync(join(tmpdir(), 'fieldsay-profile-'));
  return {
    folder,
    start: () =>
      chromium.launchPersistentContext(folder, {
        executablePath: inject('chromium'),
        headless: true,
        args: [...ARGUMENTS],
        viewport: { width: 1440, height: 900 },
      }),
    find: (words) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((one) => one.isFile())
        .flatMap((one) => {
          const path = join(one.parentPath, one.name);
          const bytes = readFileSync(path);
          return words
            .filter((word) => bytes.includes(word) || bytes.includes(Buffer.from(word, 'utf16le')))
            .map((word) => `${word} in ${path.slice(folder.length + 1)}`);
        }),
    remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }),
  };
}
