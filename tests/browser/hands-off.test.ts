// An examination without a hand on the page: each word does what it says it does, and a voice on the device says back what it
// should and no more. The voice is a stand-in that notes what it was given; all talk is invented.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say } from './visit.ts';

const { arrive } = arrivals();

/** A voice on the device that speaks in no time; what it said stands in `window.said`. Runs in the page. */
function withVoice(): void {
  const said: string[] = [];
  class Utterance {
    onend: (() => void) | null = null;
    readonly text: string;
    constructor(text: string) {
      this.text = text;
    }
  }
  const voices = {
    getVoices: () => [{ name: 'Stand-in', lang: 'en-GB', localService: true }],
    speak: (one: Utterance) => {
      said.push(one.text);
      setTimeout(() => one.onend?.());
    },
    cancel: () => undefined,
    addEventListener: () => undefined,
  };
  Object.defineProperty(window, 'speechSynthesis', { value: voices, configurable: true });
  Object.assign(window, { SpeechSynthesisUtterance: Utterance, said });
}

const spoken = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => [...(window as unknown as { said: readonly string[] }).said]);

/** Waits until the voice was given so many sentences, and gives them. */
async function spokenAll(page: Page, many: number): Promise<readonly string[]> {
  await page.waitForFunction(
    (least) => (window as unknown as { said: readonly string[] }).said.length >= least,
    many,
  );
  return spoken(page);
}

const visit = () => arrive({ before: withVoice });
const entry = (page: Page, state: string, text: string) =>
  page.locator(`.panel-entries .entry.${state}`, { hasText: text });

describe('by voice alone', () => {
  it('an entry is corrected, struck, taken back and confirmed', async () => {
    const { page } = await visit();
    await say(page, 'left forearm swelling');
    await entry(page, 'heard', 'LEFT forearm: swelling').waitFor();
    await say(page, 'correction, right forearm');
    await entry(page, 'heard', 'RIGHT forearm: swelling').waitFor();
    await say(page, 'disregard that');
    await page.getByText(/replaced or struck/).waitFor();
    await entry(page, 'heard', 'RIGHT forearm: swelling').waitFor({ state: 'detached' });
    await say(page, 'restore that');
    await entry(page, 'heard', 'RIGHT forearm: swelling').waitFor();
    await say(page, 'confirm');
    await entry(page, 'confirmed', 'RIGHT forearm: swelling').waitFor();
  });

  it('what is easily misheard is confirmed one by one, and what waits is named until something else is said', async () => {
    const { page } = await visit();
    await say(page, 'left forearm swelling, no bleeding');
    await say(page, 'confirm');
    await entry(page, 'confirmed', 'LEFT forearm: swelling').waitFor();
    const next = page.getByText('To confirm next: left forearm, bleeding: no.');
    await next.waitFor();
    expect(await spokenAll(page, 1)).toEqual(['To confirm next: left forearm, bleeding: no.']);
    await say(page, 'pulse ninety two');
    await entry(page, 'heard', 'Pulse 92').waitFor();
    await next.waitFor({ state: 'detached' });
    await say(page, 'is that confirmed');
    await page.getByText('Nothing was confirmed: say “confirm” by itself.').waitFor();
    await entry(page, 'heard', 'Pulse 92').waitFor();
    await entry(page, 'heard', 'LEFT forearm: bleeding').waitFor();
  });

  it('entries are said back in short, or not at all', async () => {
    const { page } = await visit();
    await say(page, 'left knee swelling');
    await entry(page, 'heard', 'LEFT knee').waitFor();
    expect(await spoken(page)).toEqual([]);
    await say(page, 'short echo');
    await say(page, 'right wrist deformity');
    expect(await spokenAll(page, 1)).toEqual(['right wrist, deformity.']);
    await say(page, 'echo off');
    await say(page, 'left ankle swelling');
    await entry(page, 'heard', 'LEFT ankle').waitFor();
    expect((await spoken(page)).length).toBe(1);
  });

  it('entries are said back in full: what was not spoken, what is asked, what was confirmed', async () => {
    const { page } = await visit();
    await say(page, 'full echo');
    await say(page, 'left forearm swelling');
    expect((await spokenAll(page, 1))[0]).toBe('left forearm, swelling.');
    // The place is carried over and no side is named: both are said, and nothing in capitals that would be spelt out.
    await say(page, 'laceration three cm');
    expect((await spokenAll(page, 2))[1]).toMatch(/^left forearm, laceration 3 centimetres, .*carried/);
    await say(page, 'knee deformity');
    expect((await spokenAll(page, 3))[2]).toMatch(/^side not said knee, deformity/);
    await say(page, 'blood pressure one twenty over eighty');
    expect((await spokenAll(page, 4))[3]).toBe('Blood pressure 120 over 80.');
    await say(page, 'confirm');
    expect((await spokenAll(page, 5))[4]).toBe('confirmed: Blood pressure 120 over 80.');
    await say(page, 'short echo');
    await say(page, 'right wrist swelling');
    expect((await spokenAll(page, 6)).at(-1)).toBe('right wrist, swelling.');
  });

  it('the full echo is chosen by hand too, and stays over a reload', async () => {
    const { page } = await visit();
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('group', { name: 'Say back what was entered' }).getByText('Full').click();
    await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
    await page.reload();
    await ready(page);
    await say(page, 'left forearm swelling');
    await say(page, 'deformity');
    expect((await spokenAll(page, 2))[1]).toMatch(/^left forearm, deformity, .*carried/);
  });

  it('it reads back, says again, tells what is left, and keeps silent while it stands by', async () => {
    const { page } = await visit();
    await say(page, 'left knee swelling');
    await say(page, 'read back');
    const [back] = await spokenAll(page, 1);
    expect(back).toMatch(/^left knee, swelling/);
    await say(page, 'say again');
    expect((await spokenAll(page, 2))[1]).toBe(back);
    await say(page, "what's left");
    expect((await spokenAll(page, 3))[2]).toMatch(/not/i);
    await page.locator('.panel-body:not([hidden])').waitFor();
    await say(page, 'short echo');
    await say(page, 'stand by');
    await page.getByText('Standing by').waitFor();
    await say(page, 'right knee swelling');
    await entry(page, 'heard', 'RIGHT knee').waitFor();
    expect((await spoken(page)).length).toBe(3);
    await say(page, 'go ahead');
    await say(page, 'right ankle swelling');
    expect((await spokenAll(page, 4))[3]).toBe('right ankle, swelling.');
  });

  it('“what can I say” is shown and said', async () => {
    const { page } = await visit();
    await say(page, 'what can I say');
    await page.getByRole('dialog', { name: 'What can I say?' }).waitFor();
    expect((await spokenAll(page, 1))[0]).toMatch(/^You can say: confirm/);
  });
});

