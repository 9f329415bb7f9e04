// Promises that hold for every record, tried on invented ones made by chance.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type HandoffLine, mist, radio, soap } from '../../src/handoff/index.ts';
import { type Entry, stands } from '../../src/record/entry.ts';
import { isPaired, type Side } from '../../src/terms/index.ts';
import { record } from './arbitrary.ts';
import { input, nothingExamined } from './made-up.ts';

const linesOf = (lines: readonly HandoffLine[], id: string): readonly string[] =>
  lines.filter(({ entries }) => entries.includes(id)).map(({ text }) => text);

/** The words of the side in a line, apart from the words of qualities, sites and findings. */
const hasSide = (text: string, entry: Extract<Entry, { kind: 'finding' }>): boolean => {
  const sides: readonly Exclude<Side, never>[] = ['left', 'right', 'both', 'midline'];
  const said = sides.filter((side) => new RegExp(`\\b${side}\\b`, 'i').test(text));
  if (entry.side !== null) return said.length === 1 && said[0] === entry.side;
  return said.length === 0 && text.includes('side not said') === isPaired(entry.site);
};

const isNegative = (text: string): boolean => /^No |: no /.test(text);

test('every standing finding is in a SOAP line that says its own side and its own yes or no', () => {
  fc.assert(
    fc.property(record, (entries) => {
      const { lines } = soap(input(entries));
      for (const entry of entries) {
        if (!stands(entry) || entry.kind !== 'finding') continue;
        const right = linesOf(lines, entry.id).filter(
          (text) => hasSide(text, entry) && isNegative(text) === !entry.present,
        );
        expect(right.length, JSON.stringify([entry, linesOf(lines, entry.id)])).toBeGreaterThan(0);
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
        ...radio(input(entries)).chunks,
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
      const told = [...soap(input(entries)).lines, ...mist(input(entries)).lines];
      const bare = told.filter(
        ({ text, entries: ids }) =>
          ids.some((id) => heard.has(id)) &&
          !text.includes('unconfirmed') &&
          !text.startsWith('Recheck vitals'),
      );
      expect(bare).toEqual([]);
      // The mark ends its sentence, so it is in the last piece that speaks of the entry.
      const { chunks } = radio(input(entries));
      for (const id of heard) {
        const last = chunks.findLast((chunk) => chunk.entries.includes(id));
        if (last !== undefined) expect(last.text).toContain('unconfirmed');
      }
    }),
  );
});

test('a radio piece has at most 40 words and no figure, ends in break, and the last one in over', () => {
  fc.assert(
    fc.property(record, fc.boolean(), (entries, whole) => {
      const { chunks } = radio(input(entries, whole ? { coverage: nothingExamined } : {}));
      chunks.forEach(({ text }, index) => {
        expect(text.split(' ').length).toBeLessThanOrEqual(40);
        expect(text).toMatch(index === chunks.length - 1 ? / over$/ : / break$/);
        expect(text).not.toMatch(/[0-9%°×“”()[\]]/);
        expect(text).not.toMatch(/\boh\b|\bnine\b| {2}/);
      });
    }),
  );
});
