// The database as a stranger, another version or the browser itself may leave it: what happened is said, and nothing is lost.

import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say, sentences } from './visit.ts';

const { arrive } = arrivals();

const kept = (page: Page, said: number) => page.locator(`.saved[data-said="${said}"]`).waitFor();

/** Takes a copy of all rows, or puts that copy in the place of what is there, or removes the records. */
const database = (page: Page, work: 'copy' | 'put-back' | 'remove'): Promise<void> =>
  page.evaluate(
    (what) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('fieldsay');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const transaction = request.result.transaction('kept', 'readwrite');
          const store = transaction.objectStore('kept');
          const held = window as unknown as { copy: [IDBValidKey, unknown][] };
          if (what === 'copy') held.copy = [];
          if (what === 'put-back') {
            store.clear();
            for (const [key, value] of held.copy) store.put(value, key);
          } else
            store.openCursor().onsuccess = ({ target }) => {
              const cursor = (target as IDBRequest<IDBCursorWithValue | null>).result;
              if (cursor === null) return;
              const [kind] = cursor.key as string[];
              if (what === 'copy') held.copy.push([cursor.key, cursor.value]);
              else if (kind === 'row' || kind === 'head') cursor.delete();
              cursor.continue();
            };
          transaction.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    work,
  );

/** A page of the same origin that runs none of the program, so that it can hold and fill the database as it likes. */
async function bare(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(new URL('icons/fieldsay.svg', inject('page')).href);
  return other;
}

describe('a log that was put back to an older whole copy of itself', () => {
  it('is said to be so at every opening, by what another storage remembers; what is there is shown', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await kept(page, 1);
    await database(page, 'copy');
    await say(page, 'right knee swelling');
    await kept(page, 2);
    await database(page, 'put-back');
    await page.reload();
    await ready(page);
    const notice = page.getByText(/this log had come to event 5 on this device and is now other or shorter/);
    await notice.waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    // Going on does not make it forgotten, though the log grows past where it was.
    for (const line of ['left ankle swelling', 'left wrist swelling']) await say(page, line);
    await kept(page, 3);
    await page.reload();
    await ready(page);
    await notice.waitFor();
    expect(await sentences(page)).toHaveLength(3);
  });

  it('is not said of one that only grew', async () => {
    const { page } = await arrive();
    for (const [index, line] of ['left forearm swelling', 'right knee swelling'].entries()) {
      await say(page, line);
      await kept(page, index + 1);
      await page.reload();
      await ready(page);
    }
    await kept(page, 2);
    expect(await page.locator('.notice.trouble').count()).toBe(0);
  });

  it('can be held against a printed fingerprint', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await kept(page, 1);
    const printed = await page.evaluate(() => {
      const name = Object.keys(localStorage).find((one) => one.startsWith('fieldsay-end-')) ?? '';
      return (localStorage.getItem(name) ?? '').split(' ')[1]?.slice(0, 12) ?? '';
    });
    await say(page, 'right knee swelling');
    await kept(page, 2);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('summary', { hasText: 'fingerprint' }).click();
    const check = async (digits: string) => {
      await page.getByLabel('SHA-256 at the foot').fill(digits);
      await page.getByRole('button', { name: 'Check it' }).click();
    };
    await check(printed);
    await page.getByText('Event 3 has this fingerprint').waitFor();
    await page.getByText('2 events came after it.').waitFor();
    await check('0123456789ab');
    await page.getByText('No event of this record has this fingerprint').waitFor();
    await check('abc');
    await page.getByText('Type at least 8').waitFor();
  });
});

describe('a record that something else than this page removed', () => {
  it('is named as gone until that is put away', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await kept(page, 1);
    await database(page, 'remove');
    await page.reload();
    await ready(page);
    await page.getByRole('button', { name: 'Records' }).click();
    await page.getByText('A record was kept on this device and is not here any more').waitFor();
    await page.getByRole('button', { name: 'Put away' }).click();
    await page.getByText('No record is kept yet.').waitFor();
  });

  it('is not so named where this page wiped it', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await kept(page, 1);
    await page.getByRole('button', { name: 'Records' }).click();
    const item = page.locator('.record');
    await item.getByRole('button', { name: 'Wipe …' }).click();
    await item.getByLabel('Type “wipe”').fill('wipe');
    await item.getByRole('button', { name: 'Wipe for good' }).click();
    await page.getByText('No record is kept yet.').waitFor();
    expect(
      await page.evaluate(() => Object.keys(localStorage).filter((one) => one.startsWith('fieldsay-end-'))),
    ).toEqual([]);
  });
});