describe('a question between entries', () => {
  const question = (page: Page, text: string) => page.locator('.question.block', { hasText: text });

  it('is settled by a word only where it was read aloud or stands alone; one of several never is', async () => {
    const { page } = await visit();
    await say(page, 'left forearm swelling');
    await say(page, 'no swelling of the left forearm');
    await question(page, 'left forearm').waitFor();
    await say(page, 'right knee deformity');
    await say(page, 'no deformity of the right knee');
    await question(page, 'right knee').waitFor();
    await say(page, 'it holds');
    expect((await spokenAll(page, 1))[0]).toMatch(/^Nothing was settled: 2 questions are open/);
    expect(await page.locator('.question.block').count()).toBe(2);
    await say(page, 'next question');
    expect((await spokenAll(page, 2))[1]).toMatch(
      /One: left forearm, swelling\. Two: .*: no\. If both hold, say/,
    );
    await question(page, 'Read aloud').waitFor();
    await say(page, 'next question');
    expect((await spokenAll(page, 3))[2]).toMatch(/One: right knee/);
    // What is entered meanwhile takes the question out of mind.
    await say(page, 'pulse ninety two');
    await question(page, 'Read aloud').waitFor({ state: 'detached' });
    await say(page, 'both hold');
    expect((await spokenAll(page, 4))[3]).toMatch(/^Nothing was settled/);
    await say(page, 'next question');
    await question(page, 'Read aloud').waitFor();
    await say(page, 'both hold');
    await question(page, 'left forearm').waitFor({ state: 'detached' });
    await question(page, 'right knee').waitFor();
    await page.getByText(/^Settled, and nothing confirmed: left forearm/).waitFor();
    expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(0);
    await say(page, 'ask that again');
    await question(page, 'left forearm').waitFor();
  });

  it('strikes by a word the entry that was misheard, and that is taken back', async () => {
    const { page } = await visit();
    await say(page, 'left forearm swelling');
    await say(page, 'no swelling of the left forearm');
    await question(page, 'left forearm').waitFor();
    // Neither of two is meant by it: it is read, and asked which.
    await say(page, 'misheard');
    expect((await spokenAll(page, 1))[0]).toMatch(/“the first was misheard” or “the second was misheard”/);
    await say(page, 'the second was misheard');
    await question(page, 'left forearm').waitFor({ state: 'detached' });
    await entry(page, 'heard', 'NO').waitFor({ state: 'detached' });
    await entry(page, 'heard', 'LEFT forearm: swelling').waitFor();
    await say(page, 'restore that');
    await question(page, 'left forearm').waitFor();
  });
});

