// Every screen of the page and the way to it, for the pictures and for the checks that must hold on each.

import type { Page } from 'playwright-core';
import { HANDOVER_SCREENS } from './handover-screens.ts';
import { hear } from './hear.ts';

export const LOOKS = ['plain', 'sun', 'night'] as const;

export const SIZES = [
  { name: 'phone', width: 360, height: 740 },
  { name: 'tablet', width: 768, height: 1024 },
  { name: 'desk', width: 1440, height: 900 },
] as const;

/** Held sideways: looked at in pictures, where what matters is what is left of the height. */
export const SIDEWAYS = [
  { name: 'phone-sideways', width: 740, height: 360 },
  { name: 'tablet-sideways', width: 1024, height: 768 },
] as const;

export interface Size {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

export interface Screen {
  readonly name: string;
  readonly open: (page: Page) => Promise<void>;
  /** puts away what would be in the next screen's way */
  readonly leave?: (page: Page) => Promise<void>;
}

const press = (page: Page, name: string | RegExp) =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .first()
    .click();

/** Presses, and waits for the sheet that comes of it. */
async function pressFor(page: Page, name: string): Promise<void> {
  await press(page, name);
  await page.getByRole('dialog').getByRole('heading').first().waitFor();
}

/** Brings a part of a panel to its top. */
const bring = (page: Page, name: string | RegExp) =>
  page
    .getByRole('region', { name, exact: typeof name === 'string' })
    .first()
    .evaluate((part) => part.scrollIntoView({ block: 'start' }));

const choosePanel = async (page: Page, title: string): Promise<void> => {
  const way = page.locator('.foot-way', { hasText: title });
  if ((await way.count()) > 0) await way.click();
};

/** Invented, like all talk here: two that contradict each other, and one that lacks its side. */
const AT_ODDS = [
  'left forearm swelling',
  'no swelling of the left forearm',
  'knee deformity',
  'pulse one thirty',
  'blood pressure eighty over fifty',
];

const closeSheet = (page: Page) =>
  page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();

const panel = (name: string, title: string): Screen => ({
  name,
  open: (page) => choosePanel(page, title),
});

/** In the order in which they can be walked through, beginning at the first start. */
export const SCREENS: readonly Screen[] = [
  { name: '01-first-start', open: async () => {}, leave: (page) => press(page, 'I have read this') },
  { name: '02-before-the-first-word', open: async () => {} },
  {
    name: '03-exam',
    open: async (page) => {
      // The player's buttons are below the fold on a phone.
      await press(page, 'All at once');
      await press(page, 'Play “Fall on wet rock”');
      await page.getByText('INVENTED EXAM').waitFor();
    },
  },
  panel('04-entries', 'Entries'),
  panel('05-body', 'Body'),
  {
    name: '05b-body-part',
    open: (page) => page.locator('.figure-of.chosen [data-zone="leg-right"]').click(),
    leave: closeSheet,
  },
  {
    name: '05c-say-by-touch',
    open: async (page) => {
      await page.locator('.figure-of.chosen [data-zone="arm-left"]').click();
      await page
        .getByRole('dialog')
        .getByRole('button', { name: /^LEFT wrist/ })
        .last()
        .click();
    },
    leave: async (page) => {
      await page.getByRole('dialog').getByRole('button', { name: 'Back', exact: true }).click();
      await closeSheet(page);
    },
  },
  panel('07-signs', 'Signs'),
  { name: '07a-flags', open: (page) => bring(page, 'Triage criteria') },
  panel('08-report', 'Report'),
  { name: '08a-timeline', open: (page) => bring(page, /^Timeline/) },
  ...HANDOVER_SCREENS,
  { name: '10-records', open: (page) => pressFor(page, 'Records'), leave: closeSheet },
  { name: '11-menu', open: (page) => pressFor(page, 'More'), leave: closeSheet },
  {
    name: '11a-ready',
    open: async (page) => {
      await press(page, 'More');
      await press(page, 'Ready for the mountain?');
    },
    leave: closeSheet,
  },
  {
    name: '11c-hearing',
    open: async (page) => {
      await press(page, 'More');
      await press(page, 'Hearing');
    },
    leave: closeSheet,
  },
  {
    name: '11b-what-can-i-say',
    open: async (page) => {
      await press(page, 'More');
      await press(page, 'What can I say?');
    },
    leave: closeSheet,
  },
  {
    name: '12-change',
    open: async (page) => {
      await choosePanel(page, 'Entries');
      await page
        .getByRole('button', { name: /^Change or strike: RIGHT thigh/ })
        .first()
        .click();
    },
  },
  {
    name: '12a-change-place',
    open: (page) => press(page, /^Not .*: choose another$/),
    leave: closeSheet,
  },
  {
    name: '13-several-together',
    open: (page) => press(page, /^Check \d+ plain ones together: Head/),
    leave: (page) => press(page, 'Not yet'),
  },
  {
    name: '14-questions',
    open: async (page) => {
      await press(page, 'Leave it');
      for (const line of AT_ODDS) await hear(page, line);
      await choosePanel(page, 'Entries');
      await bring(page, 'Questions');
    },
  },
  {
    name: '15-several-patients',
    open: async (page) => {
      await hear(page, 'next patient');
      await hear(page, 'her name is Ada Lark, right ankle swelling');
      await page.getByRole('button', { name: /^Turn to Patient 1/ }).waitFor();
    },
  },
  {
    name: '16-records-of-several',
    open: async (page) => {
      await pressFor(page, 'Records');
      await page
        .getByRole('dialog')
        .locator('.record')
        .first()
        .evaluate((one) => one.scrollIntoView());
    },
    leave: closeSheet,
  },
  {
    name: '17-locked',
    open: async (page) => {
      await press(page, 'Records');
      const form = page.locator('details', { hasText: 'Set a passphrase' });
      await form.locator('summary').click();
      await form.getByLabel('New passphrase').fill('seven marmots below the col');
      await form.getByLabel('The same again').fill('seven marmots below the col');
      await press(page, 'Set a passphrase');
      await press(page, 'Lock now');
      await page.getByRole('heading', { name: 'Fieldsay is locked' }).waitFor();
    },
  },
];
