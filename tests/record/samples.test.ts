// What earlier versions kept is read by this one, whole: samples that those versions wrote themselves. All talk is invented.

import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { FORMAT, fold, migrate, type RecordEvent, stands, statementOf } from '../../src/record/index.ts';
import {
  type Key,
  type Keys,
  listRecords,
  OPEN_KEY,
  openVault,
  readLog,
  type Shelf,
  takeOverOpenRecords,
  unlock,
} from '../../src/record/store/index.ts';
import { mergeRecord, readExport } from '../../src/record/store/transfer/index.ts';
import { type MemoryShelf, memoryShelf } from './store/memory-shelf.ts';

// The rounds of the key take their time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

interface Sample {
  readonly sample: string;
  readonly passphrase?: string;
  readonly rows: readonly { readonly key: Key | string; readonly value: unknown }[];
}

const text = (name: string): string => readFileSync(new URL(`samples/${name}`, import.meta.url), 'utf8');
const sampleOf = (name: string): Sample => JSON.parse(text(name));

const withBytes = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(withBytes);
  if (typeof value !== 'object' || value === null) return value;
  if ('base64' in value) return new Uint8Array(Buffer.from(String(value.base64), 'base64'));
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, withBytes(member)]));
};

/** The shelf as that version left it; a key that is no list is none of the shelf's. */
function shelfOf({ rows }: Sample): MemoryShelf {
  const listed = rows.filter(({ key }) => Array.isArray(key));
  return memoryShelf(new Map(listed.map(({ key, value }) => [JSON.stringify(key), withBytes(value)])));
}

async function unlocked(shelf: Shelf, { passphrase = '' }: Sample): Promise<Keys> {
  expect((await openVault(shelf)).kind).toBe('locked');
  const opened = await unlock(shelf, passphrase, 0);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  return opened.keys;
}

const present = (stored: readonly unknown[]): readonly RecordEvent[] =>
  stored.map((event) => {
    const one = migrate(event);
    if (one.kind === 'refused') throw new Error(one.why);
    return one.event;
  });

const formatsIn = (stored: readonly unknown[]): readonly unknown[] => [
  ...new Set(stored.map((event) => (event as { format: unknown }).format)),
];

/** What the eight lines of talk came to, whichever version heard them. */
function expectTheRecord(stored: readonly unknown[]): void {
  const { entries, utterances } = fold(present(stored));
  expect(utterances).toHaveLength(8);
  const standing = entries.filter(stands).map(statementOf);
  expect(standing).toContainEqual({ kind: 'history', topic: 'name', text: 'Orla Quindelo' });
  const swelling = { kind: 'finding', site: 'forearm', side: 'left', finding: 'swelling', present: true };
  expect(standing).toContainEqual(swelling);
  expect(standing).toContainEqual({
    kind: 'vital',
    vital: 'blood-pressure',
    value: { systolic: 120, diastolic: 80 },
  });
  // Corrected from wrist to forearm, and struck: what was said first is still there, and does not stand.
  const deformity = entries.flatMap((entry) =>
    entry.kind === 'finding' && entry.finding === 'deformity' ? [[entry.site, stands(entry)]] : [],
  );
  expect(deformity).toEqual([
    ['wrist', false],
    ['forearm', true],
  ]);
  expect(entries.find((entry) => entry.kind === 'vital' && entry.vital === 'pulse')?.state).toBe('struck');
  expect(entries.filter(({ state }) => state === 'confirmed')).toHaveLength(1);
}

describe('what the first version kept in the open', () => {
  it('is sealed and chained, read whole, opened at the start, and leaves nothing in the open', async () => {
    const sample = sampleOf('open-rows.json');
    const shelf = shelfOf(sample);
    const opened = await openVault(shelf);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    expect(await takeOverOpenRecords(shelf, opened.keys)).toBe(1);
    const [row] = (await listRecords(shelf, opened.keys)).records;
    const id = row?.facts.id ?? '';
    const log = await readLog(shelf, opened.keys, id);
    expect(log.verdict.faults).toEqual([]);
    expect(formatsIn(log.events)).toEqual([1]);
    expectTheRecord(log.events);
    expect(await shelf.get(OPEN_KEY)).toBe(id);
    expect(JSON.stringify([...shelf.lies])).not.toMatch(/Quindelo|swelling/);
    expect(await takeOverOpenRecords(shelf, opened.keys)).toBe(0);
  });

  it('is whole after a start that was broken off at any write', async () => {
    const sample = sampleOf('open-rows.json');
    const shelf = shelfOf(sample);
    const opened = await openVault(shelf);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    shelf.failNext('aborted');
    await expect(takeOverOpenRecords(shelf, opened.keys)).rejects.toMatchObject({ failure: 'aborted' });
    expect(await takeOverOpenRecords(shelf, opened.keys)).toBe(1);
    const [row] = (await listRecords(shelf, opened.keys)).records;
    expectTheRecord((await readLog(shelf, opened.keys, row?.facts.id ?? '')).events);
  });
});

describe.each([
  ['sealed-format-1.json', 1],
  ['sealed-format-2.json', 2],
] as const)('%s', (name, format) => {
  it('opens with its passphrase, is whole, and becomes the present format', async () => {
    const sample = sampleOf(name);
    const shelf = shelfOf(sample);
    const keys = await unlocked(shelf, sample);
    const [row] = (await listRecords(shelf, keys)).records;
    const log = await readLog(shelf, keys, row?.facts.id ?? '');
    expect(log.verdict.faults).toEqual([]);
    expect(log.events.length).toBeGreaterThan(15);
    expect(formatsIn(log.events)).toEqual([format]);
    expect(present(log.events).every((event) => event.format === FORMAT)).toBe(true);
    expectTheRecord(log.events);
  });

  it('holds none of its words in the open', () => {
    const { sample, ...kept } = sampleOf(name);
    expect(sample).toContain('Invented');
    const bytes = JSON.stringify(kept, (_key, value) =>
      typeof value === 'object' && value !== null && 'base64' in value
        ? Buffer.from(String(value.base64), 'base64').toString('latin1')
        : value,
    );
    expect(bytes).not.toMatch(/Quindelo|swelling|forearm/);
  });
});

describe('an export of an earlier version', () => {
  it('is read without a fault and taken in whole', async () => {
    const read = await readExport(text('sealed-format-2.export.json'), 'a kettle for the long descent');
    if (read.kind !== 'bundle') throw new Error(read.why);
    expect(read.faults).toEqual([]);
    const [coming] = read.records;
    if (coming === undefined) throw new Error('no record');
    const shelf = memoryShelf();
    const opened = await openVault(shelf);
    if (opened.kind !== 'open') throw new Error(opened.kind);
    const merged = await mergeRecord(shelf, opened.keys, coming);
    expect(merged).toEqual({ added: coming.rows.length, here: 0, differ: [] });
    const log = await readLog(shelf, opened.keys, coming.facts.id);
    expect(log.verdict.faults).toEqual([]);
    expectTheRecord(log.events);
  });
});

describe('every format there ever was', () => {
  it('has a kept sample', () => {
    const kept = ['open-rows.json', 'sealed-format-1.json', 'sealed-format-2.json'];
    expect(kept.every((name) => sampleOf(name).rows.length > 0)).toBe(true);
    // When the format grows, a sample of the present one must be kept first.
    expect(FORMAT).toBe(2);
  });
});