describe('a kept record', () => {
  it('is opened by its number only from the list, and none where two fit', async () => {
    const { page } = await visit();
    const list = page.getByRole('dialog', { name: 'Records on this device' });
    await say(page, 'left forearm swelling');
    await say(page, 'next patient');
    await page.locator('.patient-now', { hasText: 'Patient 2' }).waitFor();
    await say(page, 'right knee swelling');
    await entry(page, 'heard', 'RIGHT knee').waitFor();
    await say(page, 'open record one');
    await list
      .getByText(/^Record 1: Patient 1, .* Say “open record 1” to open it and leave Patient 2\.$/)
      .waitFor();
    await sayBehind(page, 'open record one');
    await page.locator('.patient-now', { hasText: 'Patient 1' }).waitFor();
    await entry(page, 'heard', 'LEFT forearm').waitFor();
    await say(page, 'new incident');
    await list.getByText('Say “new incident” once more to begin it and leave Patient 1.').waitFor();
    await sayBehind(page, 'new incident');
    await list.waitFor({ state: 'detached' });
    await say(page, 'left wrist swelling');
    await entry(page, 'heard', 'LEFT wrist').waitFor();
    await say(page, 'open the record of patient one');
    // Records begun within one second stand in no certain order: a start is kept to the second.
    await list
      .getByText(/^2 records fit; none was opened\. Record [1-3]: Patient 1, .* Record [1-3]: Patient 1, /)
      .waitFor();
    await sayBehind(page, 'close the sheet');
    await list.waitFor({ state: 'detached' });
    await entry(page, 'heard', 'LEFT wrist').waitFor();
  });
});

describe('the order of a report', () => {
  it('is chosen by a word, on its panel and over the radio, where the next one begins', async () => {
    const { page } = await visit();
    await say(page, 'left forearm swelling');
    await say(page, 'show the SOAP report');
    await page.getByRole('region', { name: 'SOAP' }).waitFor();
    await say(page, 'read the report');
    const radio = page.getByRole('dialog', { name: 'Over the radio' });
    await radio.getByRole('button', { name: /ATMIST/, pressed: true }).waitFor();
    await sayBehind(page, 'show SBAR');
    await radio.getByRole('button', { name: /SBAR/, pressed: true }).waitFor();
    await sayBehind(page, 'next piece');
    await radio.getByRole('heading', { name: /^Report, piece 1 of/ }).waitFor();
    await sayBehind(page, 'close the sheet');
    await radio.waitFor({ state: 'detached' });
    await page.getByRole('region', { name: 'SBAR' }).waitFor();
    await say(page, 'show the back of the body');
    // Where both sides have room, the ways between them are not shown.
    await page
      .locator('.view-ways [aria-pressed="true"]', { hasText: 'Back' })
      .waitFor({ state: 'attached' });
  });
});

describe('a report that is read over the radio', () => {
  it('is opened by words and goes on at “next piece”; the same piece comes again at “say again”', async () => {
    const { page } = await visit();
    for (const line of [
      'forty one year old man',
      'left forearm laceration three centimetres',
      'right knee swelling',
      'pulse ninety two',
      'blood pressure one twenty over eighty',
      'no known allergies',
    ])
      await say(page, line);
    await say(page, 'read the report');
    const radio = page.getByRole('dialog', { name: 'Over the radio' });
    await radio.getByRole('button', { name: /^Report/ }).click();
    const heading = radio.getByRole('heading', { name: /piece 1 of/ });
    await heading.waitFor();
    const many = Number(/of (\d+)/.exec((await heading.textContent()) ?? '')?.[1]);
    expect(many).toBeGreaterThan(1);
    // The sheet lies over the line to type in, as it does while a voice is heard: words reach it all the same.
    await sayBehind(page, 'next piece');
    await radio.getByRole('heading', { name: /piece 2 of/ }).waitFor();
    await sayBehind(page, 'previous piece');
    await heading.waitFor();
  });
});

/** Says a line while a sheet lies over the page, as the ear would. */
const sayBehind = (page: Page, line: string): Promise<void> =>
  page.evaluate((words) => {
    const field = document.querySelector<HTMLTextAreaElement | HTMLInputElement>('#talk-line');
    if (field === null) throw new Error('there is no line to type in');
    field.value = words;
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.form?.requestSubmit();
  }, line);
