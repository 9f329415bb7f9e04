// The record on paper: nothing that stands is missing, left stands under left, and a denial is never printed as a finding.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type HandoffInput, printedRecord, vitalCharts } from '../../src/handoff/index.ts';
import { type Entry, stands } from '../../src/record/entry.ts';
import { findingName } from '../../src/timeline/index.ts';
import { record } from './arbitrary.ts';
import { input, made, nothingExamined } from './made-up.ts';

interface Printed {
  readonly text: string;
  readonly entries: readonly string[];
  readonly section: string;
  readonly column: string;
}

/** Every statement on the paper with where it stands. */
function printed(given: HandoffInput): readonly Printed[] {
  const { patient, sections } = printedRecord(given);
  return [
    ...patient.map((one) => ({ ...one, section: 'Patient', column: '' })),
    ...sections.flatMap(({ title, lines, tables }) => [
      ...lines.map((one) => ({ ...one, section: title, column: '' })),
      ...tables.flatMap(({ columns, rows }) =>
        rows.flatMap((row) =>
          row.flatMap((cells, index) =>
            cells.map((cell) => ({ ...cell, section: title, column: columns[index] ?? '' })),
          ),
        ),
      ),
    ]),
  ];
}

const findingsOf = (given: HandoffInput, id: string): readonly Printed[] =>
  printed(given).filter(({ section, entries }) => section === 'Findings by region' && entries.includes(id));

const COLUMN = {
  left: ['Left'],
  right: ['Right'],
  both: ['Left', 'Right'],
  midline: ['Middle, or side not said'],
};

const finding = (slots: Partial<Extract<Entry, { kind: 'finding' }>>) =>
  made('a', { kind: 'finding', site: 'wrist', side: 'left', finding: 'swelling', present: true, ...slots });

describe('on paper', () => {
  test('every entry that stands is told somewhere, and one that does not stands among the corrections', () => {
    fc.assert(
      fc.property(record, (entries) => {
        const all = printed(input(entries));
        const told = new Set(all.flatMap(({ entries: ids }) => ids));
        const corrected = new Set(
          all.filter(({ section }) => section === 'Corrections').flatMap(({ entries: ids }) => ids),
        );
        for (const entry of entries) {
          expect(told).toContain(entry.id);
          expect(corrected.has(entry.id)).toBe(!stands(entry));
        }
      }),
      { seed: 20260503, numRuns: 300 },
    );
  });

  test('a finding stands under its own side, with a NO where it was denied, and is marked while unconfirmed', () => {
    fc.assert(
      fc.property(record, (entries) => {
        for (const entry of entries.filter(stands)) {
          if (entry.kind !== 'finding') continue;
          const cells = findingsOf(input(entries), entry.id);
          expect(cells.map(({ column }) => column)).toEqual(COLUMN[entry.side ?? 'midline']);
          for (const { text } of cells) {
            expect(/(^|: )NO /.test(text)).toBe(!entry.present);
            expect(text.includes('†')).toBe(entry.state === 'heard');
          }
        }
      }),
      { seed: 20260503, numRuns: 150 },
    );
  });

  test('denials are gathered only where nothing but the finding was said of them', () => {
    const bare = finding({ present: false });
    const other = { ...finding({ present: false, finding: 'deformity' }), id: 'b' };
    const severe = { ...finding({ present: false, finding: 'pain', severity: 'severe' }), id: 'c' };
    const texts = printed(input([bare, other, severe] as readonly Entry[]))
      .filter(({ column }) => column === 'Left')
      .map(({ text }) => text);
    expect(texts).toEqual(['NO severe pain', 'NO swelling or deformity']);
  });

  test('what was not examined says so in its cell and in a line of its own', () => {
    const given = input([finding({})], { coverage: nothingExamined.map((row) => ({ ...row })) });
    const row = printed(given).filter(({ section }) => section === 'Findings by region');
    expect(row.find(({ column }) => column === 'Right')?.text).toBe('not examined');
    expect(
      printed(given).find(
        ({ section, text }) => section === 'Not examined' && text.startsWith('Not examined:'),
      ),
    ).toBeDefined();
  });

  test('a correction shows what was, what became of it and the words', () => {
    const was = { ...finding({ side: 'right' }), state: 'replaced' as const, replacedBy: 'b' };
    const now = { ...finding({ side: 'left' }), id: 'b' };
    const texts = printed(input([was, now] as readonly Entry[]))
      .filter(({ section }) => section === 'Corrections')
      .map(({ text }) => text);
    expect(texts).toEqual(['14:06', 'RIGHT wrist: swelling', 'LEFT wrist: swelling', '“words of a”']);
  });

  test('each reading stands in the row of its minute, and a chart spans more than the change', () => {
    const pulse = (id: string, time: string, rate: number) =>
      made(id, { kind: 'vital', vital: 'pulse', value: { rate } }, { time });
    const given = input([pulse('a', '14:06', 98), pulse('b', '14:16', 112)]);
    const cells = printed(given).filter(({ section, column }) => section === 'Signs' && column !== '');
    expect(cells.map(({ text }) => text)).toEqual(['14:06', '98', '14:16', '112']);
    const [chart] = vitalCharts(given);
    expect(chart?.points.map(({ value, time }) => [time, value])).toEqual([
      ['14:06', 98],
      ['14:16', 112],
    ]);
    expect([chart?.least, chart?.most]).toEqual([40, 160]);
  });

  test('the name of a finding is never hyphenated or shortened', () => {
    const name = findingName('jugular-distension');
    const given = input([finding({ site: 'neck-veins', finding: 'jugular-distension' })]);
    expect(findingsOf(given, 'a')[0]?.text).toBe(name);
  });
});
