// Out and in again: what is exported comes in whole, adds and never overwrites, and a faulty file is named and not taken.

import { describe, expect, it, vi } from 'vitest';
import { fold, migrate } from '../../../src/record/index.ts';
import {
  appendToLog,
  emptyEnd,
  type Keys,
  listRecords,
  openVault,
  readLog,
  type Shelf,
} from '../../../src/record/store/index.ts';
import {
  exportRecords,
  mergeRecord,
  readBundle,
  readExport,
} from '../../../src/record/store/transfer/index.ts';
import { seeded } from '../../seeded.ts';
import { finding, hearAll, pulse } from '../fake-reader.ts';
import { memoryShelf } from './memory-shelf.ts';

/** Invented, like everything in these tests. */
const PASSPHRASE = 'a kettle for the long descent';
vi.setConfig({ testTimeout: 120_000 });

const { events } = hearAll({
  'left wrist swelling': [finding()],
  'pulse ninety two': [pulse(92)],
  'both of them': [finding({ side: 'right' }), pulse(94)],
});
const FACTS = { id: 'r1', kind: 'live', title: '', startedAt: '2026-05-03T14:02:00-06:00' } as const;

async function device(): Promise<{ shelf: Shelf; keys: Keys }> {
  const shelf = memoryShelf();
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  return { shelf, keys: opened.keys };
}

async function withRecord(count = events.length) {
  const one = await device();
  const addition = { facts: FACTS, summary: { name: '' }, events: events.slice(0, count), open: true };
  await appendToLog(one.shelf, one.keys, await emptyEnd('r1'), addition);
  return one;
}

async function exported(): Promise<string> {
  const { shelf, keys } = await withRecord();
  const file = await exportRecords(shelf, keys, ['r1'], PASSPHRASE);
  if (file.kind !== 'file') throw new Error(file.why);
  return file.text;
}

async function bundle(text: string) {
  const read = await readExport(text, PASSPHRASE);
  if (read.kind !== 'bundle') throw new Error(read.why);
  return read;
}

describe('an exported file', () => {
  it('comes in whole on another device, and adds nothing the second time', async () => {
    const text = await exported();
    expect(text).not.toMatch(/swelling|wrist|2026/);
    const { shelf, keys } = await device();
    const { records, faults } = await bundle(text);
    expect(faults).toEqual([]);
    for (const one of records)
      expect(await mergeRecord(shelf, keys, one)).toEqual({ added: events.length, here: 0, differ: [] });
    const log = await readLog(shelf, keys, 'r1');
    expect([log.events, log.verdict.faults]).toEqual([events, []]);
    for (const one of records)
      expect(await mergeRecord(shelf, keys, one)).toEqual({ added: 0, here: events.length, differ: [] });
    expect((await listRecords(shelf, keys)).records).toHaveLength(1);
  });

  it('holds all records where all are wanted, what is whole of a damaged one too', async () => {
    const one = await withRecord();
    const addition = { facts: { ...FACTS, id: 'r2' }, summary: {}, events, open: true };
    await appendToLog(one.shelf, one.keys, await emptyEnd('r2'), addition);
    await one.shelf.write({ put: [{ key: ['row', 'r2', 2], value: 'nonsense' }] });
    const file = await exportRecords(one.shelf, one.keys, ['r1', 'r2'], PASSPHRASE);
    expect(file).toMatchObject({ kind: 'file', records: 2 });
    const other = await device();
    const { records, faults } = await bundle(file.kind === 'file' ? file.text : '');
    expect(faults).toEqual([]);
    for (const coming of records) await mergeRecord(other.shelf, other.keys, coming);
    expect((await readLog(other.shelf, other.keys, 'r1')).events).toEqual(events);
    const whole = events.filter((_event, index) => index !== 1);
    expect((await readLog(other.shelf, other.keys, 'r2')).events).toEqual(whole);
    // The damaged row lies where it lay.
    expect(await one.shelf.get(['row', 'r2', 2])).toBe('nonsense');
  });

  it('merges into the record that is here, and overwrites no event of it', async () => {
    const { shelf, keys } = await device();
    const mine = events
      .slice(0, 3)
      .map((event, index) => (index === 2 ? { ...event, time: '2026-05-03T15:00:00Z' } : event));
    await appendToLog(shelf, keys, await emptyEnd('r1'), {
      facts: FACTS,
      summary: {},
      events: mine,
      open: false,
    });
    const [coming] = (await bundle(await exported())).records;
    if (coming === undefined) throw new Error('no record');
    const merged = await mergeRecord(shelf, keys, coming);
    expect(merged).toEqual({ added: events.length - 3, here: 3, differ: [events[2]?.id] });
    const log = await readLog(shelf, keys, 'r1');
    expect(log.events).toEqual([...mine, ...events.slice(3)]);
    expect(log.verdict.faults).toEqual([]);
  });

  it('opens with its own passphrase only, and is not made with a PIN', async () => {
    const { shelf, keys } = await withRecord();
    expect((await exportRecords(shelf, keys, ['r1'], '123456')).kind).toBe('refused');
    const wrong = await readExport(await exported(), 'quite another row of words');
    expect(wrong).toMatchObject({ kind: 'refused', why: expect.stringContaining('passphrase') });
  });

  it.each([
    [
      'payload.heardAt',
      (event: Record<string, unknown>) => ({
        ...event,
        payload: { ...(event.payload as object), heardAt: 'noon' },
      }),
    ],
    ['seq', (event: Record<string, unknown>) => ({ ...event, seq: 'two' })],
    ['format', (event: Record<string, unknown>) => ({ ...event, format: 99 })],
  ])('with a wrong %s says which field of which event it is', async (field, spoil) => {
    const { records } = await bundle(await exported());
    const spoilt = records.map((one) => ({
      ...one,
      rows: one.rows.map((row) => (row.place === 2 ? { ...row, event: spoil(row.event) } : row)),
    }));
    const read = await readBundle(JSON.stringify({ schema: 'fieldsay-records/1', records: spoilt }));
    expect(read).toMatchObject({ kind: 'bundle', records: [] });
    if (read.kind === 'bundle') expect(read.faults[0]).toContain(`record 1, event 2, ${field}: `);
  });
});

