// The log on a shelf: kept whole or not at all, sealed to its place, and read again as it was or named as damaged.

import { describe, expect, it } from 'vitest';
import {
  appendToLog,
  damagedFile,
  emptyEnd,
  type Keys,
  listRecords,
  openVault,
  type RecordFacts,
  readLog,
  takeOverOpenRecords,
} from '../../../src/record/store/index.ts';
import { type MemoryShelf, memoryShelf } from './memory-shelf.ts';

const FACTS: RecordFacts = { id: 'r1', kind: 'live', title: '', startedAt: '2031-04-05T10:00:00Z' };

/** Invented words. */
const eventsNamed = (...names: readonly string[]) => names.map((id) => ({ id, words: `gully ${id}` }));

async function begun(): Promise<{ shelf: MemoryShelf; keys: Keys }> {
  const shelf = memoryShelf();
  const opened = await openVault(shelf);
  if (opened.kind !== 'open') throw new Error(opened.kind);
  return { shelf, keys: opened.keys };
}

async function kept(...names: readonly string[]) {
  const { shelf, keys } = await begun();
  const addition = { facts: FACTS, summary: {}, events: eventsNamed(...names), open: true };
  const end = await appendToLog(shelf, keys, await emptyEnd('r1'), addition);
  return { shelf, keys, end };
}

const row = (place: number): string => JSON.stringify(['row', 'r1', place]);

