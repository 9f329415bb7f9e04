// A record passed on without a network: an independent decoder reads the symbols that the page shows, and another page
// takes the record through a camera or as a file. All of it is invented.

import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import {
  type Bundle,
  COARSE_BYTES,
  type Collection,
  framesOf,
  missingParts,
  takeFrame,
  wholeOf,
} from '../../src/handoff/index.ts';
import { isSealed, readExport, squeeze, unsqueeze } from '../../src/record/store/transfer/index.ts';
import { squaresOf } from '../../src/screens/qr/symbol.ts';
import { faultsOf, typed } from '../outside/fhir-validator.ts';
import { arrivals } from './arrival.ts';
import { ready, say, sentences, visit } from './visit.ts';
import { filmOf, pictureOf } from './y4m.ts';

/** Debian's zbar-tools, a decoder that shares no code with ours. */
const ZBARIMG = '/usr/bin/zbarimg';

const { arrive, settle } = arrivals();
let folder: string;

beforeAll(() => {
  if (!existsSync(ZBARIMG)) throw new Error(`no ${ZBARIMG}: apt-get install zbar-tools`);
  folder = mkdtempSync(join(tmpdir(), 'fieldsay-frames-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const TALK = [
  'left forearm, deformity and swelling',
  'no tenderness of the pelvis',
  'the marmots were unimpressed by the dark brown ropes and by each of the nine zippers',
  'pulse one twelve',
];
const TOLD = [
  'LEFT forearm: deformity',
  'LEFT forearm: swelling',
  'Pelvis: tenderness: NO',
  'Pulse 112',
  'Kept as said: “the marmots were unimpressed by the dark brown ropes and by each of the nine zippers”',
];

const inSheet = (page: Page, name: string | RegExp) => page.getByRole('dialog').getByRole('button', { name });

async function shown(passphrase: string): Promise<Page> {
  const { page } = await arrive();
  for (const line of TALK) await say(page, line);
  await page.getByRole('button', { name: 'QR or file' }).click();
  await page.getByLabel('Passphrase, if you want one').fill(passphrase);
  await inSheet(page, 'Show the symbols').click();
  await page.locator('canvas.symbol').waitFor();
  return page;
}

/** Each symbol that the page shows, photographed and read by the other decoder. */
async function readByOther(page: Page): Promise<readonly string[]> {
  await inSheet(page, 'Hold still').click();
  const symbol = page.locator('canvas.symbol');
  const [, of = '0'] = /of (\d+)/.exec((await symbol.getAttribute('aria-label')) ?? '') ?? [];
  const texts: string[] = [];
  for (let part = 1; part <= Number(of); part += 1) {
    await page.getByLabel(/^Only these parts/).fill(`${part}`);
    await page.locator(`canvas[aria-label="Part ${part} of ${of}"]`).waitFor();
    const file = join(folder, `part-${part}.png`);
    await symbol.screenshot({ path: file });
    texts.push(
      execFileSync(ZBARIMG, ['--quiet', '--nodbus', '--raw', file], { encoding: 'utf8' }).replace(/\n$/, ''),
    );
  }
  return texts;
}

const together = (texts: readonly string[]): Collection => {
  const made = texts.reduce<Collection | null>((before, text) => {
    const taken = takeFrame(before, text);
    return taken.kind === 'new' ? taken.collection : before;
  }, null);
  if (made === null) throw new Error('not one frame was read');
  return made;
};

async function fileOf(page: Page): Promise<Buffer> {
  const [saved] = await Promise.all([page.waitForEvent('download'), inSheet(page, 'Save as a file').click()]);
  const file = join(folder, 'saved-record.json');
  await saved.saveAs(file);
  return readFileSync(file);
}

describe('the symbols on the screen', () => {
  it('are read by an independent decoder, and their bytes are the record’s', async () => {
    const page = await shown('');
    const saved = await fileOf(page);
    const collection = together(await readByOther(page));
    expect(missingParts(collection)).toEqual([]);
    const whole = wholeOf(collection);
    if (whole.kind !== 'whole') throw new Error(whole.kind);
    const text = (await unsqueeze(whole.bytes)) ?? '';
    expect(text).toBe(saved.toString('utf8'));
    const read = await readExport(text, '');
    if (read.kind !== 'bundle') throw new Error(read.why);
    expect(read.faults).toEqual([]);
    const events = read.records.flatMap(({ rows }) => rows.map(({ event }) => event)) as unknown as readonly {
      kind: string;
      payload: { text?: string };
    }[];
    expect(events.filter(({ kind }) => kind === 'utterance').map(({ payload }) => payload.text)).toEqual(
      TALK,
    );
  });

  it('tell nothing to whoever lacks the passphrase', async () => {
    const page = await shown('seven wet ropes uphill');
    const whole = wholeOf(together(await readByOther(page)));
    if (whole.kind !== 'whole') throw new Error(whole.kind);
    const text = (await unsqueeze(whole.bytes)) ?? '';
    expect(isSealed(text)).toBe(true);
    expect(text).not.toContain('marmots');
    expect((await readExport(text, 'seven wet ropes downhill')).kind).toBe('refused');
    expect(await readExport(text, 'seven wet ropes uphill')).toMatchObject({ kind: 'bundle', faults: [] });
  });

  it('are not shown behind a passphrase that is a number alone', async () => {
    const { page } = await arrive();
    await say(page, 'pulse ninety');
    await page.getByRole('button', { name: 'QR or file' }).click();
    await page.getByLabel('Passphrase, if you want one').fill('4711');
    await inSheet(page, 'Show the symbols').click();
    await page.getByText('A number alone is refused').waitFor();
    expect(await page.locator('canvas.symbol').count()).toBe(0);
  });
});

describe('a record that was passed on', () => {
  it('says so in its log: how, when, and whether it took a passphrase', async () => {
    const page = await shown('seven wet ropes uphill');
    await fileOf(page);
    await inSheet(page, 'Close').click();
    await page.getByRole('button', { name: 'Read over the radio' }).click();
    await page.getByRole('region', { name: 'Sent so far' }).waitFor();
    const sent = await page
      .getByRole('region', { name: 'Sent so far' })
      .getByRole('listitem')
      .allInnerTexts();
    expect(sent).toEqual([
      expect.stringMatching(/\d\d:\d\d\s+Saved as a file, under a passphrase/),
      expect.stringMatching(/\d\d:\d\d\s+Shown as QR symbols, under a passphrase/),
    ]);
  });

  it('and is sealed as a file is asked for its passphrase where it comes in, and says when it came', async () => {
    const page = await shown('seven wet ropes uphill');
    const bytes = await fileOf(page);
    await settle();
    const { page: other } = await arrive();
    await other.getByRole('button', { name: 'Receive a record' }).click();
    await other
      .getByLabel('A file that was saved or shared')
      .setInputFiles({ name: 'made-up.json', mimeType: 'application/json', buffer: bytes });
    await other.getByLabel('Passphrase').fill('seven wet ropes downhill');
    await inSheet(other, 'Open it').click();
    await other.getByText('The passphrase is not that of the file').waitFor();
    await other.getByLabel('Passphrase').fill('seven wet ropes uphill');
    await inSheet(other, 'Open it').click();
    await other.getByText(/^The record was received: \d+ events/).waitFor();
    await inSheet(other, 'Close').click();
    expect(await sentences(other)).toEqual(TOLD);
    await other.getByRole('button', { name: 'Read over the radio' }).click();
    await other.getByText(/Received as a file: \d+ events/).waitFor();
  });
});

describe('where the device can share files', () => {
  it('the record is shared as one, and the log says so; a person who closes the list shares nothing', async () => {
    const { page } = await arrive({
      before: () => {
        const shared: string[] = [];
        Object.assign(window, { shared });
        Object.assign(navigator, {
          canShare: ({ files }: { files: readonly File[] }) => files.length === 1,
          share: async ({ files: [file] }: { files: readonly File[] }) => {
            if (shared.length > 0) throw new DOMException('closed', 'AbortError');
            shared.push(`${file?.name} ${await file?.text()}`);
          },
        });
      },
    });
    await say(page, 'left forearm, deformity');
    await page.getByRole('button', { name: 'QR or file' }).click();
    await inSheet(page, 'Show the symbols').click();
    await inSheet(page, 'Share as a file').click();
    await page.waitForFunction(() => (window as unknown as { shared: string[] }).shared.length === 1);
    await inSheet(page, 'Share as a file').click();
    const [shared = ''] = await page.evaluate(() => (window as unknown as { shared: string[] }).shared);
    expect(shared).toMatch(/^fieldsay-[0-9a-f]{8}\.json /);
    expect(await readExport(shared.slice(shared.indexOf('{')), '')).toMatchObject({
      kind: 'bundle',
      faults: [],
    });
    expect(await page.getByRole('alert').count()).toBe(0);
    await inSheet(page, 'Close').click();
    await page.getByRole('button', { name: 'Read over the radio' }).click();
    await page.getByRole('region', { name: 'Sent so far' }).waitFor();
    const sent = await page
      .getByRole('region', { name: 'Sent so far' })
      .getByRole('listitem')
      .allInnerTexts();
    expect(sent.filter((line) => line.includes('Shared as a file'))).toHaveLength(1);
  });
});

describe('the document for a hospital’s system', () => {
  it('is valid FHIR R4 and says how it was confirmed', async () => {
    const { page } = await arrive();
    for (const line of TALK) await say(page, line);
    await say(page, 'confirmed');
    await page.getByRole('button', { name: 'QR or file' }).click();
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      inSheet(page, /^Save for a hospital/).click(),
    ]);
    const file = join(folder, 'saved.json');
    await saved.saveAs(file);
    const bundle = JSON.parse(readFileSync(file, 'utf8')) as Bundle;
    expect(faultsOf(typed(bundle))).toEqual([]);
    const resources = bundle.entry.map(({ resource }) => resource);
    expect(resources[0]?.resourceType).toBe('Composition');
    const encounter = resources.find((one) => one.resourceType === 'Encounter');
    expect(encounter).toMatchObject({ class: { code: 'FLD' } });
    const confirmed = resources.filter(
      (one) => one.resourceType === 'Provenance' && JSON.stringify(one).includes('Confirmed by voice'),
    );
    expect(confirmed).toHaveLength(1);
  });
});

describe('a file that was passed on', () => {
  it('becomes a record on another device, and a second time adds nothing and overwrites nothing', async () => {
    const bytes = await fileOf(await shown(''));
    const file = { name: 'made-up.json', mimeType: 'application/json', buffer: bytes };
    await settle();
    const { page } = await arrive();
    const receive = async () => {
      await page.getByRole('button', { name: 'Receive a record' }).click();
      await page.getByLabel('A file that was saved or shared').setInputFiles(file);
    };
    await receive();
    await page.getByText(/^The record was received: \d+ events/).waitFor();
    await inSheet(page, 'Close').click();
    expect(await sentences(page)).toEqual(TOLD);
    await say(page, 'right knee swelling');
    await page.locator('html[data-kept="all"]').waitFor();
    await receive();
    await page.getByText('0 events were added, none was overwritten').waitFor();
    await inSheet(page, 'Close').click();
    expect(await sentences(page)).toEqual([...TOLD.slice(0, 3), 'RIGHT knee: swelling', ...TOLD.slice(3)]);
  });

  it('that is altered is refused with the reason, and nothing changes', async () => {
    const { page } = await arrive();
    await say(page, 'right knee swelling');
    await page.getByRole('button', { name: 'Receive a record' }).click();
    await page.getByLabel('A file that was saved or shared').setInputFiles({
      name: 'odd.json',
      mimeType: 'application/json',
      buffer: Buffer.from([1, 0, 7]),
    });
    await page.getByText('The file is no export: it is no JSON, or was cut off.').waitFor();
    await inSheet(page, 'Close').click();
    expect(await sentences(page)).toEqual(['RIGHT knee: swelling']);
  });
});

describe('the camera of another device', () => {
  it('reads the symbols, names what is missing, and opens the record', async () => {
    const bytes = await fileOf(await shown(''));
    await settle();
    const frames = framesOf(await squeeze(bytes.toString('utf8')), COARSE_BYTES);
    expect(frames.length).toBeGreaterThan(2);
    // A film in which one part comes only at the end of each round, so that it is missing for a while.
    const side = 480;
    const pictures = frames.flatMap(
      (text) => Array(5).fill(pictureOf(squaresOf(text), side)) as Uint8Array[],
    );
    const film = join(folder, 'symbols.y4m');
    writeFileSync(film, filmOf(pictures, side, side, 10));
    const filming = await chromium.launch({
      executablePath: inject('chromium'),
      headless: true,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--use-fake-ui-for-media-stream',
        '--use-fake-device-for-media-stream',
        `--use-file-for-fake-video-capture=${film}`,
      ],
    });
    const { page, complaints, foreign, leave } = await visit(filming);
    try {
      await page.getByRole('button', { name: 'Receive a record' }).click();
      await inSheet(page, 'Look with the camera').click();
      await page.getByText(/Missing: /).waitFor();
      await page.getByText(/^The record was received: \d+ events/).waitFor();
      await inSheet(page, 'Close').click();
      expect(await sentences(page)).toEqual(TOLD);
      await page.locator('html[data-kept="all"]').waitFor();
      await page.reload();
      await ready(page);
      expect(await sentences(page)).toEqual(TOLD);
      await leave();
    } finally {
      await filming.close();
      expect({ complaints, foreign }).toEqual({ complaints: [], foreign: [] });
    }
  });
});
