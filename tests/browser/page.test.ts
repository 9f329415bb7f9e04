// The built page in a real browser: what a person does first, and what must never happen while they do it.

import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { playAll, ready, say, sentences } from './visit.ts';

const { arrive } = arrivals();

describe('talk', () => {
  it('becomes entries by region, beside the radio script and the timeline', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm, deformity and swelling');
    await say(page, 'no bleeding of the left forearm');
    expect(await sentences(page)).toEqual([
      'LEFT forearm: deformity',
      'LEFT forearm: swelling',
      'LEFT forearm: bleeding: NO',
    ]);
    expect(await page.locator('.radio-text').textContent()).toMatch(/left forearm/i);
    expect(await page.locator('.timeline .moment').count()).toBe(3);
  });

  it('that is not understood is kept as said', async () => {
    const { page } = await arrive();
    await say(page, 'the marmots were unimpressed');
    expect(await sentences(page)).toEqual(['Kept as said: “the marmots were unimpressed”']);
  });

  it('of several lines is said line by line when it is pasted', async () => {
    const { page } = await arrive();
    await page.getByLabel('What is said').evaluate((field) => {
      const data = new DataTransfer();
      data.setData('text/plain', 'right wrist swelling\npulse ninety two\n');
      field.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    expect(await sentences(page)).toEqual(['RIGHT wrist: swelling', 'Pulse 92']);
    expect(await page.locator('.said-one').count()).toBe(2);
  });

  it('in a file is opened as a record of its own, and a faulty file is named with its line', async () => {
    const { page } = await arrive();
    const talk = '@start 2031-04-05T10:00:00+02:00\n[00:00:10] left knee swelling\n';
    const choose = (name: string, text: string) =>
      page.getByLabel('Talk file').setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
    await choose('invented.talk', talk);
    await page.getByText('READ FROM A FILE').waitFor();
    expect(await sentences(page)).toEqual(['LEFT knee: swelling']);
    await page.getByRole('button', { name: 'Records' }).click();
    await choose('broken.talk', '[1:2] left knee swelling\n');
    await page.getByText(/broken\.talk, line 1/).waitFor();
  });

  it('typed before the reader is built is not lost', async () => {
    const { page } = await arrive();
    await page.reload();
    await say(page, 'right ankle swelling');
    await ready(page);
    expect(await sentences(page)).toEqual(['RIGHT ankle: swelling']);
  });
});

describe('a hand', () => {
  it('confirms one entry', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await page
      .locator('.panel-entries')
      .getByRole('button', { name: 'Confirm: LEFT forearm: swelling' })
      .click();
    expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(1);
    expect(await page.locator('.count').textContent()).toContain('Nothing is left to check.');
  });

  it('confirms several plain entries together, and no side, negative or number among them', async () => {
    const { page } = await arrive();
    await say(page, 'neck deformity and swelling, no bleeding');
    await say(page, 'neck laceration three centimeters');
    await say(page, 'left clavicle swelling');
    const panel = page.locator('.panel-entries');
    await panel.getByRole('button', { name: 'Check 2 plain ones together' }).click();
    await page.getByRole('dialog').getByRole('button', { name: 'Confirm all 2' }).click();
    expect(await page.locator('.panel-entries .entry.confirmed .entry-line').allInnerTexts()).toEqual([
      'Neck: deformity',
      'Neck: swelling',
    ]);
    expect(await page.locator('.panel-entries .entry.heard').count()).toBe(3);
  });

  it('changes side, answer and number, and what was changed is kept as replaced', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm laceration three centimeters');
    await page.locator('.panel-entries .entry-text').first().click();
    const sheet = page.getByRole('dialog');
    await sheet.getByRole('button', { name: 'RIGHT' }).click();
    await sheet.getByLabel('Size, cm', { exact: true }).fill('4');
    await sheet.getByRole('button', { name: 'Change the number' }).click();
    await sheet.getByText('RIGHT forearm').waitFor();
    await sheet.getByRole('button', { name: 'NO', exact: true }).click();
    await sheet.getByRole('button', { name: 'Confirm as it stands' }).click();
    expect(await page.locator('.panel-entries .group > ul .entry-line').allInnerTexts()).toEqual([
      'RIGHT forearm: laceration 4 cm: NO',
    ]);
    await page.getByText('3 replaced or struck').click();
    await page.locator('.fallen .entry.replaced').nth(2).waitFor();
    expect(await page.locator('.fallen .entry.replaced').count()).toBe(3);
  });

  it('changes both numbers of a pressure, and one that cannot be is refused with its reason', async () => {
    const { page } = await arrive();
    await say(page, 'blood pressure 120 over 80');
    await page.locator('.panel-entries .entry-text').first().click();
    const sheet = page.getByRole('dialog');
    await sheet.getByLabel('Diastolic', { exact: true }).fill('70');
    await sheet.getByRole('button', { name: 'Change the number' }).click();
    await sheet.locator('.sheet-entry', { hasText: '120/70' }).waitFor();
    await sheet.getByLabel('Systolic', { exact: true }).fill('1200');
    await sheet.getByRole('button', { name: 'Change the number' }).click();
    await sheet.getByRole('alert').waitFor();
    expect(await sheet.locator('.sheet-entry').textContent()).toContain('120/70');
  });

  it('strikes an entry, which stays in the record as struck', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await page.locator('.panel-entries .entry-text').first().click();
    await page.getByRole('button', { name: 'Strike', exact: true }).click();
    await page.getByRole('button', { name: 'Yes, strike it' }).click();
    // The timeline is drawn after the entries.
    await page.locator('.timeline .moment.struck').waitFor();
    expect(await page.locator('.panel-entries .group > ul > .entry').count()).toBe(0);
    expect(await page.locator('.timeline .moment.struck').count()).toBe(1);
  });

  it('is asked for a side that was not said', async () => {
    const { page } = await arrive();
    await say(page, 'wrist swelling');
    const panel = page.locator('.panel-entries');
    await panel.getByText('Which side is meant?').waitFor();
    await panel.getByRole('button', { name: 'LEFT', exact: true }).click();
    expect(await page.locator('.panel-entries .group > ul .entry-line').allInnerTexts()).toEqual([
      'LEFT wrist: swelling',
    ]);
  });
});

