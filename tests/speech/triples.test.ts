// How likely words are after the two before them, and sentences as a network has them. All sentences are invented.

import { describe, expect, it } from 'vitest';
import { EDGES } from '../../src/speech/network/counts.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { sampled } from '../../src/speech/network/sampled.ts';
import { triplesOf } from '../../src/speech/network/triples.ts';

const SAID = [
  'left knee tender',
  'left knee swollen',
  'right hip tender',
  'no pain in the left knee',
  'no pain in the hip',
];
const WORDS = 40;

describe('the chance of a word after two others', () => {
  const talk = triplesOf([{ sentences: SAID, worth: 1 }], WORDS);
  const chance = (first: string, second: string, word: string): number =>
    Math.exp(
      talk.chanceOf(...([first, second, word].map((one) => talk.numberOf(one)) as [number, number, number])),
    );

  it('goes by both of them, where they were said', () => {
    expect(chance('in', 'the', 'left')).toBeGreaterThan(0.2);
    expect(chance('in', 'the', 'left')).toBeGreaterThan(3 * chance('hip', 'the', 'pain'));
    expect(chance('left', 'knee', 'tender')).toBeGreaterThan(chance('the', 'knee', 'tender'));
  });

  it('goes by the second where the two were never said together, and by the word alone where that was not either', () => {
    expect(chance('crampon', 'knee', 'tender')).toBeGreaterThan(chance('crampon', 'rope', 'tender'));
    expect(chance('crampon', 'rope', 'tender')).toBeGreaterThan(chance('crampon', 'rope', 'piolet'));
    expect(chance('crampon', 'rope', 'piolet')).toBeGreaterThan(0);
  });

  it('adds up to one over all words that can be heard and the end', () => {
    const said = [...new Set(SAID.join(' ').split(' '))];
    const others = Array.from({ length: WORDS - said.length }, (_, i) => `never${i}`);
    for (const [first, second] of [
      ['', ''],
      ['left', 'knee'],
      ['in', 'the'],
      ['never0', 'never1'],
    ] as const) {
      const all = [...said, ...others, ''].map((word) => chance(first, second, word));
      expect(all.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 5);
    }
  });

  it('counts a sentence by its worth', () => {
    const more = triplesOf(
      [
        { sentences: ['left knee tender'], worth: 5 },
        { sentences: ['left knee swollen'], worth: 1 },
      ],
      WORDS,
    );
    const [left, knee, tender, swollen] = ['left', 'knee', 'tender', 'swollen'].map(more.numberOf);
    const behind = (word = EDGES): number => more.chanceOf(left ?? EDGES, knee ?? EDGES, word);
    expect(behind(tender)).toBeGreaterThan(behind(swollen) + 1);
  });
});

describe('sentences of a network', () => {
  // "left knee" three times in four, "right knee" else; then "tender" half the time.
  const network: Network = {
    states: 4,
    end: 3,
    arcs: [
      { from: 0, to: 1, word: 'left', chance: 0.75 },
      { from: 0, to: 1, word: 'right', chance: 0.25 },
      { from: 1, to: 2, word: 'knee', chance: 1 },
      { from: 2, to: 3, word: 'tender', chance: 0.5 },
    ],
    silent: [{ from: 2, to: 3, chance: 0.5 }],
  };
  const said = sampled(network, 2000);

  it('are those that it lets be said, as often as they are likely', () => {
    const share = (pattern: RegExp): number => said.filter((one) => pattern.test(one)).length / said.length;
    expect(said.every((one) => /^(left|right) knee( tender)?$/.test(one))).toBe(true);
    expect(share(/^left/)).toBeCloseTo(0.75, 1);
    expect(share(/tender$/)).toBeCloseTo(0.5, 1);
  });

  it('come alike each time', () => expect(sampled(network, 50)).toEqual(said.slice(0, 50)));

  it('are left out where they never end', () => {
    const loop: Network = {
      states: 2,
      end: 1,
      arcs: [{ from: 0, to: 0, word: 'on', chance: 1 }],
      silent: [],
    };
    expect(sampled(loop, 3)).toEqual([]);
  });
});
