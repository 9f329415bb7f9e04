// Words in any order: how often one follows another in a network, and the network that is made of it. The networks are invented.

import { describe, expect, it } from 'vitest';
import { hearingFiles } from '../../src/replay/hearing-setup.ts';
import { linesOf } from '../../src/speech/hearing/hearing-files.ts';
import { partsOf } from '../../src/speech/hearing/judged.ts';
import { utterancesOf } from '../../src/speech/hearing/utterances.ts';
import { looseNetwork } from '../../src/speech/network/loose.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { EDGE, pairsIn, pairsOf, sumOf } from '../../src/speech/network/pairs.ts';
import { likelyWayIn } from './likely-way.ts';

// "left knee" three times as often as "right knee", and "tender" after it every other time.
const NETWORK: Network = {
  states: 5,
  end: 4,
  arcs: [
    { from: 0, to: 1, word: 'left', chance: 0.75 },
    { from: 0, to: 1, word: 'right', chance: 0.25 },
    { from: 1, to: 2, word: 'knee', chance: 1 },
    { from: 3, to: 4, word: 'tender', chance: 1 },
  ],
  silent: [
    { from: 2, to: 3, chance: 0.5 },
    { from: 2, to: 4, chance: 0.5 },
  ],
};

describe('how often a word follows another', () => {
  const pairs = pairsOf(NETWORK);

  it('is what the chances of the network make of it', () => {
    expect(pairs.get(EDGE)?.get('left')).toBeCloseTo(0.75);
    expect(pairs.get('left')?.get('knee')).toBeCloseTo(0.75);
    expect(pairs.get('knee')?.get('tender')).toBeCloseTo(0.5);
    expect(pairs.get('knee')?.get(EDGE)).toBeCloseTo(0.5);
    expect(pairs.get('tender')?.get(EDGE)).toBeCloseTo(0.5);
    expect(pairs.get('right')?.get('tender')).toBeUndefined();
  });

  it('adds up: a word is left as often as it is come to', () => {
    const come = new Map<string, number>();
    for (const row of pairs.values())
      for (const [next, count] of row) come.set(next, (come.get(next) ?? 0) + count);
    for (const [word, row] of pairs)
      expect([...row.values()].reduce((sum, count) => sum + count, 0)).toBeCloseTo(come.get(word) ?? 0);
  });

  it('is counted in written sentences', () => {
    expect(pairsIn(['no pain', 'no swelling']).get('no')).toEqual(
      new Map([
        ['pain', 1],
        ['swelling', 1],
      ]),
    );
  });
});

describe('words in any order', () => {
  const loose = looseNetwork({
    said: sumOf([
      { pairs: pairsOf(NETWORK), worth: 1000 },
      { pairs: pairsIn(['wince at the knee']), worth: 20 },
    ]),
    anywhere: [
      { words: ['weather', 'unsayable'], share: 0.1 },
      { words: ['acromion', 'left'], share: 0.05 },
    ],
    canHear: (word) => word !== 'unsayable',
  });
  const likely = likelyWayIn(loose);
  const chanceOf = (...words: string[]): number =>
    (likely(words) ?? [Number.NEGATIVE_INFINITY]).reduce((sum, chance) => sum + chance, 0);

  it('can be said, ordinary ones and rare ones among them', () => {
    expect(likely(['tender', 'weather', 'left', 'wince', 'acromion', 'knee', 'right'])).not.toBeNull();
  });

  it('are likelier in the order that is known', () => {
    expect(chanceOf('left', 'knee', 'tender')).toBeGreaterThan(chanceOf('tender', 'knee', 'left') + 3);
    expect(chanceOf('wince', 'at', 'the', 'knee')).toBeGreaterThan(
      chanceOf('the', 'wince', 'knee', 'at') + 3,
    );
  });

  it('are those that can be heard', () => {
    expect(likely(['unsayable'])).toBeNull();
  });

  it('share a whole chance in each state, and no more', () => {
    const leaving = new Map<number, number>();
    for (const { from, chance } of [...loose.arcs, ...loose.silent])
      leaving.set(from, (leaving.get(from) ?? 0) + chance);
    for (const sum of leaving.values()) expect(sum).toBeLessThan(1.03);
    expect(leaving.size).toBe(loose.states - 1);
  });

  it('end after any of them', () => {
    const ends = new Set(loose.silent.filter(({ to }) => to === loose.end).map(({ from }) => from));
    for (const { to } of loose.arcs) expect(ends.has(to)).toBe(true);
  });
});

describe('what the same sound may have been as well', () => {
  const said = ['left', 'knee', 'swollen'].map((word, at) => ({
    ...{ word, start: 0.4 * at, end: 0.4 * at + 0.4, frames: 40, fit: -1000, lead: -4 },
    ...{ chance: -4, besides: -7, confidence: 0.9, sure: 0.95 },
  }));
  const as = (knee: string) => said.map((one) => (one.word === 'knee' ? { ...one, word: knee } : one));
  const heard = (...others: readonly (typeof said)[]) => utterancesOf(partsOf(said, others), 0, 2);

  it('goes along where it is something else, and each once', () => {
    expect(heard(as('hip'), as('heel'), as('hip'))).toMatchObject([
      { text: 'left knee swollen', alternatives: ['left hip swollen', 'left heel swollen'] },
    ]);
    expect(heard(said)).toMatchObject([{ alternatives: [] }]);
    expect(heard()).toMatchObject([{ alternatives: [] }]);
  });
});

describe('the words of ordinary talk', () => {
  it('are each listed once, and none says a side, denies, or counts', () => {
    const words = linesOf(hearingFiles().ordinaryWords).flatMap((line) => line.split(' '));
    expect(words.length).toBeGreaterThan(800);
    expect(new Set(words).size).toBe(words.length);
    const telling = 'left right both no not none without never nothing one two three ten hundred half'.split(
      ' ',
    );
    expect(words.filter((word) => telling.includes(word))).toEqual([]);
  });
});