describe('an invented examination', () => {
  it('is played within the first minute, is named as invented, and can be paused and stopped', async () => {
    const { page } = await arrive();
    await page.getByRole('button', { name: 'Play “Fall on wet rock”' }).click();
    await page.getByText('INVENTED EXAM').waitFor();
    await page.locator('.panel-entries .entry').nth(5).waitFor();
    await page.getByRole('button', { name: 'Pause' }).click();
    const before = await page.locator('.play-clock').textContent();
    await page.waitForTimeout(600);
    expect(await page.locator('.play-clock').textContent()).toBe(before);
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Leave it' }).click();
    await page.getByText('no record yet', { exact: true }).waitFor();
  });

  it('gives signs, scores and criteria that leave the decision to local protocol', async () => {
    const { page } = await arrive();
    await playAll(page, 'Fall on wet rock');
    await page.getByRole('button', { name: 'Signs', exact: true }).click();
    const panel = page.locator('.panel-signs');
    expect(await panel.textContent()).toContain('Local protocol decides.');
    expect(await panel.locator('.reminder').textContent()).toContain('(common practice, no source)');
    expect(await panel.locator('.sign').count()).toBeGreaterThan(5);
    expect(await panel.textContent()).not.toMatch(/\bcleared\b|\bnormal\b/i);
  });

  it('leads the radio script piece by piece, forward and back', async () => {
    const { page } = await arrive();
    await playAll(page, 'Last ski run');
    const piece = page.locator('.radio-text');
    const first = await piece.textContent();
    await page.getByRole('button', { name: 'Next piece' }).click();
    expect(await piece.textContent()).not.toBe(first);
    await page.getByRole('button', { name: 'Back', exact: true }).click();
    expect(await piece.textContent()).toBe(first);
  });
});
