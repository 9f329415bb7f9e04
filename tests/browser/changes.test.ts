// Putting an entry right without a keyboard, from wherever it is told: place, finding, saying it again, questions, criteria,
// timeline. All talk is invented.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { hear } from './hear.ts';
import { say, sentences } from './visit.ts';

const { arrive } = arrivals('whole');

const sheet = (page: Page) => page.getByRole('dialog');
const press = (page: Page, name: string | RegExp) =>
  sheet(page).getByRole('button', { name, exact: true }).first().click();

/** The entries of the panel that stand. */
const standing = (page: Page): Promise<readonly string[]> =>
  page.locator('.panel-entries .group > ul > .entry .entry-line').allInnerTexts();

async function openFirst(page: Page, line: string): Promise<void> {
  await say(page, line);
  await page
    .getByRole('button', { name: /^Change or strike: / })
    .first()
    .click();
  await sheet(page).waitFor();
}

async function openEntry(page: Page, line: string): Promise<void> {
  await say(page, line);
  await page.locator('.panel-entries .entry-text').first().click();
}

describe('an entry', () => {
  it('is put at another place and made another finding by large buttons', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await say(page, 'left forearm swelling');
    await page.getByRole('button', { name: /^Change or strike: LEFT forearm/ }).click();
    await press(page, 'Not forearm: choose another');
    await press(page, 'wrist');
    await sheet(page).locator('.sheet-entry', { hasText: 'LEFT wrist: swelling' }).waitFor();
    await press(page, 'Not wrist: choose another');
    await press(page, 'Show all of them');
    await press(page, 'knee');
    await press(page, 'Not swelling: choose another');
    await press(page, 'deformity');
    await sheet(page).locator('.sheet-entry', { hasText: 'LEFT knee: deformity' }).waitFor();
    await press(page, 'Confirm as it stands');
    await page.locator('.foot-way', { hasText: 'Entries' }).click();
    expect(await standing(page)).toEqual(['LEFT knee: deformity']);
  });

  it('is put at another time by minutes, and a vertebra and pupils are put right by steps', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await say(page, 'tourniquet on the left thigh');
    await page.getByRole('button', { name: /^Change or strike: LEFT thigh/ }).click();
    const before = ((await sheet(page).locator('.time-now').textContent()) ?? '').trim();
    await press(page, '10 minutes earlier');
    await press(page, 'Change the time');
    const minutes = (time: string) => {
      const [hours = 0, rest = 0] = time.slice(-5).split(':').map(Number);
      return hours * 60 + rest;
    };
    const after = ((await sheet(page).locator('.time-now').textContent()) ?? '').trim();
    expect((minutes(before) - minutes(after) + 1440) % 1440).toBe(10);
    await press(page, '10 minutes later');
    await press(page, '1 minute later');
    await press(page, '1 minute later');
    await press(page, 'Change the time');
    await sheet(page).getByRole('alert').getByText('that time is yet to come').waitFor();
    await sheet(page).getByRole('button', { name: 'Close', exact: true }).click();
    await say(page, 'C five tenderness');
    // By a key: a press on a list that has just moved is refused.
    await page.getByRole('button', { name: /^Change or strike: Cervical spine, C5/i }).press('Enter');
    await press(page, 'Neck bone C: one less');
    await press(page, 'Change the number');
    await sheet(page).locator('.sheet-entry', { hasText: 'C4' }).waitFor();
    await sheet(page).getByRole('button', { name: 'Close', exact: true }).click();
    await say(page, 'pupils four millimeters, equal and reactive');
    await page.getByRole('button', { name: /^Change or strike: Pupils/ }).press('Enter');
    await press(page, 'RIGHT pupil, mm: one more');
    await press(page, 'Change the number');
    await sheet(page).locator('.sheet-entry', { hasText: 'right 5 mm' }).waitFor();
    expect(await sheet(page).locator('.sheet-entry').textContent()).toMatch(/unequal|not equal/i);
  });

  it('of a limb’s end can be of a hand or a foot and of nothing else', async () => {
    const { page } = await arrive();
    await openEntry(page, 'sensation intact in the left hand');
    await press(page, 'Not hand: choose another');
    const offered = await sheet(page).locator('.picker .grid .button').allInnerTexts();
    expect(offered).toEqual(['hand', 'foot']);
  });

  it('said again takes the new words in its place, and they stand beside it', async () => {
    const { page } = await arrive();
    await openEntry(page, 'left forearm swelling');
    await press(page, 'Say it again');
    // The words come from whatever hears; the box under the sheet is one ear as good as another.
    await hear(page, 'right wrist deformity');
    await sheet(page).locator('.sheet-entry', { hasText: 'RIGHT wrist: deformity' }).waitFor();
    await sheet(page).getByText('Heard: “right wrist deformity”').waitFor();
    await sheet(page).getByRole('button', { name: 'Close', exact: true }).click();
    expect(await standing(page)).toEqual(['RIGHT wrist: deformity']);
  });

  it('said again in words that do not fit stays, and what was said is an entry of its own', async () => {
    const { page } = await arrive();
    await openEntry(page, 'left forearm swelling');
    await press(page, 'Say it again');
    await hear(page, 'pulse ninety two');
    await sheet(page).getByRole('alert').waitFor();
    await sheet(page).getByRole('button', { name: 'Close', exact: true }).click();
    expect(await standing(page)).toEqual(['LEFT forearm: swelling', 'Pulse 92']);
  });
});

