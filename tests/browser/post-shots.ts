// Pictures of the team link: a phone's bar and sheet, and the board and the crew's page of a real post; all talk is invented.

import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { openWeb } from '../../src/post/web/web.ts';
import { freePorts, HINDRANCE, openScene, type Scene } from '../post/scene.ts';
import { hear } from './hear.ts';
import { LOOKS, SIZES } from './screens.ts';

interface Job {
  readonly browser: Browser;
  /** the folder of the built page */
  readonly built: string;
  /** where the pictures go */
  readonly folder: string;
  /** part of a picture's name, to take those alone */
  readonly only: string;
}

const TALK: readonly (readonly [who: string, lines: readonly string[]])[] = [
  ['Ada', ['his name is Rowan Tarn', 'pulse eighty, respirations sixteen, blood pressure 120 over 80']],
  [
    'Ben',
    ['patient does not follow commands', 'respirations 36 and pulse one thirty', 'left thigh deformity'],
  ],
];

const NAMES = ['18-link-bar', '18a-link-sheet', '19-board', '19a-board-record', '19b-crew'] as const;

/** Takes none where no picture of them is asked for; without nats-server it says so and takes none. */
export async function shootPost(job: Job): Promise<void> {
  const wanted = NAMES.some((name) =>
    SIZES.some(({ name: size }) => LOOKS.some((look) => `${name}-${size}-${look}`.includes(job.only))),
  );
  if (!wanted) return;
  if (HINDRANCE !== '') return console.warn(`No pictures of the team link: ${HINDRANCE}`);
  const ports = await freePorts();
  const address = `http://localhost:${ports.client + 5}/`;
  const scene = await openScene({ ports, address });
  const web = await openWeb(scene.post, {
    folder: job.built,
    host: 'localhost',
    port: ports.client + 5,
    clock: Date.now,
  });
  try {
    const phones: Page[] = [];
    for (const [who, lines] of TALK) phones.push(await joinAs(job, scene, who, lines));
    const [phone] = phones;
    if (phone !== undefined) await shootPhone(job, phone);
    await shootBoard(job, scene, address);
    for (const one of phones) await one.context().close();
  } finally {
    await web.close();
    await scene.end();
  }
}

async function joinAs(job: Job, scene: Scene, who: string, lines: readonly string[]): Promise<Page> {
  const { text } = await scene.post.issue(who);
  const page = await (await job.browser.newContext({ reducedMotion: 'reduce' })).newPage();
  await page.goto(text);
  await page.getByRole('button', { name: 'I have read this' }).click();
  await page.getByRole('button', { name: 'Join the incident' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
  await page.locator('html[data-reader="there"]').waitFor();
  for (const line of lines) await hear(page, line);
  await page.getByText(/^At the post: all \d+\.$/).waitFor();
  return page;
}

/** One picture for each size and look, under names that tell them apart. */
async function take(
  { folder, only }: Job,
  page: Page,
  name: string,
  part: string | null = null,
): Promise<void> {
  for (const { name: size, width, height } of SIZES)
    for (const look of LOOKS) {
      if (!`${name}-${size}-${look}`.includes(only)) continue;
      await page.setViewportSize({ width, height });
      await page.evaluate((chosen) => {
        document.documentElement.dataset.look = chosen;
      }, look);
      if (part !== null) await page.locator(part).evaluate((one) => one.scrollIntoView({ block: 'start' }));
      await page.screenshot({ path: join(folder, `${name}-${size}-${look}.png`) });
    }
}

async function shootPhone(job: Job, page: Page): Promise<void> {
  await take(job, page, '18-link-bar');
  await page.getByRole('button', { name: /^Team/ }).click();
  await page.getByRole('button', { name: 'Leave the incident …' }).waitFor();
  await take(job, page, '18a-link-sheet');
}

async function shootBoard(job: Job, { post }: Scene, address: string): Promise<void> {
  const page = await (await job.browser.newContext()).newPage();
  await page.goto(`${address}board.html#board=${post.incident.boardToken}`);
  await page.locator('.board-row').nth(1).waitFor();
  await take(job, page, '19-board');
  await page.locator('.board-open').first().click();
  await page.locator('.board-text').waitFor();
  await take(job, page, '19a-board-record', '.board-record');
  const crew = await (await job.browser.newContext()).newPage();
  await crew.goto(`${address}board.html#crew=${post.incident.crewToken}`);
  await crew.getByLabel('Who carries it').fill('Dee');
  await crew.getByRole('button', { name: 'Make a code' }).click();
  await crew.locator('.board-symbol').waitFor();
  await take(job, crew, '19b-crew', '[aria-label="Let phones in"]');
  await page.context().close();
  await crew.context().close();
}
