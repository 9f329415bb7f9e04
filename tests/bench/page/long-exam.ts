// What a record of so many entries costs the page: the longest task and frame with a new entry and while scrolling, and memory.

import type { Page } from 'playwright-core';
import { FORGETS, LONG_TASKS, LONGEST_FRAME, LONGEST_TASK, WATCHES } from './in-page.ts';
import { longTalk } from './long-talk.ts';

export interface Cost {
  /** ms, the longest gap between two frames */
  readonly frame: number;
  readonly scrolling: number;
  /** ms, the longest task that held the page for 50 ms or more; 0 where none did */
  readonly task: number;
  /** how many tasks did */
  readonly tasks: number;
  /** bytes of the page's heap after its waste was collected */
  readonly heap: number;
}

/** Says `lines` one by one on a page whose record has `entries` entries, with the processor so much slower. */
export async function costOf(
  page: Page,
  address: string,
  entries: number,
  lines: readonly string[],
  slower: number,
): Promise<Cost> {
  await page.goto(address);
  await page.locator('html[data-reader="there"]').waitFor();
  await page.getByRole('button', { name: 'I have read this' }).click();
  const file = { name: 'invented.talk', mimeType: 'text/plain', buffer: Buffer.from(longTalk(entries)) };
  await page.getByLabel('Talk file').setInputFiles(file);
  await page.getByText('READ FROM A FILE').waitFor({ timeout: 120_000 });
  await page.locator('html[data-kept="all"]').waitFor({ timeout: 120_000 });
  const session = await page.context().newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  await session.send('Performance.enable');
  const { metrics } = await session.send('Performance.getMetrics');
  const heap = metrics.find(({ name }) => name === 'JSHeapUsedSize')?.value ?? 0;
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  await page.waitForTimeout(1500);
  await page.evaluate(WATCHES);
  for (const line of lines) {
    await page.locator('#talk-line').fill(line);
    await page.locator('#talk-line').press('Enter');
    await page.locator('.said-words', { hasText: line }).first().waitFor();
    // What is worked out after the entry was drawn belongs to its cost.
    await page.waitForTimeout(600);
  }
  const frame = await page.evaluate<number>(LONGEST_FRAME);
  const task = await page.evaluate<number>(LONGEST_TASK);
  const tasks = await page.evaluate<number>(LONG_TASKS);
  await page.evaluate(FORGETS);
  await page.mouse.move(100, 400);
  for (let step = 0; step < 20; step += 1) {
    await page.mouse.wheel(0, 500);
    await page.waitForTimeout(30);
  }
  return { frame, task, tasks, heap, scrolling: await page.evaluate<number>(LONGEST_FRAME) };
}