describe('a browser that gives no storage', () => {
  it('is said to do so; talk is taken all the same, and is said to be not kept', async () => {
    const { page } = await arrive({
      before: () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('invented', 'SecurityError');
        };
      },
    });
    await say(page, 'left forearm swelling');
    await page.getByText(/NOT KEPT on this device: .*gives the page no storage/).waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    await say(page, 'right knee swelling');
    await page.locator('.panel-entries .entry', { hasText: 'knee' }).waitFor();
  });
});

describe('the database of another version', () => {
  it('that an older page holds open is said to be so, and what was said is kept once it lets go', {
    timeout: 120_000,
  }, async () => {
    const { page } = await arrive();
    const older = await bare(page);
    await page.goto('about:blank');
    // The older version does not know that it must let go when a newer one asks.
    await older.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const gone = indexedDB.deleteDatabase('fieldsay');
          gone.onerror = () => reject(gone.error);
          gone.onsuccess = () => {
            const request = indexedDB.open('fieldsay', 1);
            request.onupgradeneeded = () => request.result.createObjectStore('kept');
            request.onsuccess = () => {
              Object.assign(window, { holds: request.result });
              resolve();
            };
          };
        }),
    );
    await page.goto(inject('page'));
    await ready(page);
    await say(page, 'left forearm swelling');
    await page.getByText('an older version of this page is open elsewhere and holds the storage').waitFor();
    expect(await page.locator('.saved.not').count()).toBe(1);
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    await older.evaluate(() => (window as unknown as { holds: IDBDatabase }).holds.close());
    await kept(page, 1);
    await page.reload();
    await ready(page);
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
  });

  it('that is later than this page is said to be so, and is left alone', async () => {
    const { page } = await arrive();
    const later = await bare(page);
    await page.goto('about:blank');
    const versionOf = (version?: number) =>
      later.evaluate(
        (asked) =>
          new Promise<number>((resolve, reject) => {
            const request = indexedDB.open('fieldsay', asked);
            request.onerror = () => reject(request.error);
            request.onsuccess = () => {
              resolve(request.result.version);
              request.result.close();
            };
          }),
        version,
      );
    await versionOf(9);
    await page.goto(inject('page'));
    await ready(page);
    await say(page, 'left forearm swelling');
    await page.getByText('the storage was made by a later version of this page').waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    expect(await versionOf()).toBe(9);
  });

  it('that kept its rows in the open is taken over: shown whole, and nothing left to be read', async () => {
    const { page } = await arrive();
    const older = await bare(page);
    await page.goto('about:blank');
    const { rows } = JSON.parse(
      readFileSync(new URL('../record/samples/open-rows.json', import.meta.url), 'utf8'),
    ) as { rows: { key: unknown; value: unknown }[] };
    await older.evaluate(
      (filled) =>
        new Promise<void>((resolve, reject) => {
          const gone = indexedDB.deleteDatabase('fieldsay');
          gone.onerror = () => reject(gone.error);
          gone.onsuccess = () => {
            const request = indexedDB.open('fieldsay', 1);
            request.onupgradeneeded = () => request.result.createObjectStore('kept');
            request.onsuccess = () => {
              const transaction = request.result.transaction('kept', 'readwrite');
              for (const { key, value } of filled)
                transaction.objectStore('kept').put(value, key as IDBValidKey);
              transaction.oncomplete = () => {
                request.result.close();
                resolve();
              };
            };
          };
        }),
      rows,
    );
    await page.goto(inject('page'));
    await ready(page);
    expect(await sentences(page)).toContain('LEFT forearm: swelling');
    await page.locator('.patient-now', { hasText: 'Orla Quindelo' }).waitFor();
    expect(await page.locator('.notice.trouble').count()).toBe(0);
    await say(page, 'left ankle swelling');
    await kept(page, 9);
    const open = await older.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const request = indexedDB.open('fieldsay');
          request.onsuccess = () => {
            const all = request.result.transaction('kept').objectStore('kept').getAll();
            all.onsuccess = () => {
              resolve(JSON.stringify(all.result));
              request.result.close();
            };
          };
        }),
    );
    expect(open).toContain('wrapped');
    expect(open).not.toMatch(/Quindelo|swelling|heardAt/);
  });
});
