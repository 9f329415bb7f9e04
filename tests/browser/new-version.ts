// Puts a new version of the page where it is served from, and lets a browser find it; the page itself decides when to offer it.

import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

/** The document says that it is new, and the worker knows of it; `version` tells one publishing from the next. */
export function publish(folder: string, version = 0): void {
  const [document, worker] = [join(folder, 'index.html'), join(folder, 'sw.js')];
  writeFileSync(
    document,
    readFileSync(document, 'utf8').replace(/<html (data-version="new" )?/, '<html data-version="new" '),
  );
  const text = readFileSync(worker, 'utf8');
  const changed = text.replace(
    /("?url"?:\s*"index\.html",\s*"?revision"?:\s*")[0-9a-f]{32}/,
    `$1${String(version).padStart(32, '0')}`,
  );
  if (changed === text) throw new Error('the worker does not name the document as it did');
  writeFileSync(worker, changed);
}

/** Lets the browser look for a new version, and waits until it is there and waits. */
export const lookForNewVersion = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (registration.waiting === null) await new Promise((done) => setTimeout(done, 50));
  });
