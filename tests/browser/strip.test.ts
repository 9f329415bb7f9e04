// Whether anything is heard is told on every panel of a phone, and takes no more room from the entries than its button needs.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { say, type VisitOptions } from './visit.ts';

const { arrive } = arrivals();
const PHONE: VisitOptions = { width: 360, height: 740 };

const strip = (page: Page): Promise<{ readonly height: number; readonly button: number }> =>
  page.evaluate(() => {
    const [box, button] = ['.ear', '.ear > .button'].map((one) => document.querySelector(one));
    const high = (one: Element | null | undefined) => Math.round(one?.getBoundingClientRect().height ?? 0);
    return { height: high(box), button: high(button) };
  });

/** A browser whose own recognition loses the microphone at once. Runs in the page. */
function withoutMicrophone(): void {
  class Deaf {
    onerror: ((event: unknown) => void) | null = null;
    onend: (() => void) | null = null;
    start() {
      setTimeout(() => {
        this.onerror?.({ error: 'audio-capture' });
        this.onend?.();
      }, 50);
    }
    stop() {}
    abort() {}
  }
  Object.assign(window, { SpeechRecognition: Deaf, webkitSpeechRecognition: Deaf });
}

describe('on a phone', () => {
  it('“not hearing” and why is as high as the button beside it, and the foot tells it too', async () => {
    const { page } = await arrive(PHONE);
    for (const line of ['left forearm swelling', 'no bleeding of the left forearm', 'pulse ninety two'])
      await say(page, line);
    await page.getByText('NOT HEARING').waitFor();
    await page.getByRole('button', { name: 'Set up' }).waitFor();
    const { height, button } = await strip(page);
    expect(button).toBeGreaterThanOrEqual(57);
    expect(height).toBeLessThanOrEqual(62);
    await page.getByRole('button', { name: 'Confirm: Pulse' }).waitFor();
    expect(await page.locator('.foot-way', { hasText: 'Exam' }).textContent()).toMatch(
      /^.?not listening, Exam/,
    );
  });

  it('that nothing is heard though it should be is told on the other panels too', async () => {
    const { page } = await arrive({ ...PHONE, before: withoutMicrophone });
    await page.getByRole('button', { name: 'Set up' }).click();
    await page.getByRole('button', { name: 'Turn dictation on' }).click();
    await page.locator('.ear-deaf').waitFor();
    expect(await page.locator('.standing .notice').count()).toBe(0);
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    await page.locator('.standing .notice', { hasText: /NOT HEARING|stopped/ }).waitFor();
    expect(await page.locator('.foot-way .sign-deaf').count()).toBe(1);
  });
});
