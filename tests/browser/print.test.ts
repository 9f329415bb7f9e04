// The record as the browser prints it: an independent reader of PDF finds every confirmed entry, on A4 and on Letter.

import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { printedRecord } from '../../src/handoff/index.ts';
import { demoInput } from '../handoff/demo-input.ts';
import { arrivals } from './arrival.ts';
import { playAll, say } from './visit.ts';

const PDFTOTEXT = '/usr/bin/pdftotext';

const { arrive } = arrivals();
let folder: string;

beforeAll(() => {
  if (!existsSync(PDFTOTEXT)) throw new Error(`no ${PDFTOTEXT}: apt-get install poppler-utils`);
  folder = mkdtempSync(join(tmpdir(), 'fieldsay-paper-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
/** Invented talk: no such patient. What each line must read as on paper stands beside it. */
const CONFIRMED: readonly (readonly [said: string, printed: readonly string[]])[] = [
  ['his name is Brann Oskeld', ['Brann Oskeld']],
  ['left forearm, deformity and swelling', ['Forearm deformity swelling']],
  ['no tenderness or crepitus of the right ribs', ['NO tenderness or crepitus']],
  ['right thigh, laceration ten centimetres', ['Thigh', '10 cm laceration']],
  ['tourniquet on the right thigh', ['Tourniquet', 'Right thigh']],
  ['CSM intact in the right hand', ['circulation intact sensation intact motion intact']],
  ['pulse one twelve', ['112']],
  ['blood pressure ninety eight over sixty', ['98/60']],
  ['GCS eyes three, verbal four, motor six', ['E3, V4, M6, total 13']],
  ['allergies, penicillin', ['Allergies: penicillin']],
];

const read = (file: string, ...how: readonly string[]): string =>
  execFileSync(PDFTOTEXT, [...how, file, '-'], { encoding: 'utf8' });

/** All the words in the order they are read, every run of space as one. */
const words = (file: string): string => read(file).replace(/\s+/g, ' ');

async function paper(page: Page, format: 'A4' | 'Letter'): Promise<string> {
  await page.getByRole('button', { name: 'Print or PDF' }).click();
  await page.locator('html[data-paper="there"]').waitFor();
  const file = join(folder, `${format}.pdf`);
  await page.pdf({ path: file, format });
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  return file;
}

async function examined(): Promise<Page> {
  const { page } = await arrive();
  for (const [line] of CONFIRMED) {
    await say(page, line);
    // Once for what goes together, once more for the second of two negatives.
    await say(page, 'confirmed');
    await say(page, 'confirmed');
  }
  await say(page, 'left knee swelling');
  await say(page, 'make that the right');
  return page;
}

describe.each(['A4', 'Letter'] as const)('a record on %s', (format) => {
  it('holds every confirmed entry, what is unconfirmed with its mark, what was corrected, and the record’s name', async () => {
    const page = await examined();
    const file = await paper(page, format);
    const text = words(file);
    const missing = CONFIRMED.flatMap(([, printed]) => printed).filter((one) => !text.includes(one));
    expect(missing).toEqual([]);
    expect(text).toMatch(/Knee .*swelling †/);
    expect(text).toContain('LEFT knee: swelling');
    expect(text).toContain('Not examined:');
    expect(text).toMatch(/Page 1 of \d+/);
    expect(text).toMatch(
      /Record [0-9a-f-]{36}\. SHA-256 of its \d+ events, each chained to the one before: [0-9a-f]{64}/,
    );
    // Nothing of the page around it is on paper.
    expect(text).not.toContain('Dictation');
  });
});

describe('the invented fall on paper', () => {
  it('has every statement that the record’s paper is made of, each in one run of words', async () => {
    const { page } = await arrive();
    await playAll(page, 'Fall on wet rock');
    const text = read(await paper(page, 'A4'), '-raw').replace(/\s+/g, ' ');
    const { sections } = printedRecord(demoInput('ridge-fall'));
    const statements = sections.flatMap(({ lines, tables }) => [
      ...lines.filter(({ entries }) => entries.length > 0),
      ...tables.flatMap(({ rows }) => rows.flat(2)),
    ]);
    expect(statements.length).toBeGreaterThan(150);
    const missing = statements.filter((one) => !text.includes(one.text.replace(/\s+/g, ' ')));
    expect(missing.map((one) => one.text)).toEqual([]);
  });
});

describe('the columns on paper', () => {
  it('hold the left at the left and the right at the right', async () => {
    const page = await examined();
    const lines = read(await paper(page, 'A4'), '-layout').split('\n');
    const row = lines.find((line) => /^\s*Forearm/.test(line)) ?? '';
    const head =
      lines.slice(0, lines.indexOf(row)).findLast((line) => /Place\s+Left\s+Right/.test(line)) ?? '';
    const at = row.indexOf('deformity');
    expect(at).toBeGreaterThanOrEqual(head.indexOf('Left') - 1);
    expect(at).toBeLessThan(head.indexOf('Right') - 1);
    const ribs = lines.find((line) => /^\s*Ribs/.test(line)) ?? '';
    expect(ribs.indexOf('NO tenderness')).toBeGreaterThanOrEqual(head.indexOf('Right') - 1);
  });
});

describe.each(['A4', 'Letter'] as const)('no page of a long record on %s', (format) => {
  it('ends with the head of a table that has no row under it', async () => {
    const { page } = await arrive();
    await playAll(page, 'Fall on wet rock');
    const pages = read(await paper(page, format), '-layout').split('\f');
    const last = pages.map((text) =>
      text
        .trimEnd()
        .split('\n')
        .filter((line) => line.trim() !== '')
        .at(-2),
    );
    expect(last.length).toBeGreaterThan(5);
    expect(last.filter((line) => /^\s*(Place|Time|Heard)\s{3,}/.test(line ?? ''))).toEqual([]);
  });
});
