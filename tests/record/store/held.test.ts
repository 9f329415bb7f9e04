// A record as it is held in memory, written as a file and squeezed for symbols: it comes out as it went in, or not at all.

import { describe, expect, it, vi } from 'vitest';
import { appendToLog, emptyEnd, openVault } from '../../../src/record/store/index.ts';
import {
  exportHeld,
  exportRecords,
  isSealed,
  readExport,
  squeeze,
  unsqueeze,
} from '../../../src/record/store/transfer/index.ts';
import { finding, hearAll, pulse } from '../fake-reader.ts';
import { memoryShelf } from './memory-shelf.ts';

vi.setConfig({ testTimeout: 60_000 });

/** Invented, like everything in these tests. */
const WORDS = 'seven wet ropes uphill';
const { events } = hearAll({ 'left wrist swelling': [finding()], 'pulse ninety two': [pulse(92)] });
const facts = { id: 'r1', kind: 'live', title: '', startedAt: '2026-05-03T14:02:00-06:00' } as const;
const held = { facts, summary: { name: '' }, events };

async function file(passphrase: string): Promise<string> {
  const made = await exportHeld(held, passphrase);
  if (made.kind !== 'file') throw new Error(made.why);
  return made.text;
}

const eventsIn = async (text: string, passphrase: string): Promise<unknown> => {
  const read = await readExport(text, passphrase);
  return read.kind === 'bundle' ? read.records[0]?.rows.map(({ event }) => event) : read.why;
};

/** The second and third event in each other's places. */
function swapped(text: string): string {
  const bundle = JSON.parse(text) as { records: { rows: { event: unknown }[] }[] };
  const rows = bundle.records[0]?.rows ?? [];
  const [, second, third] = rows.map(({ event }) => event);
  for (const [index, event] of [
    [1, third],
    [2, second],
  ] as const) {
    const row = rows[index];
    if (row !== undefined) row.event = event;
  }
  return JSON.stringify(bundle);
}

describe('a record that is held', () => {
  it('is written open where no passphrase is wanted, and read without one', async () => {
    const text = await file('');
    expect(isSealed(text)).toBe(false);
    expect(await eventsIn(text, '')).toEqual(events);
  });

  it('is sealed by a passphrase, opens with it alone, and is never sealed twice alike', async () => {
    const [text, other] = [await file(WORDS), await file(WORDS)];
    expect(isSealed(text)).toBe(true);
    expect(text).not.toMatch(/wrist|swelling|2026/);
    expect(text).not.toBe(other);
    expect(await eventsIn(text, ` ${WORDS} `)).toEqual(events);
    expect(await eventsIn(text, `${WORDS}!`)).toMatch(/passphrase/);
  });

  it('is not sealed by a number', async () => {
    expect((await exportHeld(held, '4711')).kind).toBe('refused');
  });

  it('names the same end of its log as the one on the disk', async () => {
    const shelf = memoryShelf();
    const opened = await openVault(shelf);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    const end = await appendToLog(shelf, opened.keys, await emptyEnd('r1'), {
      facts,
      summary: {},
      events,
      open: true,
    });
    const stored = await exportRecords(shelf, opened.keys, ['r1'], WORDS);
    if (stored.kind !== 'file') throw new Error(stored.why);
    const [one, other] = [await readExport(await file(''), ''), await readExport(stored.text, WORDS)];
    if (one.kind !== 'bundle' || other.kind !== 'bundle') throw new Error('refused');
    expect(one.records[0]?.head).toEqual(end);
    expect(other.records[0]?.head).toEqual(end);
  });

  it.each([
    ['an event that was altered', (text: string) => text.replace('left wrist', 'right wrist')],
    ['an event that was taken out', (text: string) => text.replace(/\{"place":2,.*?\}(?=,\{"place":3)/s, '')],
    ['two events that changed places', swapped],
  ])('is refused with %s', async (_, alter) => {
    const text = await file('');
    expect(alter(text)).not.toBe(text);
    const read = await readExport(alter(text).replace(',,', ','), '');
    expect(read.kind === 'bundle' ? read.records : []).toEqual([]);
  });
});

describe('a squeezed text', () => {
  it('comes out as it went in, in fewer bytes', async () => {
    const text = await file('');
    const bytes = await squeeze(text);
    expect(bytes.length).toBeLessThan(text.length / 2);
    expect(await unsqueeze(bytes)).toBe(text);
  });

  it('that was cut, or is none, gives nothing', async () => {
    const bytes = await squeeze(await file(''));
    expect(await unsqueeze(bytes.slice(0, -3))).toBeNull();
    expect(await unsqueeze(Uint8Array.of(1, 0, 7))).toBeNull();
    expect(await unsqueeze(Uint8Array.of())).toBeNull();
  });

  it('that would swell beyond any record is refused', async () => {
    expect(await unsqueeze(await squeeze(' '.repeat(64_000_001)))).toBeNull();
  });
});
