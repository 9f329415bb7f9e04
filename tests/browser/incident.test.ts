// Twenty patients in one incident, and the turn said aloud: on a phone, where there is least room for it.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say, sentences } from './visit.ts';

const { arrive } = arrivals();

/** A voice that is on the device, and what it was asked to say. */
function withVoice(): void {
  const spoken: string[] = [];
  class Utterance {
    onend: (() => void) | null = null;
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }
  const voices = {
    getVoices: () => [{ localService: true, lang: 'en-GB', name: 'invented' }],
    speak: (one: Utterance) => {
      spoken.push(one.text);
      setTimeout(() => one.onend?.(), 20);
    },
    cancel: () => undefined,
    addEventListener: () => undefined,
  };
  Object.defineProperty(window, 'speechSynthesis', { value: voices });
  Object.assign(window, { SpeechSynthesisUtterance: Utterance, spoken });
}

const spoken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { spoken: string[] }).spoken);

const now = (page: Page, who: string) =>
  page.locator('.patient-now', { hasText: new RegExp(`${who}\\b`) }).waitFor();

describe('the turn to another patient', () => {
  it('is said aloud, by voice and by touch, with what the patient is called', async () => {
    const { page } = await arrive({ before: withVoice });
    await say(page, 'left forearm swelling');
    await say(page, 'patient two');
    await now(page, 'Patient 2');
    await say(page, 'patient name is Ada Quindelo');
    await page.locator('html[data-kept="all"]').waitFor();
    await page.getByRole('button', { name: 'Turn to Patient 1' }).click();
    await now(page, 'Patient 1');
    await page.getByRole('button', { name: 'Turn to Patient 2' }).click();
    await now(page, 'Ada Quindelo');
    expect(await spoken(page)).toEqual(['Now: Patient 2', 'Now: Patient 1', 'Now: Patient 2, Ada Quindelo']);
  });
});

describe('twenty patients', () => {
  it('of one incident each have a record; the one in mind stays in sight, and each is found again', {
    timeout: 180_000,
  }, async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await say(page, 'left forearm swelling');
    for (let patient = 2; patient <= 20; patient += 1) {
      await say(page, `patient ${patient}`);
      await now(page, `Patient ${patient}`);
      await say(page, `right knee swelling`);
    }
    await page.locator('html[data-kept="all"]').waitFor();
    const inSight = () =>
      page.evaluate(() => {
        const { left, right, top, bottom } =
          document.querySelector('.patient-now')?.getBoundingClientRect() ?? new DOMRect();
        const at = document.elementFromPoint(left + 20, (top + bottom) / 2);
        return { wide: right - left, isFree: at?.closest('.patient-now') !== null, end: right };
      });
    await page.locator('.notices .notice').waitFor({ state: 'detached' });
    const seen = await inSight();
    expect(seen.isFree).toBe(true);
    expect(seen.wide).toBeGreaterThan(90);
    expect(seen.end).toBeLessThanOrEqual(360);
    await page.reload();
    await ready(page);
    await now(page, 'Patient 20');
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('.record').nth(19).waitFor();
    expect(await page.locator('.incident').count()).toBe(1);
    expect(await page.locator('.record').count()).toBe(20);
    // What the browser answered to the asking that it keep the storage.
    await page.getByText(/The browser (promises|does not)/).waitFor();
    await page.getByLabel('Find by name, day or place').fill('patient 17');
    await page.getByText('1 of 20 records').waitFor();
    await page.locator('.record').getByRole('button', { name: 'Open' }).click();
    await now(page, 'Patient 17');
    await say(page, 'left ankle swelling');
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    await page.locator('.panel-entries .entry', { hasText: 'ankle' }).waitFor();
    expect((await sentences(page)).toSorted()).toEqual(['LEFT ankle: swelling', 'RIGHT knee: swelling']);
  });
});
