// Promises that hold for every record, tried on invented ones made by chance.

import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { reckon } from '../../src/clinical/index.ts';
import {
  type HandoffLine,
  imistAmbo,
  mist,
  radio,
  radioDetails,
  radioUpdate,
  sbar,
  soap,
  updateSince,
  wordBudget,
} from '../../src/handoff/index.ts';
import { type Entry, stands } from '../../src/record/entry.ts';
import { isPaired, type Side } from '../../src/terms/index.ts';
import { record } from './arbitrary.ts';
import { clockTime, input, nothingExamined } from './made-up.ts';

// Many records; a busy machine takes its time, and nothing here is about how long.
vi.setConfig({ testTimeout: 60_000 });

/** The words of the side in a clause, apart from the words of qualities, sites and findings. */
const hasSide = (text: string, entry: Extract<Entry, { kind: 'finding' }>): boolean => {
  const sides: readonly Side[] = ['left', 'right', 'both', 'midline'];
  const words = text.replace(/\beither\b/g, 'both');
  const said = sides.filter((side) => new RegExp(`\\b${side}\\b`, 'i').test(words));
  if (entry.side !== null) return said.length === 1 && said[0] === entry.side;
  return said.length === 0 && text.includes('side not said') === isPaired(entry.site);
};

const isNegative = (text: string): boolean => /^No |: no /.test(text);

/** The clauses that tell an entry: of a line with several, those of its own. */
const clausesOf = (lines: readonly HandoffLine[], id: string): readonly string[] =>
  lines
    .flatMap((line) => line.clauses ?? [line])
    .filter(({ entries }) => entries.includes(id))
    .map(({ text }) => text);

test('every standing finding is in a SOAP clause that says its own side, its own yes or no and its finding', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const { lines } = soap(input(entries));
      for (const entry of entries) {
        if (!stands(entry) || entry.kind !== 'finding') continue;
        const named = entry.finding.replaceAll('-', ' ').slice(0, 5);
        const right = clausesOf(lines, entry.id).filter(
          (text) =>
            hasSide(text, entry) && isNegative(text) === !entry.present && text.toLowerCase().includes(named),
        );
        expect(right.length, JSON.stringify([entry, clausesOf(lines, entry.id)])).toBeGreaterThan(0);
      }
    }),
    { numRuns: 300 },
  );
});

test('every standing entry but a visit is in some SOAP line', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const told = new Set(soap(input(entries)).lines.flatMap((line) => line.entries));
      const lost = entries.filter((entry) => stands(entry) && entry.kind !== 'visit' && !told.has(entry.id));
      expect(lost).toEqual([]);
    }),
  );
});

test('no line of any report rests on an entry that was struck or replaced', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const gone = new Set(entries.filter((entry) => !stands(entry)).map(({ id }) => id));
      const told = [
        ...soap(input(entries)).lines,
        ...mist(input(entries)).lines,
        ...imistAmbo(input(entries)).lines,
        ...sbar(input(entries)).lines,
        ...radio(input(entries)).chunks,
        ...radioDetails(input(entries)).chunks,
      ];
      expect(told.flatMap((line) => line.entries).filter((id) => gone.has(id))).toEqual([]);
    }),
  );
});

test('a report on a record reads the same as one on the record without its struck and replaced entries', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const kept = entries.filter(stands);
      expect(soap(input(entries))).toEqual(soap(input(kept)));
      expect(mist(input(entries))).toEqual(mist(input(kept)));
      expect(radio(input(entries))).toEqual(radio(input(kept)));
    }),
  );
});

