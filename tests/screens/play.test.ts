// A talk is played at its pace: each utterance once, none before its time, none left out.

import { array, assert, constantFrom, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockOf, due, type Pace, positionAfter } from '../../src/screens/play/pace.ts';

const START = 1_930_000_000_000;
const talk = [0, 4000, 10_000, 10_000, 60_000].map((after, index) => ({
  text: `line ${index}`,
  heardAt: START + after,
  zone: '+00:00',
}));

describe('a played talk', () => {
  it('says what is due and no more', () => {
    expect(due(talk, START, 0, 0).map(({ text }) => text)).toEqual(['line 0']);
    expect(due(talk, START, 1, 10_000).map(({ text }) => text)).toEqual(['line 1', 'line 2', 'line 3']);
    expect(due(talk, START, 4, 59_999)).toEqual([]);
  });

  it('all at once is at its end at once', () => {
    expect(positionAfter(0, 0, 'all', 60_000)).toBe(60_000);
    expect(due(talk, START, 0, 60_000)).toHaveLength(5);
  });

  it('moves by its pace and not past its end', () => {
    expect(positionAfter(1000, 200, 10, 60_000)).toBe(3000);
    expect(positionAfter(59_000, 200, 60, 60_000)).toBe(60_000);
  });

  it('at any paces says every line once and in order', () => {
    const ticks = array(integer({ min: 1, max: 2000 }), { minLength: 1, maxLength: 40 });
    assert(
      property(ticks, constantFrom<Pace>(1, 10, 60), (passed, pace) => {
        let position = 0;
        const said: string[] = [];
        for (const ms of [...passed, 60_000]) {
          position = positionAfter(position, ms, pace, 60_000);
          said.push(...due(talk, START, said.length, position).map(({ text }) => text));
        }
        expect(said).toEqual(talk.map(({ text }) => text));
      }),
    );
  });

  it('shows its time in minutes and seconds', () => {
    expect([clockOf(0), clockOf(187_000), clockOf(3_600_000)]).toEqual(['0:00', '3:07', '60:00']);
  });
});
