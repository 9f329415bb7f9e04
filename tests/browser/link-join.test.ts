// Joining in Chromium by camera and by file: what is no code is said and passed over, and a code that the post does not know
// joins nothing and keeps everything. Names are invented.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { encodeQR } from 'qr';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import type { Web } from '../../src/post/web/serve.ts';
import { openWeb } from '../../src/post/web/web.ts';
import { freePorts, HINDRANCE, openScene, type Scene } from '../post/scene.ts';
import { ARGUMENTS, say, startBrowser, type Visit, visit } from './visit.ts';
import { filmOf, pictureOf } from './y4m.ts';

const SIDE = 480;
const symbol = (text: string): Uint8Array =>
  pictureOf(encodeQR(text, 'raw', { ecc: 'medium', border: 4 }), SIDE);
const words = (page: Page, text: string | RegExp) =>
  expect.poll(() => page.locator('.link-text').textContent(), { timeout: 40_000 }).toMatch(text);
const inSheet = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

describe.skipIf(HINDRANCE !== '')(`joining${HINDRANCE === '' ? '' : ` (${HINDRANCE})`}`, () => {
  let browser: Browser;
  let scene: Scene;
  let web: Web;
  let address: string;
  let folder: string;
  let here: Visit | null = null;
  const ends: (() => Promise<unknown>)[] = [];

  beforeAll(async () => {
    browser = await startBrowser();
    folder = mkdtempSync(join(tmpdir(), 'fieldsay-codes-'));
    const ports = await freePorts();
    address = `http://localhost:${ports.client + 5}/`;
    scene = await openScene({ ports, address });
    web = await openWeb(scene.post, {
      folder: inject('built'),
      host: 'localhost',
      port: ports.client + 5,
      clock: Date.now,
    });
  });
  afterEach(async () => {
    const { complaints = [], foreign = [] } = here ?? {};
    await here?.leave();
    here = null;
    for (const end of ends.splice(0).reverse()) await end();
    expect({ complaints, foreign }).toEqual({ complaints: [], foreign: [] });
  });
  afterAll(async () => {
    await web?.close();
    await scene?.end();
    await browser?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const openSheet = async (by: Browser = browser): Promise<Page> => {
    here = await visit(by, { address });
    const { page } = here;
    await page.getByRole('button', { name: 'Records', exact: true }).click();
    await page.getByRole('button', { name: 'One incident with others: the team link' }).click();
    return page;
  };
  const openFile = (page: Page, text: string): Promise<void> =>
    page
      .getByLabel('Or a file with the code')
      .setInputFiles({ name: 'join.txt', mimeType: 'text/plain', buffer: Buffer.from(text) });

  it('by camera passes over a symbol that is no code, says so, and takes the code that comes after it', async () => {
    const { text } = await scene.post.issue('Ada');
    const film = join(folder, 'codes.y4m');
    const wrong = symbol('an invented label of a crate');
    // The film goes round; the wrong symbol stands long enough to be read on a busy machine.
    writeFileSync(
      film,
      filmOf(
        [...Array<Uint8Array>(25).fill(wrong), ...Array<Uint8Array>(25).fill(symbol(text))],
        SIDE,
        SIDE,
        5,
      ),
    );
    const filming = await chromium.launch({
      executablePath: inject('chromium'),
      headless: true,
      args: [
        ...ARGUMENTS,
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${film}`,
      ],
    });
    ends.push(() => filming.close());
    const page = await openSheet(filming);
    // The code may stand before the camera first; then the wrong symbol was never seen.
    await inSheet(page, 'Scan the code').click();
    await page
      .getByText('This is no code to join an incident')
      .or(page.getByRole('button', { name: 'Join the incident' }))
      .first()
      .waitFor();
    await inSheet(page, 'Join the incident').click();
    await inSheet(page, 'Close').click();
    await words(page, /^Team: nothing to send yet/);
    await say(page, 'left forearm swelling');
    await words(page, /^At the post: all \d+\.$/);
  });

  it('by camera says of a symbol that is none what is wrong, and goes on looking', async () => {
    const film = join(folder, 'wrong.y4m');
    writeFileSync(film, filmOf(Array<Uint8Array>(10).fill(symbol(`${address}#join=cut`)), SIDE, SIDE, 5));
    const filming = await chromium.launch({
      executablePath: inject('chromium'),
      headless: true,
      args: [
        ...ARGUMENTS,
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${film}`,
      ],
    });
    ends.push(() => filming.close());
    const page = await openSheet(filming);
    await inSheet(page, 'Scan the code').click();
    await page.getByText('This is no code to join an incident: it was cut off or mistyped.').waitFor();
    expect(await page.getByLabel('What the camera sees').count()).toBe(1);
    expect(await inSheet(page, 'Join the incident').count()).toBe(0);
  });

  it('by file joins; a file that is none is said, and the next one is read', async () => {
    const { text } = await scene.post.issue('Ben');
    const page = await openSheet();
    await openFile(page, 'an invented shopping list');
    await page.getByText('This is no code to join an incident: it has no part after').waitFor();
    await openFile(page, text.slice(0, -20));
    await page.getByText('This is no code to join an incident').waitFor();
    await openFile(page, `${text}\n`);
    await page.getByText(/Join incident .* as Ben\?/).waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    await inSheet(page, 'Join the incident').click();
    await inSheet(page, 'Close').click();
    await words(page, /^Team: nothing to send yet/);
  });

  it('with a code of a post elsewhere says where to open the page, and joins nothing', async () => {
    const { text } = await scene.post.issue('Cyd');
    const page = await openSheet();
    await openFile(page, text.replace(address, 'https://post.invalid/'));
    await page.getByText('The post of this incident is at https://post.invalid/').waitFor();
    expect(await inSheet(page, 'Join the incident').count()).toBe(0);
  });

  it('with a code of another incident, or of a device that was put out, is refused in plain words and keeps what is said', async () => {
    const other = await openScene({ address });
    const { text: foreign } = await other.post.issue('Dee');
    await other.end();
    const { text: old, device } = await scene.post.issue('Eve');
    await scene.post.putOut(device);
    for (const text of [foreign, old]) {
      const page = await openSheet();
      await openFile(page, text);
      await inSheet(page, 'Join the incident').click();
      await inSheet(page, 'Close').click();
      await words(page, /^The post does not let this phone in\./);
      await say(page, 'left forearm swelling');
      await page.locator('.panel-entries .entry', { hasText: 'swelling' }).waitFor();
      await page.getByRole('button', { name: 'Team', exact: true }).click();
      await page.getByText(/The code is of another incident, or its phone was put out/).waitFor();
      await here?.leave();
    }
    expect(scene.post.desk.devices().find((one) => one.device === device)).toMatchObject({ here: 0 });
  });
});
