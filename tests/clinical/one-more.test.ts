// A reckoning that goes on from an earlier one equals one made from nothing, and keeps what no new entry touches.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Memo, type Reckoning, reckon, reckonAfter } from '../../src/clinical/index.ts';
import type { Entry, EntryState } from '../../src/record/entry.ts';
import { record } from './arbitrary.ts';
import { clock, csmAllFour, denied, found, minute, pressure, pulse, told } from './build.ts';

const now = { now: clock(30) };

/** What happens to a record from one moment to the next. */
type Turn =
  | { readonly turn: 'state'; readonly pick: number; readonly state: EntryState }
  | { readonly turn: 'more'; readonly count: number }
  | { readonly turn: 'again' };

const turns: fc.Arbitrary<readonly Turn[]> = fc.array(
  fc.oneof(
    fc.record({
      turn: fc.constant('state' as const),
      pick: fc.nat(),
      state: fc.constantFrom<EntryState>('heard', 'confirmed', 'struck', 'replaced'),
    }),
    fc.record({ turn: fc.constant('more' as const), count: fc.integer({ min: 1, max: 5 }) }),
    fc.record({ turn: fc.constant('again' as const) }),
  ),
  { minLength: 1, maxLength: 12 },
);

function taken(turn: Turn, said: readonly Entry[], rest: readonly Entry[]): readonly Entry[] {
  switch (turn.turn) {
    case 'more':
      return [...said, ...rest.slice(said.length, said.length + turn.count)];
    case 'state':
      return said.map((entry, index) =>
        index === turn.pick % said.length ? { ...entry, state: turn.state } : entry,
      );
    case 'again':
      return said;
  }
}

describe('a reckoning after an earlier one', () => {
  it('equals a reckoning from nothing, whatever was said, confirmed or struck in between', () => {
    fc.assert(
      fc.property(record, turns, (rest, all) => {
        let said = rest.slice(0, 3);
        let memo: Memo | null = null;
        for (const turn of all) {
          said = [...taken(turn, said, rest)];
          const worked = reckonAfter(memo, said, now);
          expect(worked.reckoning).toEqual(reckon(said, now));
          memo = worked.memo;
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('equals it after any other record, in any order, and leaves the earlier memo as it was', () => {
    fc.assert(
      fc.property(record, record, (one, other) => {
        const first = reckonAfter(null, one, now);
        expect(reckonAfter(first.memo, other, now).reckoning).toEqual(reckon(other, now));
        expect(reckonAfter(first.memo, one.toReversed(), now).reckoning).toEqual(reckon(one, now));
        expect(reckonAfter(first.memo, one, now).reckoning).toEqual(first.reckoning);
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  it('follows the time, the scale and the order of problems that are handed in', () => {
    const exam = [pulse(80, 2), pressure(120, 80, 2), found('wrist', 'left', 'pain')];
    const { memo } = reckonAfter(null, exam, now);
    const later = {
      now: clock(90),
      saturationScale: 2 as const,
      due: { regard: 'stable' as const },
      problems: [
        { change: 'strike', problem: { site: 'wrist', side: 'left' }, heardAt: minute(40) } as const,
      ],
    };
    expect(reckonAfter(memo, exam, later).reckoning).toEqual(reckon(exam, later));
  });
});

const exam: readonly Entry[] = [
  told('mechanism', 'fell six feet'),
  pulse(88, 2),
  pressure(118, 76, 2),
  denied('skull', null, 'deformity', { at: minute(4) }),
  found('wrist', 'left', 'deformity', { at: minute(7) }),
  ...csmAllFour(10),
];

type Row = object;

/** Rows of every list that are not the very same objects as before. */
function fresh(before: Reckoning, after: Reckoning): readonly (readonly [string, unknown])[] {
  const lists = (of: Reckoning): readonly (readonly [string, readonly Row[]])[] => [
    ['coverage', of.coverage],
    ['step', of.steps],
    ['flag', of.flags],
    ['score', of.scoreCards],
    ['series', of.series],
    ['spine', of.spine.items],
    ['focus', of.focus],
    ['conflict', of.conflicts],
    ['pattern', of.patterns],
  ];
  const old = new Set(lists(before).flatMap(([, rows]) => rows));
  return lists(after).flatMap(([name, rows]) =>
    rows.filter((row) => !old.has(row)).map((row) => [name, row]),
  );
}

const freshAfter = (more: Entry): readonly string[] => {
  const before = reckonAfter(null, exam, now);
  const after = reckonAfter(before.memo, [...exam, more], now);
  return [...new Set(fresh(before.reckoning, after.reckoning).map(([name]) => name))].sort();
};

describe('what is kept as the very same object', () => {
  it('is everything where nothing was said', () => {
    const before = reckonAfter(null, exam, now);
    expect(fresh(before.reckoning, reckonAfter(before.memo, exam, now).reckoning)).toEqual([]);
  });
  it('is all but the site, and the step it is part of, where swelling of the jaw was denied', () => {
    const before = reckonAfter(null, exam, now);
    const after = reckonAfter(before.memo, [...exam, denied('jaw', null, 'swelling')], now);
    expect(fresh(before.reckoning, after.reckoning)).toEqual([
      ['coverage', { site: 'jaw', side: null, state: 'clear' }],
      ['step', expect.objectContaining({ text: 'face', state: 'part' })],
      ['step', expect.objectContaining({ text: 'jaw', state: 'clear' })],
    ]);
  });
  it('is the body and all other series where a pulse was taken', () => {
    expect(freshAfter(pulse(92, 12))).toEqual(['flag', 'score', 'series']);
  });
  it('is all where an allergy was told', () => {
    expect(freshAfter(told('allergies', 'penicillin'))).toEqual([]);
  });
});
