// The browser is killed while talk arrives: what was shown as kept is there at the next start, and nothing is there twice.
// ROUNDS=100 npx vitest run --project browser tests/browser/kill.test.ts makes the long run.

import { execSync } from 'node:child_process';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { seeded } from '../seeded.ts';
import { createProfile, type Profile } from './profile.ts';
import { ready } from './visit.ts';

const ROUNDS = Number(process.env.ROUNDS ?? 8);

let profile: Profile | null = null;
afterEach(() => profile?.remove());

const lineOf = (number: number): string => `invented remark number ${number}, left wrist swelling`;

interface OnDisk {
  readonly id: string;
  readonly kind: string;
  readonly payload: {
    readonly text?: unknown;
    readonly utterance?: unknown;
    readonly statement?: { readonly kind: string; readonly text?: string };
  };
}

/** The remarks of the timeline on the screen, in order, by their numbers. */
const onScreen = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() =>
    [...(document.querySelector('.timeline')?.textContent ?? '').matchAll(/remark number (\d+)/g)]
      .map(([, number]) => Number(number))
      .toSorted((a, b) => a - b),
  );

/** Every event on the disk, decrypted apart from the page's own code, in the order of the log. */
const onDisk = (page: Page): Promise<readonly OnDisk[]> =>
  page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open('fieldsay'));
    const store = database.transaction('kept').objectStore('kept');
    const range = IDBKeyRange.bound(['row'], ['row', []]);
    const [vault, keys, values] = await Promise.all([
      answer(store.get(['vault'])),
      answer(store.getAllKeys(range)),
      answer(store.getAll(range)),
    ]);
    database.close();
    const open = (
      key: CryptoKey,
      iv: BufferSource,
      place: string,
      data: BufferSource,
    ): Promise<ArrayBuffer> => {
      const additionalData = new TextEncoder().encode(place);
      return crypto.subtle.decrypt({ name: 'AES-GCM', iv, additionalData }, key, data);
    };
    const { device, main, wrapped } = vault;
    const raw = await open(device, wrapped.iv, `fieldsay-key/1 ${main}`, wrapped.data);
    const key = await crypto.subtle.importKey('raw', raw, 'AES-GCM', false, ['decrypt']);
    return Promise.all(
      values.map(async ({ iv, data }, index) => {
        const text = new TextDecoder().decode(
          await open(key, iv, `fieldsay/1 ${JSON.stringify(keys[index])}`, data),
        );
        return JSON.parse(text).event as OnDisk;
      }),
    );
  });

/** The processes of this profile's browser and of no other. */
function kill(folder: string): void {
  const found = execSync(`pgrep -f -- ${folder} || true`, { encoding: 'utf8' })
    .split('\n')
    .map(Number)
    .filter((id) => id > 0 && id !== process.pid);
  for (const id of found)
    try {
      process.kill(id, 'SIGKILL');
    } catch {
      // It went with the ones before it.
    }
}

describe('a killed browser', () => {
  it(`loses nothing that was shown as kept, in ${ROUNDS} rounds`, {
    timeout: 60_000 + ROUNDS * 20_000,
  }, async () => {
    profile = createProfile();
    const random = seeded(4).next;
    let [shown, most, said, found] = [0, 0, 0, 0];
    for (let round = 0; round <= ROUNDS; round += 1) {
      const context = await profile.start();
      const page = context.pages()[0] ?? (await context.newPage());
      await page.goto(inject('page'));
      await ready(page);
      // A browser killed soon after forgets that the cautions were read, and shows them again over the page.
      const cautions = page.getByRole('button', { name: 'I have read this' });
      if ((await cautions.count()) > 0) await cautions.click();
      if (round > 0) await page.locator('.saved[data-said]').waitFor();
      found = round === 0 ? 0 : Number(await page.locator('.saved').getAttribute('data-said'));
      expect(found).toBeGreaterThanOrEqual(shown);
      expect(found).toBeLessThanOrEqual(said);
      expect(await page.locator('.notice.trouble').count()).toBe(0);
      most += found - shown;
      if (round === ROUNDS) {
        const events = await onDisk(page);
        expect(new Set(events.map(({ id }) => id)).size).toBe(events.length);
        const talk = events.flatMap(({ kind, payload }) =>
          kind === 'utterance' ? [String(payload.text)] : [],
        );
        // Each line that is there at all is there once, and none before the last is missing.
        const numbers = Array.from({ length: found }, (_, index) => index + 1);
        expect(talk).toEqual(numbers.map(lineOf));
        // What became of each line is on the disk with it, and on the screen.
        const remarks = events.flatMap(({ kind, payload }) =>
          kind === 'entered' && payload.statement?.kind === 'note' ? [payload.statement.text] : [],
        );
        expect(remarks).toEqual(numbers.map((number) => `invented remark number ${number}`));
        // Of a long timeline the earlier lines are drawn when they are asked for.
        const earlier = page.locator('.timeline').getByRole('button', { name: /earlier lines/ });
        while ((await earlier.count()) > 0) await earlier.click();
        expect(await onScreen(page)).toEqual(numbers);
        kill(profile.folder);
        break;
      }
      said = found;
      // Talk arrives without a pause until the browser is gone; each line has a number of its own.
      let running = true;
      shown = found;
      const field = page.getByLabel('What is said');
      const talk = async (): Promise<void> => {
        while (running) {
          said += 1;
          await field.fill(lineOf(said));
          await field.press('Enter');
        }
      };
      const watch = async (): Promise<void> => {
        while (running) {
          const seen = await page.evaluate(() =>
            Number(document.querySelector('.saved')?.getAttribute('data-said') ?? 0),
          );
          shown = Math.max(shown, seen);
        }
      };
      const ends = Promise.allSettled([talk(), watch()]);
      // However slow the machine: talk is arriving and being kept when the moment comes.
      for (let wait = 0; wait < 300 && shown === found; wait += 1)
        await new Promise((resolve) => setTimeout(resolve, 50));
      await new Promise((resolve) => setTimeout(resolve, random() * 1500));
      kill(profile.folder);
      running = false;
      await ends;
      await context.close().catch(() => undefined);
      // A round in which nothing was kept would show nothing.
      expect(shown).toBeGreaterThan(found);
    }
    console.log(
      `killed ${ROUNDS} times: ${found} utterances there at the end, ${shown} of them shown as kept, 0 missing, 0 twice; ${most} more were on the disk than the screen had said`,
    );
    expect(found).toBeGreaterThan(ROUNDS);
  });
});
