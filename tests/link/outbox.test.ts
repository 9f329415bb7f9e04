// The phone's book: it forgets nothing before the post has it, and believes the post's word only where it is of its own.

import { describe, expect, it } from 'vitest';
import { createOutbox, NOTHING_GOT, type Row, type Word } from '../../src/link/index.ts';

const row = (from: number, count: number): Row => ({
  from,
  record: 'rec',
  events: Array.from({ length: count }, (_, index) => `e${from + index}`),
  before: `h${from - 1}`,
  after: `h${from + count - 1}`,
});
const word = (upTo: number, more: Partial<Word> = {}): Word => ({
  v: 1,
  install: 'i',
  upTo,
  hash: `h${upTo}`,
  beyond: [],
  spoiled: [],
  troubles: [],
  clock: 0,
  questions: [],
  passed: [],
  mates: [],
  ...more,
});
const ROWS = [row(1, 3), row(4, 1), row(5, 2)];
const fresh = () => createOutbox('h0', ROWS, NOTHING_GOT);

describe('an outbox', () => {
  it('sends all in order, and a server’s answer is no receipt', () => {
    const box = fresh();
    expect(box.toSend(0, 1_000, 64)).toEqual([1, 2, 3, 4, 5, 6]);
    for (const seq of [1, 2, 3]) box.stored(seq, null, 0);
    box.stored(4, 'van-1', 0);
    expect(box.tally()).toEqual({
      made: 6,
      atPost: 0,
      onServer: 4,
      onVehicle: 1,
      vehicle: 'van-1',
      waiting: 2,
    });
    expect(box.toSend(0, 1_000, 64)).toEqual([5, 6]);
  });

  it('sends again what a server had for long and the post has not', () => {
    const box = fresh();
    for (const seq of [1, 2, 3, 4, 5, 6]) box.stored(seq, null, 0);
    expect(box.toSend(900, 1_000, 64)).toEqual([]);
    box.heard(word(3));
    expect(box.toSend(1_001, 1_000, 64)).toEqual([4, 5, 6]);
  });

  it('counts as at the post what the word covers, beyond a gap too', () => {
    const box = fresh();
    expect(box.heard(word(3, { beyond: [[5, 6]] }))).toBe('fine');
    expect(box.tally()).toMatchObject({ atPost: 5, waiting: 1 });
    expect(box.toSend(0, 1_000, 64)).toEqual([4]);
  });

  it('takes no word for its own whose hash is another, or which has more than it sent', () => {
    expect(fresh().heard(word(3, { hash: 'x3' }))).toBe('other-history');
    expect(fresh().heard(word(7))).toBe('other-history');
    expect(fresh().heard(word(0, { hash: 'x0' }))).toBe('other-history');
    const box = fresh();
    box.heard(word(6, { hash: 'x6' }));
    expect(box.tally().atPost).toBe(0);
  });

  it('sends again what a post lost', () => {
    const box = createOutbox('h0', ROWS, { upTo: 6, beyond: [] });
    expect(box.tally().atPost).toBe(6);
    box.heard(word(3));
    expect(box.tally()).toMatchObject({ atPost: 3, waiting: 3 });
    expect(box.toSend(0, 1_000, 64)).toEqual([4, 5, 6]);
  });

  it('gives each spoiled event once', () => {
    const box = fresh();
    box.heard(word(6, { spoiled: [2] }));
    box.heard(word(6, { spoiled: [2] }));
    expect(box.takeSpoiled()).toEqual([{ record: 'rec', event: 'e2' }]);
    expect(box.takeSpoiled()).toEqual([]);
  });

  it('knows after a restart what the post had', () => {
    const box = createOutbox('h0', ROWS, { upTo: 3, beyond: [[6, 6]] });
    expect(box.tally()).toMatchObject({ made: 6, atPost: 4, waiting: 2 });
    expect(box.end()).toBe('h6');
    expect(box.rowOf(4)).toEqual(ROWS[1]);
    expect(box.rowOf(7)).toBeNull();
  });
});