describe('a question between two entries', () => {
  const CONTRARY = ['swelling of the left knee', 'no swelling of the left knee'];

  it('is settled by one press that takes the misheard one out', async () => {
    const { page } = await arrive();
    for (const line of CONTRARY) await say(page, line);
    await page.getByRole('button', { name: /^Misheard, strike: LEFT knee: swelling: NO/ }).click();
    await page.locator('#questions-title').waitFor({ state: 'detached' });
    expect(await standing(page)).toEqual(['LEFT knee: swelling']);
  });

  it('is settled by one press where all of it holds, and nothing is confirmed by that', async () => {
    const { page } = await arrive();
    for (const line of CONTRARY) await say(page, line);
    await page.getByRole('button', { name: /^All of it holds/ }).click();
    await page.locator('#questions-title').waitFor({ state: 'detached' });
    expect((await sentences(page)).length).toBe(2);
    expect(await page.locator('.panel-entries .entry.confirmed').count()).toBe(0);
  });
});

describe('where an entry is told, it is a press away', () => {
  it('in the timeline', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await page
      .locator('.timeline')
      .getByRole('button', { name: /left forearm: swelling/i })
      .click();
    await sheet(page).locator('.sheet-entry', { hasText: 'LEFT forearm: swelling' }).waitFor();
  });

  it('in a criterion that is met, with its source', async () => {
    const { page } = await arrive();
    await say(page, 'he is thirty four years old');
    await say(page, 'blood pressure eighty two over fifty');
    await say(page, 'pulse one hundred and thirty');
    await page.locator('.foot-way', { hasText: 'Signs' }).click();
    const met = page.locator('.reckoned.red', { hasText: 'not confirmed' }).first();
    await met.getByText('Source').click();
    expect((await met.locator('.worked-from').textContent())?.length).toBeGreaterThan(30);
    await met
      .getByRole('button', { name: /^Change or strike: / })
      .first()
      .click();
    await sheet(page).getByText('Is this right?').waitFor();
  });
});

describe('by words alone', () => {
  it('several plain ones are shown together, and none of them is confirmed by the words', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await say(page, 'neck swelling and deformity');
    await say(page, 'check the plain ones');
    await page.getByRole('dialog', { name: 'Last said: are all of these right?' }).waitFor();
    expect(await page.locator('.entry.confirmed').count()).toBe(0);
  });

  it('a panel that is asked for is seen, whatever sheet lay over it', async () => {
    const { page } = await arrive({ width: 360, height: 740 });
    await openFirst(page, 'left forearm swelling');
    await hear(page, 'show the body');
    await sheet(page).waitFor({ state: 'detached' });
    await page.locator('.panel-body:not([hidden]) .figure').first().waitFor();
  });

  it.each([
    ['show the timeline', '#timeline-title'],
    ['check readiness', 'dialog[aria-label="Ready for the mountain?"]'],
    ['show settings', 'dialog[aria-label="More"]'],
    ['show cautions', 'dialog .cautions'],
    ['set up hearing', 'dialog[aria-label="Hearing"]'],
    ['what can I say', 'dialog[aria-label="What can I say?"]'],
    ['close the record', 'dialog details#close-record[open]'],
    ['export the record', 'dialog #transfer:focus'],
    ['wipe the record', 'dialog #record-open-now:focus'],
    ['print the report', 'dialog[aria-label="Print or save as PDF"]'],
    ['show the symbols', 'dialog[aria-label="Pass on without a network"]'],
    ['receive a record', 'dialog[aria-label="Receive a record"]'],
    ['night look', 'html[data-look="night"]'],
  ])('“%s” is done', async (words, shown) => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await say(page, words);
    await page.locator(shown).waitFor();
    expect(await standing(page)).toEqual(['LEFT forearm: swelling']);
  });
});
