// What the one who holds the radio relies on: short lines that lose no word, a pace within bounds, and what was told until when.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { KeptStep } from '../../src/record/index.ts';
import { createPace, PACE, timeFor } from '../../src/screens/reader/pace.ts';
import { toldUntil } from '../../src/screens/reader/reports.ts';
import { shortLines } from '../../src/screens/reader/short-lines.ts';

describe('a piece in short lines', () => {
  it('has every word in its order, at most eight in a line', () => {
    const word = fc.constantFrom('pulse', 'one', 'two.', 'GCS', 'three,', 'right:', 'thigh', 'break');
    fc.assert(
      fc.property(fc.array(word, { minLength: 1, maxLength: 60 }), (words) => {
        const lines = shortLines(words.join(' '));
        expect(lines.join(' ').split(' ')).toEqual(words);
        expect(lines.every((line) => line.split(' ').length <= 8)).toBe(true);
      }),
      { seed: 20260503, numRuns: 300 },
    );
  });

  it('is cut where a sentence ends, so that a number stays with its name', () => {
    expect(shortLines('Pressure niner zero by palpation. GCS one three. Pulse one two four. break')).toEqual([
      'Pressure niner zero by palpation.',
      'GCS one three.',
      'Pulse one two four.',
      'break',
    ]);
  });
});

const storage = (kept: string | null) => {
  let value = kept;
  return {
    getItem: () => value,
    setItem: (_key: string, text: string) => {
      value = text;
    },
    now: () => value,
  };
};

describe('the pace', () => {
  it.each([
    [null, 80],
    ['65', 65],
    ['400', 80],
    ['fast', 80],
  ])('that was kept as %j is %d words a minute', (kept, pace) => {
    expect(createPace(storage(kept) as unknown as Storage).value).toBe(pace);
  });

  it('is kept when it is changed, and forty words at the usual one take thirty seconds', () => {
    const store = storage(null);
    const pace = createPace(store as unknown as Storage);
    pace.value = 70;
    expect(store.now()).toBe('70');
    // 40 words in 30 seconds: an arithmetic check.
    expect(timeFor(40, PACE.usual)).toBe(30_000);
  });
});

const sent = (part: 'script' | 'update' | 'details', piece: number, of: number, made: string): KeptStep => ({
  step: 'sent',
  part,
  piece,
  of,
  text: '',
  entries: [],
  by: 'person',
  made,
  id: `${part}-${piece}-${made}`,
  at: made,
});

describe('what has been told', () => {
  it('counts from the making of the last report that was read to its end', () => {
    expect(toldUntil([])).toBeNull();
    expect(toldUntil([sent('script', 1, 2, '14:10')])).toBeNull();
    expect(toldUntil([sent('script', 1, 2, '14:10'), sent('script', 2, 2, '14:10')])).toBe('14:10');
    expect(toldUntil([sent('script', 1, 1, '14:10'), sent('update', 1, 2, '14:20')])).toBe('14:10');
    expect(toldUntil([sent('script', 1, 1, '14:10'), sent('update', 1, 1, '14:20')])).toBe('14:20');
  });

  it('is nothing where only further details were read', () => {
    expect(toldUntil([sent('details', 1, 1, '14:10')])).toBeNull();
  });
});
