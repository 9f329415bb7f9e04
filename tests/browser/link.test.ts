// Two phones, a post and its board, all real: codes, talk, receipts, questions, a cut, and a phone that was lost.
// Names and findings are invented.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Web } from '../../src/post/web/serve.ts';
import { openWeb } from '../../src/post/web/web.ts';
import { freePorts, HINDRANCE, openScene, type Scene } from '../post/scene.ts';
import { LOOKS } from './screens.ts';
import { tooSmall, violations } from './violations.ts';
import { ready, say, sentences, startBrowser, type Visit, visit } from './visit.ts';

/** Waits until the bar says so; the timeout names what it says instead. */
const words = (page: Page, text: string | RegExp) =>
  expect.poll(() => page.locator('.link-text').textContent(), { timeout: 30_000 }).toMatch(text);
/** A picture for whoever wants to look: `SHOTS=folder npx vitest run …`. */
const shoot = async (page: Page, name: string): Promise<void> => {
  const { SHOTS } = process.env;
  if (SHOTS !== undefined) await page.screenshot({ path: `${SHOTS}/${name}.png`, fullPage: true });
};
const inSheet = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

describe.skipIf(HINDRANCE !== '')(
  `an incident of two phones${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`,
  () => {
    let browser: Browser;
    let scene: Scene;
    let web: Web;
    let address: string;
    const visits: Visit[] = [];

    const openPostWeb = async (): Promise<void> => {
      web = await openWeb(scene.post, {
        folder: inject('built'),
        host: 'localhost',
        port: Number(new URL(address).port),
        clock: Date.now,
      });
    };
    const join = async (name: string): Promise<Page> => {
      const { text } = await scene.post.issue(name);
      const here = await visit(browser, { address: text });
      visits.push(here);
      await inSheet(here.page, 'Join the incident').click();
      await inSheet(here.page, 'Close').click();
      await words(here.page, /^Team: nothing to send yet/);
      return here.page;
    };
    const board = async (way: 'board' | 'crew'): Promise<Page> => {
      const token = way === 'board' ? scene.post.incident.boardToken : scene.post.incident.crewToken;
      const page = await (await browser.newContext({ viewport: { width: 1440, height: 900 } })).newPage();
      await page.goto(`${address}board.html#${way}=${token}`);
      return page;
    };

    beforeAll(async () => {
      browser = await startBrowser();
      const ports = await freePorts();
      address = `http://localhost:${ports.client + 5}/`;
      scene = await openScene({ ports, address });
      await openPostWeb();
    });
    afterAll(async () => {
      for (const { leave, complaints, foreign } of visits) {
        await leave();
        // A connection that a test cut is complained of by the browser itself.
        expect(
          complaints.filter((one) => !/WebSocket connection|ERR_CONNECTION_REFUSED|status of 503/.test(one)),
        ).toEqual([]);
        expect(foreign).toEqual([]);
      }
      await web?.close();
      await scene?.end();
      await browser?.close();
    });

    it('is joined by code, and what is said on either phone is on the board, worst first, once the post has written it', async () => {
      const [ada, ben] = [await join('Ada'), await join('Ben')];
      expect(ada.url()).toBe(address);
      await say(ada, 'pulse eighty, respirations sixteen, blood pressure 120 over 80');
      await say(ben, 'patient does not follow commands');
      await say(ben, 'respirations 36 and pulse one thirty');
      await words(ada, /^At the post: all \d+\.$/);
      await words(ben, /^At the post: all \d+\.$/);
      const view = await board('board');
      await view.locator('.board-row').nth(1).waitFor();
      await view.locator('.board-row', { hasText: 'With Ada' }).waitFor();
      await expect.poll(() => view.locator('.board-row').first().textContent()).toContain('With Ben');
      expect(await view.locator('.board-row').first().textContent()).toMatch(/red triage criteri/);
      expect(await view.locator('.board-row').nth(1).textContent()).toContain('Pulse 80');
      expect(await view.getByRole('button', { name: 'Make a code' }).count()).toBe(0);

      await view.locator('.board-row', { hasText: 'With Ada' }).getByRole('button').click();
      await view.getByRole('button', { name: 'SOAP' }).click();
      await view.locator('.board-text', { hasText: '120/80' }).waitFor();
      await say(ada, 'left forearm swelling');
      await view.locator('.board-text', { hasText: 'left forearm' }).waitFor();

      await view.getByLabel('Ask Ada').fill('Any numbness in the hand?');
      await view.getByRole('button', { name: 'Ask', exact: true }).click();
      await ada.getByRole('button', { name: 'Team: 1 asked' }).click();
      await ada.getByLabel('Answer to “Any numbness in the hand?”').fill('None so far');
      await inSheet(ada, 'Answer').click();
      await view.getByText('Answered: “None so far”').waitFor();
      await inSheet(ada, 'Close').click();
    });

    it('goes on over a cut: what was said meanwhile waits on the phone, over a reload too, and is then sent', async () => {
      const ada = visits[0]?.page;
      if (ada === undefined) throw new Error('nobody joined');
      await web.close();
      await words(ada, /no connection|No connection/);
      await say(ada, 'right knee tenderness');
      await words(ada, /\d+ wait: no connection/);
      await ada.locator('html[data-kept="all"]').waitFor();
      const before = scene.post.desk.counts.logged;
      await openPostWeb();
      await ada.reload();
      await ready(ada);
      await words(ada, /^At the post: all \d+\.$/);
      expect(scene.post.desk.counts.logged).toBeGreaterThan(before);
      expect(scene.post.desk.devices().flatMap(({ troubles }) => troubles)).toEqual([]);
    });

    it('hands a record from one to the other: who writes next is said on both, and both histories stay', async () => {
      const [ada, ben] = visits.map(({ page }) => page);
      if (ada === undefined || ben === undefined) throw new Error('nobody joined');
      const mine = await sentences(ada);
      // The cut before this was his too.
      await words(ben, /^At the post: all \d+\.$/);
      await ada.getByRole('button', { name: 'Team', exact: true }).click();
      await inSheet(ada, 'Hand it to Ben').click();
      await ada.getByText('Offered to Ben. It stays yours to write until Ben takes it over.').waitFor();
      await inSheet(ada, 'Close').click();
      await ben.getByRole('button', { name: 'Team: an offer' }).click();
      await inSheet(ben, 'Take it over').click();
      await words(ada, /^Ben writes this record now; what is said here is kept apart\./);
      await inSheet(ben, 'Close').click();
      expect(await sentences(ben)).toEqual(mine);
      await say(ben, 'left ankle swelling');
      await words(ben, /^At the post: all \d+\.$/);
      const view = await board('board');
      const row = view.locator('.board-row', { hasText: 'Pulse 80' });
      await expect.poll(() => row.textContent()).toMatch(/begun by Ada.*With Ben\./);
      await row.getByRole('button').click();
      await view
        .getByText(/LEFT ankle|left ankle/)
        .first()
        .waitFor();
      expect(await sentences(ada)).toEqual(mine);
      // What is said on the first phone all the same is kept, and told apart on the board.
      await say(ada, 'right wrist tenderness');
      await expect.poll(() => row.textContent()).toContain('also written to by Ada after it was handed over');
    });

    it('has screens without violation, in every look on a phone, and a board that a keyboard can work', async () => {
      const ada = visits[0]?.page;
      if (ada === undefined) throw new Error('nobody joined');
      const faults: string[] = [];
      // What was done last is said over the head of the page until it is put away.
      await ada.getByRole('button', { name: 'Put away' }).click();
      await ada.setViewportSize({ width: 360, height: 740 });
      for (const look of LOOKS) {
        await ada.evaluate((chosen) => {
          document.documentElement.dataset.look = chosen;
        }, look);
        const found = async (where: string) =>
          faults.push(
            ...[...(await violations(ada)), ...(await tooSmall(ada))].map(
              (one) => `${where} ${look}: ${one}`,
            ),
          );
        await found('bar');
        await ada.getByRole('button', { name: /^Team/ }).click();
        await inSheet(ada, 'Leave the incident …').waitFor();
        await found('sheet');
        await shoot(ada, `link-sheet-${look}`);
        await inSheet(ada, 'Close').click();
        await shoot(ada, `link-bar-${look}`);
      }
      await ada.setViewportSize({ width: 1440, height: 900 });
      const crew = await board('crew');
      await crew.locator('.board-open').first().press('Enter');
      await crew.locator('.board-text').waitFor();
      await crew.getByLabel('Who carries it').fill('Dee');
      await crew.getByRole('button', { name: 'Make a code' }).press('Enter');
      await crew.locator('.board-symbol').waitFor();
      for (const width of [1440, 360]) {
        await crew.setViewportSize({ width, height: 900 });
        faults.push(...(await violations(crew)).map((one) => `board ${width}: ${one}`));
        expect(await crew.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        await shoot(crew, `board-${width}`);
      }
      expect([...new Set(faults)]).toEqual([]);
    });

    it('lets a lost phone in no more, which says so and keeps what it has', async () => {
      const ben = visits[1]?.page;
      if (ben === undefined) throw new Error('nobody joined');
      const crew = await board('crew');
      await crew.getByRole('button', { name: 'Put Ben out …' }).click();
      await crew.getByRole('button', { name: 'Put Ben out for good' }).click();
      await crew.getByText('Ben was put out').waitFor();
      await words(ben, /^Put out of the incident/);
      await say(ben, 'left hip swelling');
      await ben.locator('.panel-entries .entry', { hasText: 'hip' }).waitFor();
      await ben.locator('html[data-kept="all"]').waitFor();
      const text = await crew.locator('.board-device', { hasText: 'Ben' }).textContent();
      expect(text).toContain('PUT OUT');
    });
  },
);
