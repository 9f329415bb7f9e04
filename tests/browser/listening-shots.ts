// Pictures of a page that listens and of one whose microphone was taken, at every size and in every look: what a glance must tell.

import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { hear } from './hear.ts';
import { LOOKS, SIDEWAYS, SIZES } from './screens.ts';
import { befall, keepTrack } from './track.ts';

interface Shooting {
  readonly browser: Browser;
  readonly address: string;
  readonly folder: string;
  /** part of a picture's name, to take those alone */
  readonly only: string;
}

/** Invented, like all talk here. */
const SAID = ['left forearm swelling', 'no deformity of the left wrist', 'pulse ninety two'];

const NAMES = ['03b-listening', '03c-not-hearing', '03d-notice'] as const;
type Name = (typeof NAMES)[number];

const pictures = (name: Name) =>
  [...SIZES, ...SIDEWAYS].flatMap((size) =>
    LOOKS.map((look) => ({ size, look, file: `${name}-${size.name}-${look}` })),
  );

/** Opens the page, has the recogniser fetched, and listens to a microphone whose track is kept at hand. */
async function listening(page: Page, address: string): Promise<void> {
  await keepTrack(page);
  await page.goto(address);
  await page.locator('html[data-reader="there"]').waitFor();
  await page.getByRole('button', { name: 'I have read this' }).click();
  for (const line of SAID) await hear(page, line);
  await page.getByRole('button', { name: 'Set up' }).click();
  await page.getByRole('button', { name: /Fetch the recogniser/ }).click();
  await page.getByRole('button', { name: 'Start listening' }).click({ timeout: 120_000 });
  await page.getByText('Listening.', { exact: true }).waitFor({ timeout: 120_000 });
  await page.waitForTimeout(4000);
}

/** `03b-listening-phone-night` and its like; a browser that cannot listen gives none and says so. */
export async function shootListening({ browser, address, folder, only }: Shooting): Promise<void> {
  if (!NAMES.some((name) => pictures(name).some(({ file }) => file.includes(only)))) return;
  const context = await browser.newContext({ reducedMotion: 'reduce', permissions: ['microphone'] });
  const page = await context.newPage();
  const shoot = async (name: Name) => {
    for (const { size, look, file } of pictures(name)) {
      if (!file.includes(only)) continue;
      await page.setViewportSize(size);
      while ((await page.locator('html').getAttribute('data-look')) !== look)
        await page.locator('.look-way').click();
      await page.screenshot({ path: join(folder, `${file}.png`) });
    }
  };
  await listening(page, address);
  await shoot('03b-listening');
  await hear(page, 'stand by');
  await page.locator('.notices .notice').waitFor();
  await shoot('03d-notice');
  await befall(page, 'mute');
  await page.getByText(/NOT HEARING:/).waitFor();
  await shoot('03c-not-hearing');
  await context.close();
}
