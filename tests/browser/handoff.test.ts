// Handing over in the built page: a report is read piece by piece and logged, what comes back is compared and kept.

import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { arrivals } from './arrival.ts';
import { say } from './visit.ts';

const { arrive } = arrivals();

/** Invented talk: no such patient. */
const TALK = [
  'he is forty one',
  'tourniquet on the right thigh',
  'left forearm, deformity and swelling',
  'pulse one twelve',
  'blood pressure ninety eight over sixty',
  'GCS eyes three, verbal four, motor six, thirteen',
];

async function examined(lines: readonly string[] = TALK): Promise<Page> {
  const { page } = await arrive();
  for (const line of lines) await say(page, line);
  return page;
}

/** A button of the sheet that is open. */
const button = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

async function openRadio(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Read over the radio' }).click();
  await page.getByRole('dialog', { name: 'Over the radio' }).waitFor();
}

/** Reads the report to its end and gives its pieces. */
async function readAll(page: Page, which: RegExp): Promise<readonly string[]> {
  await button(page, which).click();
  const pieces: string[] = [];
  for (;;) {
    pieces.push(((await page.locator('.reader-text').textContent()) ?? '').trim());
    await button(page, /^Said/).click();
    if (pieces.at(-1)?.match(/OVER$/i) !== null) return pieces;
  }
}

describe('a report over the radio', () => {
  it('is read one piece at a time, each piece logged as it is said to be sent', async () => {
    const page = await examined();
    await openRadio(page);
    const pieces = await readAll(page, /^Report/);
    expect(pieces.length).toBeGreaterThan(1);
    expect(pieces.slice(0, -1).every((text) => /BREAK$/i.test(text))).toBe(true);
    expect(pieces.every((text) => text.split(/\s+/).length <= 40)).toBe(true);
    expect(pieces.at(-1)).toMatch(/Read back: Pressure niner eight over six zero/);
    await button(page, 'Back').click();
    const sent = await page
      .getByRole('region', { name: 'Sent so far' })
      .getByRole('listitem')
      .allInnerTexts();
    expect(sent).toHaveLength(pieces.length);
    expect(sent[0]).toContain(`Report, piece ${pieces.length} of ${pieces.length}`);
  });

  it('is compared with what they read back, number by number, and said again where it came back wrong', async () => {
    const page = await examined();
    await openRadio(page);
    await button(page, 'Check what they read back').click();
    await page
      .getByLabel('What they said')
      .fill('pressure niner eight over six zero, GCS one three, pulse one one zero, tourniquet left thigh');
    await button(page, 'Compare').click();
    const rows = await page.locator('.read-back-rows > li').allInnerTexts();
    expect(rows).toContainEqual(
      expect.stringMatching(/DIFFERS.*They said pulse one one zero, the record says one one two\./s),
    );
    expect(rows).toContainEqual(expect.stringMatching(/DIFFERS.*tourniquet left thigh.*right thigh/s));
    expect(rows).toContainEqual(expect.stringMatching(/right.*GCS one three/s));
    await button(page, 'Say it again').click();
    const again = await page.locator('.reader-text').textContent();
    expect(again).toMatch(/^All unconfirmed\. I say again\..*Pulse one one two/s);
    expect(again).not.toContain('niner eight');
  });

  it('is followed by what changed since it was sent, with what it was before', async () => {
    const page = await examined();
    await openRadio(page);
    await readAll(page, /^Report/);
    await button(page, 'Close').click();
    await say(page, 'pulse one twenty four');
    await openRadio(page);
    const pieces = (await readAll(page, /^What changed since/)).join(' ');
    expect(pieces).toMatch(/Pulse: now one two four.*was one one two/s);
    expect(pieces).not.toMatch(/forearm/i);
  });

  it('is followed by what was confirmed since it was sent', async () => {
    const page = await examined(['he is forty one', 'left forearm, deformity and swelling']);
    await openRadio(page);
    await readAll(page, /^Report/);
    await button(page, 'Close').click();
    await say(page, 'confirmed');
    await openRadio(page);
    const pieces = (await readAll(page, /^What changed since/)).join(' ');
    expect(pieces).toMatch(/Confirmed now: Left forearm: deformity and swelling/i);
    expect(pieces).not.toMatch(/Age four one/i);
  });

  it('keeps a question of the other end until it is answered, also after a reload', async () => {
    const page = await examined();
    await openRadio(page);
    await button(page, 'Their questions').click();
    await page.getByLabel('They asked').fill('any blood thinners');
    await button(page, 'Keep the question').click();
    await page.locator('html[data-kept="all"]').waitFor();
    await page.reload();
    await page.locator('html[data-reader="there"]').waitFor();
    await openRadio(page);
    await button(page, 'Their questions (1 open)').click();
    await page.getByLabel('Answer to “any blood thinners”').fill('none known');
    await button(page, 'Answered').click();
    await page.getByText('answered: “none known”').waitFor();
    await button(page, 'Back').click();
    await button(page, 'Their questions').waitFor();
  });
});

describe('a written report', () => {
  it('leads from each line to the entries it tells and the words they came from', async () => {
    const page = await examined(['left forearm, deformity and swelling', 'pulse one twelve']);
    await page.getByRole('button', { name: 'SOAP' }).click();
    const line = page.locator('.told', { hasText: /^Left forearm: deformity and swelling/ }).first();
    await line.locator('summary').click();
    expect(await line.getByRole('listitem').allTextContents()).toEqual([
      expect.stringMatching(/LEFT forearm: deformity to check“left forearm, deformity/),
      expect.stringMatching(/LEFT forearm: swelling to check“left forearm, deformity and swelling/),
    ]);
    await line.getByRole('button', { name: /LEFT forearm: swelling/ }).click();
    await page.getByRole('dialog').getByText('Heard: “').waitFor();
  });
});
