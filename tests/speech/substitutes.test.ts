// What could stand in a word's place: only what the network lets be said there. The network is invented.

import { describe, expect, it } from 'vitest';
import { substitutesIn } from '../../src/speech/network/substitutes.ts';

// [no] pain (left knee | left hip) | chin
const arc = (from: number, to: number, word: string) => ({ from, to, word, chance: 1 });
const substitutes = substitutesIn({
  states: 5,
  end: 4,
  arcs: [
    arc(0, 1, 'no'),
    arc(1, 2, 'pain'),
    arc(2, 3, 'left'),
    arc(3, 4, 'knee'),
    arc(3, 4, 'hip'),
    arc(2, 4, 'chin'),
  ],
  silent: [{ from: 0, to: 1, chance: 0.5 }],
});

describe('in the place of a word', () => {
  const canStand = substitutes(['pain', 'left', 'knee']);

  it('can stand what leads on to the same words', () => {
    expect(canStand(2, 'hip')).toBe(true);
    expect(canStand(2, 'knee')).toBe(true);
  });

  it.each([
    [2, 'chin'],
    [1, 'chin'],
    [0, 'no'],
    [0, 'left'],
  ])('%i cannot stand %s', (index, word) => expect(canStand(index, word)).toBe(false));

  it('can stand anything where the words are none of the network', () => {
    expect(substitutes(['knee', 'left'])(0, 'chin')).toBe(true);
  });
});
