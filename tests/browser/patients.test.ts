// Several patients in one incident: turned to by voice and by touch, each with a record of their own, the one in mind on the screen.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { ready, say, sentences } from './visit.ts';

const { arrive } = arrivals();

const now = (page: Page, who: string) => page.locator('.patient-now', { hasText: who }).waitFor();

describe('patients', () => {
  it('are turned to by voice; what is said goes to the one in mind, at once after the turn too', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await now(page, 'Patient 1');
    await say(page, 'patient two');
    await say(page, 'right knee swelling');
    await now(page, 'Patient 2');
    await page.locator('.panel-entries .entry').waitFor();
    expect(await sentences(page)).toEqual(['RIGHT knee: swelling']);
    await page.getByText('Now: Patient 2.').waitFor();
    await say(page, 'back to patient one');
    await now(page, 'Patient 1');
    await page.locator('.panel-entries .entry', { hasText: 'forearm' }).waitFor();
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
  });

  it('pasted as one talk do not get each other’s findings', async () => {
    const { page } = await arrive();
    await page.getByLabel('What is said').evaluate((field) => {
      const data = new DataTransfer();
      const text =
        'left wrist swelling\npatient two\nright ankle swelling\npatient one\nleft knee swelling\n';
      data.setData('text/plain', text);
      field.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }),
      );
    });
    await page.locator('.panel-entries .entry', { hasText: 'knee' }).waitFor();
    await now(page, 'Patient 1');
    expect(await sentences(page)).toEqual(['LEFT wrist: swelling', 'LEFT knee: swelling']);
    await page.getByRole('button', { name: 'Turn to Patient 2' }).click();
    await now(page, 'Patient 2');
    expect(await sentences(page)).toEqual(['RIGHT ankle: swelling']);
  });

  it('are named, filed, closed, found and opened again, over a reload', async () => {
    const { page } = await arrive();
    await say(page, 'left forearm swelling');
    await say(page, 'patient two');
    await now(page, 'Patient 2');
    await say(page, 'patient name is Ada Quindelo');
    await now(page, 'Ada Quindelo');
    await page.getByRole('button', { name: 'Records' }).click();
    await page.locator('summary', { hasText: 'label, tag, place' }).click();
    await page.getByLabel('Tag:').fill('by the stream');
    await page.getByLabel('Place').fill('north gully');
    await page.getByRole('button', { name: 'File it so' }).click();
    await page.locator('.incident .record', { hasText: 'by the stream' }).waitFor();
    await page.getByRole('button', { name: 'Close this record' }).click();
    await page.getByText('no record yet', { exact: true }).waitFor();
    await page.reload();
    await ready(page);
    await page.getByText('no record yet', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Records' }).click();
    const closed = page.locator('.record', { hasText: 'closed' });
    expect(await closed.textContent()).toContain('Patient 2, Ada Quindelo, by the stream');
    expect(await page.locator('.incident').count()).toBe(1);
    await closed.getByRole('button', { name: 'Reopen' }).click();
    await now(page, 'Patient 2, Ada Quindelo, by the stream');
    await page.getByRole('button', { name: 'Turn to Patient 1' }).click();
    await now(page, 'Patient 1');
    expect(await sentences(page)).toEqual(['LEFT forearm: swelling']);
  });

  it('of a talk file have a record each', async () => {
    const { page } = await arrive();
    const talk =
      '@start 2031-04-05T10:00:00+02:00\nleft knee swelling\nswitch to patient two\nright wrist swelling\nno bleeding\n';
    await page
      .getByLabel('Talk file')
      .first()
      .setInputFiles({ name: 'two.talk', mimeType: 'text/plain', buffer: Buffer.from(talk) });
    await now(page, 'Patient 2');
    expect((await sentences(page))[0]).toBe('RIGHT wrist: swelling');
    await page.getByRole('button', { name: 'Turn to Patient 1' }).click();
    await now(page, 'Patient 1');
    expect(await sentences(page)).toEqual(['LEFT knee: swelling']);
  });
});
