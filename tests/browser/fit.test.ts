// The page fits the hand and the screen: nothing sideways, large targets, and everything by keyboard.

import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { playAll, say, sentences, startBrowser, visit } from './visit.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser?.close());

const SIZES = [
  ['a phone', 360, 740],
  ['a tablet', 820, 1180],
  ['a desk', 1440, 900],
] as const;

describe.each(SIZES)('on %s', (_name, width, height) => {
  it('no panel is wider than the window', async () => {
    const { page, complaints, leave } = await visit(browser, { width, height });
    await playAll(page, 'Fall on wet rock');
    for (const way of await page.locator('.foot-way').all()) {
      await way.click();
      const wide = await page.evaluate(() =>
        [document.documentElement, ...document.querySelectorAll('.panel:not([hidden])')]
          .filter((box) => box.scrollWidth > box.clientWidth)
          .map((box) => box.className),
      );
      expect(wide).toEqual([]);
    }
    expect(complaints).toEqual([]);
    await leave();
  });

  it('primary actions are at least 76 px high and wide (20 mm), and every other button 57 (15 mm)', async () => {
    const { page, leave } = await visit(browser, { width, height });
    await say(page, 'left forearm laceration three centimeters');
    await page.locator('.foot-way').last().click();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button')]
        .filter((button) => button.offsetParent !== null)
        .filter((button) => {
          const { width: wide, height: high } = button.getBoundingClientRect();
          const least = button.matches('.primary, .entry-confirm') ? 76 : 57;
          return high < least || wide < least;
        })
        .map((button) => button.textContent),
    );
    expect(small).toEqual([]);
    await leave();
  });
});

describe('the scripts', () => {
  it('that come before the page can be used weigh at most 90 kB as they are sent', async () => {
    const { page, leave } = await visit(browser);
    // What the document itself asks for as it is sent: the first script, and what that imports before it runs.
    const html = await (await page.request.get(page.url())).text();
    const asked = /<(?:script|link)\b[^>]*\b(?:src|href)="([^"]+\.js)"/g;
    const first = [...html.matchAll(asked)].map(([, src = '']) => new URL(src, page.url()).href);
    const texts = await Promise.all(first.map(async (src) => (await page.request.get(src)).body()));
    expect(first.length).toBeGreaterThan(1);
    expect(texts.reduce((sum, text) => sum + gzipSync(text).length, 0)).toBeLessThanOrEqual(90_000);
    await leave();
  });
});

describe('what is slow in a browser', () => {
  it('is not asked for before the page stands: its time zone, which took a third of that time', async () => {
    const { page, leave } = await visit(browser, {
      before: () => {
        const asked: string[] = [];
        const plain = Intl.DateTimeFormat;
        const noted = new Proxy(plain, {
          apply: (target, self, given) => {
            asked.push(document.getElementById('talk-line') === null ? 'before' : 'after');
            return Reflect.apply(target, self, given);
          },
          construct: (target, given) => {
            asked.push(document.getElementById('talk-line') === null ? 'before' : 'after');
            return Reflect.construct(target, given);
          },
        });
        Object.assign(Intl, { DateTimeFormat: noted });
        Object.assign(window, { asked });
      },
    });
    const asked = await page.evaluate(() => (window as unknown as { asked: readonly string[] }).asked);
    expect(asked).toContain('after');
    expect(asked).not.toContain('before');
    await leave();
  });
});

describe('with the keyboard alone', () => {
  it('talk is said, an entry opened, confirmed, and the focus comes back', async () => {
    const { page, leave } = await visit(browser);
    await page.getByLabel('What is said').focus();
    await page.keyboard.type('left forearm swelling');
    await page.keyboard.press('Enter');
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
    const row = page
      .locator('.panel-entries')
      .getByRole('button', { name: /^Change or strike: LEFT forearm/ });
    await row.focus();
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => row.evaluate((button) => button === document.activeElement)).toBe(true);
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(1);
    await leave();
  });
});

describe('dictation', () => {
  it('is off until a person turns it on after being told where the sound may go, and then says what it hears', async () => {
    const { page, leave } = await visit(browser, {
      before: () => {
        class Fake {
          onresult: ((event: unknown) => void) | null = null;
          onend: (() => void) | null = null;
          start() {
            const result = Object.assign([{ transcript: 'left knee swelling', confidence: 0.8 }], {
              isFinal: true,
            });
            setTimeout(() => this.onresult?.({ resultIndex: 0, results: [result] }), 50);
          }
          stop() {}
          abort() {}
        }
        Object.assign(window, { SpeechRecognition: Fake, webkitSpeechRecognition: Fake });
      },
    });
    await page.getByRole('button', { name: 'Set up' }).click();
    expect(await page.locator('.consent').textContent()).toContain('may send the sound');
    expect(await page.locator('.panel-entries .entry').count()).toBe(0);
    await page.getByRole('button', { name: 'Turn dictation on' }).click();
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['LEFT knee: swelling']);
    await page.getByRole('button', { name: 'Stop listening' }).click();
    await page.getByText('NOT HEARING').waitFor();
    await leave();
  });
});