describe('10,000 mutated files', () => {
  it('are each read as they were, or refused in a sentence; none throws, none brings in an altered event', async () => {
    const chance = seeded(41);
    const { records } = await bundle(await exported());
    const good = JSON.stringify({ schema: 'fieldsay-records/1', records });
    const known = new Set(events.map((event) => JSON.stringify(event)));
    let [whole, faulty, refused] = [0, 0, 0];
    for (let round = 0; round < 10_000; round += 1) {
      const read = await readBundle(mutated(good, chance));
      if (read.kind === 'refused') {
        refused += 1;
        expect(read.why).not.toBe('');
        continue;
      }
      if (read.faults.length > 0) faulty += 1;
      else whole += 1;
      for (const { rows } of read.records) {
        const taken = rows.map(({ event }) => event);
        for (const event of taken)
          if (!known.has(JSON.stringify(event))) throw new Error('an altered event was taken');
        fold(
          taken.flatMap((event) => {
            const one = migrate(event);
            return one.kind === 'event' ? [one.event] : [];
          }),
        );
      }
    }
    console.log(
      `10,000 mutated files: ${refused} refused, ${faulty} with faults named, ${whole} as they were`,
    );
    expect(refused + faulty + whole).toBe(10_000);
    expect(refused).toBeGreaterThan(1000);
    expect(faulty).toBeGreaterThan(1000);
  });

  it('in their encrypted form are refused in a sentence', async () => {
    const chance = seeded(42);
    const good = await exported();
    for (let round = 0; round < 20; round += 1) {
      // A change of the rounds would only make each try long: the rest of the file is what is altered.
      const text = mutated(good, chance).replace(/"rounds":\d+/, '"rounds":100000');
      const read = await readExport(text, PASSPHRASE);
      expect(read.kind === 'refused' ? read.why : '').not.toBe('');
    }
  });
});

/** One to three changes: a character, a cut, a doubled stretch, a value of another type. */
function mutated(text: string, { whole, pick }: ReturnType<typeof seeded>): string {
  let next = text;
  for (let change = whole(1, 3); change > 0; change -= 1) {
    const at = whole(0, next.length - 1);
    const to = Math.min(next.length, at + whole(1, 40));
    next = pick([
      () => next.slice(0, at) + String.fromCharCode(whole(32, 126)) + next.slice(at + 1),
      () => next.slice(0, at) + next.slice(to),
      () => next.slice(0, to) + next.slice(at),
      () => next.slice(0, at),
      () =>
        next.replace(
          pick(['"kind":"utterance"', '"seq":2', '"place":3', '"heard":', '"payload":{', '"doubt":[]']),
          pick(['"kind":7', '"seq":-1', '"place":"3"', '"doubt":null', '"payload":[', '"x":']),
        ),
      () => next.replace(/(swelling|wrist|left|92|true)/, pick(['bleeding', 'right', '93', 'false'])),
    ])();
  }
  return next;
}