describe('a log', () => {
  it('is read again as it was kept, in order', async () => {
    const { shelf, keys, end } = await kept('a', 'b', 'c');
    const more = await appendToLog(shelf, keys, end, {
      facts: FACTS,
      summary: {},
      events: eventsNamed('d'),
      open: true,
    });
    const log = await readLog(shelf, keys, 'r1');
    expect(log.events).toEqual(eventsNamed('a', 'b', 'c', 'd'));
    expect(log.verdict).toMatchObject({ faults: [], lastWhole: 4, end: more });
  });

  it('keeps none of a write that fails, and the next try keeps all of it', async () => {
    const { shelf, keys, end } = await kept('a');
    shelf.failNext('full');
    const addition = { facts: FACTS, summary: {}, events: eventsNamed('b', 'c'), open: true };
    await expect(appendToLog(shelf, keys, end, addition)).rejects.toMatchObject({ failure: 'full' });
    expect((await readLog(shelf, keys, 'r1')).events).toHaveLength(1);
    await appendToLog(shelf, keys, end, addition);
    expect((await readLog(shelf, keys, 'r1')).verdict.faults).toEqual([]);
    expect((await readLog(shelf, keys, 'r1')).events).toHaveLength(3);
  });

  it('is never written over: whoever comes late is told that the place is taken', async () => {
    const { shelf, keys, end } = await kept('a');
    const one = (id: string) => ({
      facts: FACTS,
      summary: {},
      events: id === '' ? [] : eventsNamed(id),
      open: true,
    });
    await appendToLog(shelf, keys, end, one('b'));
    await expect(appendToLog(shelf, keys, end, one('late'))).rejects.toMatchObject({ failure: 'taken' });
    await expect(appendToLog(shelf, keys, end, one(''))).rejects.toMatchObject({ failure: 'taken' });
    const log = await readLog(shelf, keys, 'r1');
    expect([log.events, log.verdict.faults]).toEqual([eventsNamed('a', 'b'), []]);
  });

  it('names a row whose bytes were altered, shows the rest, and gives the row as a file', async () => {
    const { shelf, keys } = await kept('a', 'b', 'c');
    const sealed = shelf.lies.get(row(2)) as { data: Uint8Array };
    sealed.data[5] = (sealed.data[5] ?? 0) ^ 1;
    const log = await readLog(shelf, keys, 'r1');
    expect(log.events).toEqual(eventsNamed('a', 'c'));
    expect(log.verdict.faults).toMatchObject([{ fault: 'damaged', place: 2 }]);
    expect(log.verdict.lastWhole).toBe(1);
    const file = damagedFile('r1', log.verdict, log.damaged);
    expect(JSON.parse(file)).toMatchObject({ record: 'r1', lastWhole: 1, rows: [{ key: ['row', 'r1', 2] }] });
    expect(file).not.toContain('gully');
    expect(shelf.lies.has(row(2))).toBe(true);
  });

  it('names rows that changed places, though each is whole in itself', async () => {
    const { shelf, keys } = await kept('a', 'b', 'c');
    const [two, three] = [shelf.lies.get(row(2)), shelf.lies.get(row(3))];
    shelf.lies.set(row(2), three).set(row(3), two);
    expect((await readLog(shelf, keys, 'r1')).verdict.faults.map(({ place }) => place)).toEqual([2, 3]);
  });

  it('names a row that was put in from another record', async () => {
    const { shelf, keys } = await kept('a');
    const other = { ...FACTS, id: 'r2' };
    await appendToLog(shelf, keys, await emptyEnd('r2'), {
      facts: other,
      summary: {},
      events: eventsNamed('x'),
      open: false,
    });
    shelf.lies.set(row(2), shelf.lies.get(JSON.stringify(['row', 'r2', 1])));
    const { verdict, events } = await readLog(shelf, keys, 'r1');
    expect(events).toEqual(eventsNamed('a'));
    expect(verdict.faults[0]).toMatchObject({ fault: 'damaged', place: 2 });
  });

  it('cut at its end is noticed', async () => {
    const { shelf, keys } = await kept('a', 'b', 'c');
    shelf.lies.delete(row(3));
    expect((await readLog(shelf, keys, 'r1')).verdict.faults).toEqual([
      { fault: 'missing', place: 3, count: 1 },
    ]);
  });

  it.each([
    ['a text', 'nonsense'],
    ['nothing', null],
    ['a number', 7],
    ['half of it', { v: 1, key: 'k' }],
  ])('with %s in a row’s place is still read', async (_title, value) => {
    const { shelf, keys } = await kept('a', 'b');
    shelf.lies.set(row(1), value);
    const { events, verdict } = await readLog(shelf, keys, 'r1');
    expect(events).toEqual(eventsNamed('b'));
    expect(verdict.faults).toMatchObject([{ fault: 'damaged', place: 1 }]);
  });

  it('whose name cannot be read is listed as such and still opened', async () => {
    const { shelf, keys } = await kept('a');
    shelf.lies.set('["head","r1"]', 'nonsense');
    expect(await listRecords(shelf, keys)).toEqual({ records: [], unnamed: ['r1'] });
    expect((await readLog(shelf, keys, 'r1')).events).toEqual(eventsNamed('a'));
  });

  it('lies on the shelf without one of its words', async () => {
    const { shelf } = await kept('a', 'b');
    const text = (value: unknown): string =>
      value instanceof Uint8Array
        ? Buffer.from(value).toString('latin1')
        : typeof value === 'object' && value !== null
          ? Object.values(value).map(text).join(' ')
          : String(value);
    const all = [...shelf.lies.entries()].map(([key, value]) => `${key} ${text(value)}`).join('\n');
    expect(all).not.toMatch(/gully|live|2031/);
  });

  it('never uses an IV twice under one key', async () => {
    const { shelf } = await kept(...Array.from({ length: 300 }, (_, index) => `e${index}`));
    const ivs = [...shelf.lies.values()].flatMap((value) =>
      typeof value === 'object' && value !== null && 'iv' in value ? String(value.iv) : [],
    );
    expect(ivs.length).toBe(301);
    expect(new Set(ivs).size).toBe(301);
  });
});

describe('what the first version kept in the open', () => {
  it('is sealed and chained whole, and nothing of it is left in the open', async () => {
    const { shelf, keys } = await begun();
    shelf.lies.set('["record","old"]', { ...FACTS, id: 'old' });
    for (const [index, event] of eventsNamed('a', 'b').entries())
      shelf.lies.set(JSON.stringify(['event', 'old', index, event.id]), event);
    shelf.failNext('aborted');
    await expect(takeOverOpenRecords(shelf, keys)).rejects.toMatchObject({ failure: 'aborted' });
    expect(await takeOverOpenRecords(shelf, keys)).toBe(1);
    expect((await readLog(shelf, keys, 'old')).events).toEqual(eventsNamed('a', 'b'));
    expect([...shelf.lies.keys()].filter((key) => /"(record|event)"/.test(key))).toEqual([]);
    expect(await takeOverOpenRecords(shelf, keys)).toBe(0);
  });
});