test('every line on an unconfirmed entry is marked as unconfirmed in every report', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const heard = new Set(entries.filter(({ state }) => state === 'heard').map(({ id }) => id));
      const told = [soap, mist, imistAmbo, sbar].flatMap((report) => report(input(entries)).lines);
      const bare = told.filter(
        ({ text, entries: ids }) =>
          ids.some((id) => heard.has(id)) &&
          !text.includes('unconfirmed') &&
          !text.startsWith('Recheck vitals'),
      );
      expect(bare).toEqual([]);
      // The mark ends its sentence, so it is in the last piece that speaks of the entry.
      const chunks = [...radio(input(entries)).chunks, ...radioDetails(input(entries)).chunks];
      for (const id of heard) {
        const last = chunks.findLast((chunk) => chunk.entries.includes(id));
        if (last !== undefined) expect(last.text).toMatch(/unconfirmed/i);
      }
    }),
  );
});

test('a radio piece has at most 40 words and no figure, ends in break, and the last one in over', () => {
  fc.assert(
    fc.property(record, fc.boolean(), (entries, whole) => {
      const given = input(entries, whole ? { coverage: nothingExamined } : {});
      for (const { chunks } of [radio(given), radioDetails(given), radioUpdate(given, clockTime('14:12'))])
        chunks.forEach(({ text }, index) => {
          expect(text.split(' ').length).toBeLessThanOrEqual(40);
          expect(text).toMatch(index === chunks.length - 1 ? / over$/ : / break$/);
          expect(text).not.toMatch(/[0-9%°×“”()[\]]/);
          expect(text).not.toMatch(/\boh\b|\bnine\b| {2}/);
        });
    }),
  );
});

test('a short report keeps within its words unless it says that it is long, in each order', () => {
  const order = fc.constantFrom('atmist' as const, 'imist-ambo' as const, 'sbar' as const);
  fc.assert(
    fc.property(record, order, (entries, chosen) => {
      const { flags } = reckon(entries, { now: Date.parse(clockTime('14:40')) });
      const given = input(entries, { flags, coverage: nothingExamined });
      const said = radio(given, chosen)
        .chunks.map(({ text }) => text)
        .join(' ');
      if (!/^(?:All unconfirmed\. )?Long report\./.test(said))
        expect(said.split(' ').length, said).toBeLessThanOrEqual(wordBudget(given));
    }),
    { numRuns: 200 },
  );
});

test('no short report drops an allergy, a tourniquet or a red criterion', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const { flags } = reckon(entries, { now: Date.parse(clockTime('14:40')) });
      const { chunks } = radio(input(entries, { flags }));
      const told = new Set(chunks.flatMap((chunk) => chunk.entries));
      const kept = entries.filter(
        (entry) =>
          stands(entry) &&
          ((entry.kind === 'history' && entry.topic === 'allergies' && entry.present !== false) ||
            (entry.kind === 'care' && entry.care === 'tourniquet')),
      );
      const red = flags.filter(({ level, state }) => level === 'red' && state === 'met');
      expect(kept.filter(({ id }) => !told.has(id))).toEqual([]);
      expect(red.flatMap(({ evidence }) => evidence).filter((id) => !told.has(id))).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

test('every standing entry but a visit is in the short report or its further details', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const chunks = [...radio(input(entries)).chunks, ...radioDetails(input(entries)).chunks];
      const told = new Set(chunks.flatMap((chunk) => chunk.entries));
      expect(
        entries.filter((entry) => stands(entry) && entry.kind !== 'visit' && !told.has(entry.id)),
      ).toEqual([]);
    }),
  );
});

test('every standing entry said since is in the update', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const since = clockTime('14:12');
      const told = new Set(updateSince(input(entries), since).lines.flatMap((line) => line.entries));
      const after = entries.filter(
        (entry) => stands(entry) && entry.kind !== 'visit' && Date.parse(entry.heardAt) > Date.parse(since),
      );
      expect(after.filter(({ id }) => !told.has(id))).toEqual([]);
    }),
  );
});

test('no piece cuts a finding, a limb or a reading in two', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const own = entries.filter(({ kind }) => kind === 'finding' || kind === 'csm' || kind === 'vital');
      const chunks = [...radio(input(own)).chunks, ...radioDetails(input(own)).chunks];
      expect(chunks.filter(({ text }) => text.includes('continuing,'))).toEqual([]);
    }),
    { numRuns: 200 },
  );
});
