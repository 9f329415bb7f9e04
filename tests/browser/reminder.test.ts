// That vitals are due is said aloud where a person wants it, once, and never over the radio; the voice and the clock are fakes.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say } from './visit.ts';

const { arrive } = arrivals();

/** A voice on the device that says nothing and remembers what it was told to say; each sentence is over at once. */
const fakeVoice = (): void => {
  const said: string[] = [];
  const voice = { localService: true, lang: 'en-US', name: 'made up', default: true, voiceURI: 'made-up' };
  const utter = class {
    onend: (() => void) | null = null;
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  };
  Object.assign(window, { said, SpeechSynthesisUtterance: utter });
  Object.defineProperty(window, 'speechSynthesis', {
    value: {
      getVoices: () => [voice],
      cancel: () => undefined,
      speak: (one: InstanceType<typeof utter>) => {
        said.push(one.text);
        setTimeout(() => one.onend?.(), 10);
      },
    },
  });
};

const said = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { said: string[] }).said);

async function underWay(choice: 'On' | 'Off'): Promise<Page> {
  const { page } = await arrive({ before: fakeVoice });
  // The page's own clock must be there before its scripts are.
  await page.clock.install({ time: new Date() });
  await page.reload();
  await ready(page);
  await page.getByRole('button', { name: 'More', exact: true }).click();
  await page
    .getByRole('group', { name: 'Say aloud when vitals are due' })
    .getByRole('button', { name: choice })
    .click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
  await say(page, 'pulse one twelve');
  await say(page, 'blood pressure ninety over sixty');
  return page;
}

/** Lets time pass as it would, so that every tick of the page comes. */
const pass = (page: Page, minutes: number): Promise<void> => page.clock.runFor(minutes * 60_000);

describe('a reminder', () => {
  it('is said and shown once as the set falls due, and again while nobody takes one', async () => {
    const page = await underWay('On');
    await pass(page, 4);
    expect(await said(page)).toEqual([]);
    await pass(page, 1.5);
    expect(await said(page)).toEqual(['Vitals are due. Last taken 5 minutes ago: pulse, blood pressure.']);
    await page.getByText('Vitals are due. Last taken 5 minutes ago').first().waitFor();
    await pass(page, 4);
    expect(await said(page)).toHaveLength(1);
    await pass(page, 1.5);
    expect(await said(page)).toHaveLength(2);
  });

  it('waits until a set is taken anew', async () => {
    const page = await underWay('On');
    await pass(page, 4);
    await say(page, 'pulse one twenty');
    await pass(page, 4);
    expect(await said(page)).toEqual([]);
    await pass(page, 1.5);
    expect(await said(page)).toEqual([expect.stringMatching(/^Vitals are due\. Last taken 5 minutes ago: /)]);
  });

  it('is held while a report is read over the radio', async () => {
    const page = await underWay('On');
    await page.getByRole('button', { name: 'Read over the radio' }).click();
    await page.getByRole('dialog', { name: 'Over the radio' }).waitFor();
    await pass(page, 6);
    expect(await said(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
    // A busy machine takes its time to close it, and until then it is rightly held.
    await page.getByRole('dialog', { name: 'Over the radio' }).waitFor({ state: 'detached' });
    await pass(page, 0.5);
    expect(await said(page)).toHaveLength(1);
  });

  it('is only shown where nobody wants to hear it', async () => {
    const page = await underWay('Off');
    await pass(page, 6);
    expect(await said(page)).toEqual([]);
    await page.locator('.foot-way', { hasText: 'Signs' }).click();
    await page.locator('.reminder.due', { hasText: 'Vitals are due' }).waitFor();
  });
});
