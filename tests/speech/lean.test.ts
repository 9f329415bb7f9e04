// The network that the recogniser searches has fewer states than the grammar's, and lets the same be said. The networks are
// invented but for the project's own.

import { describe, expect, it } from 'vitest';
import { hearingFiles } from '../../src/replay/hearing-setup.ts';
import { hearingGrammar } from '../../src/speech/hearing/network-of-files.ts';
import { withFewerStates } from '../../src/speech/network/fewer-states.ts';
import { joinedWords, partedWords } from '../../src/speech/network/joined-words.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { byState } from '../../src/speech/network/one-way.ts';
import { likelyWayIn } from './likely-way.ts';
import { says } from './says.ts';

const arc = (from: number, to: number, word: string, chance = 1) => ({ from, to, word, chance });
const step = (from: number, to: number, chance = 1) => ({ from, to, chance });

// "edge of the knee", or "knee" or "hip" alone, which are two states for the same; 3 and 4 are come to in silence only.
const NETWORK: Network = {
  states: 10,
  end: 9,
  arcs: [
    ...[arc(0, 1, 'edge', 0.5), arc(0, 5, 'knee', 0.25), arc(0, 6, 'hip', 0.25)],
    ...[arc(1, 2, 'of'), arc(2, 7, 'the'), arc(7, 8, 'knee')],
    ...[arc(3, 8, 'hurts'), arc(4, 8, 'hurts')],
  ],
  silent: [step(5, 3, 0.5), step(5, 9, 0.5), step(6, 4, 0.5), step(6, 9, 0.5), step(8, 9)],
};
const WAYS: Readonly<Record<string, readonly string[]>> = {
  edge: ['EH JH'],
  of: ['AH V', 'AH F'],
  the: ['DH AH', 'DH IY'],
};
const waysToSay = (word: string) => WAYS[word] ?? ['N IY'];

/** The network with each joined word taken apart again, to be walked. */
function apart({ states, end, arcs, silent }: Network): Network {
  let next = states;
  const parts = arcs.flatMap((joined) => {
    const words = joined.word.split('_');
    return words.map((word, index) => {
      const from = index === 0 ? joined.from : next++;
      return arc(from, index === words.length - 1 ? joined.to : next, word, index === 0 ? joined.chance : 1);
    });
  });
  return { states: next, end, arcs: parts, silent };
}

describe('a network with fewer states', () => {
  const fewer = withFewerStates(NETWORK);

  it('joins states from which the same can be said, and passes over those of silence', () => {
    expect(fewer.states).toBe(NETWORK.states - 3);
  });

  it.each(['edge of the knee', 'knee', 'hip', 'knee hurts', 'hip hurts'])(
    'lets be said as likely: %s',
    (said) => {
      const chance = (network: Network) =>
        (likelyWayIn(network)(said.split(' ')) ?? []).reduce((sum, one) => sum + one, 0);
      expect(says(fewer, said)).toBe(true);
      expect(chance(fewer)).toBeCloseTo(chance(NETWORK));
    },
  );

  it.each(['edge', 'edge of hurts', 'hip knee'])('does not let be said: %s', (said) => {
    expect(says(fewer, said)).toBe(false);
  });
});

describe('joined words', () => {
  const joined = joinedWords(NETWORK, waysToSay);

  it('take the place of states without a choice, and have the ways of all their words', () => {
    expect(joined.network.arcs.map(({ word }) => word)).toContain('edge_of_the_knee');
    expect(joined.waysToSay('of_the')).toEqual(['AH V DH AH', 'AH V DH IY', 'AH F DH AH', 'AH F DH IY']);
  });

  it('do not reach over a place where one pauses', () => {
    const pausing = {
      ...NETWORK,
      arcs: NETWORK.arcs.map((one) => (one.word === 'of' ? { ...one, word: 'or' } : one)),
    };
    const words = joinedWords(pausing, waysToSay).network.arcs.map(({ word }) => word);
    expect(words).toContain('edge');
    expect(words).toContain('or_the_knee');
  });

  it('are parted again, time and fit by their sounds', () => {
    const heard = { word: 'edge_of_the', start: 1.2, end: 1.8, frames: 60, fit: -600, lead: -3 };
    expect(partedWords([heard], waysToSay)).toEqual([
      { word: 'edge', start: 1.2, end: 1.4, frames: 20, fit: -200, lead: -3 },
      { word: 'of', start: 1.4, end: 1.6, frames: 20, fit: -200, lead: -3 },
      { word: 'the', start: 1.6, end: 1.8, frames: 20, fit: -200, lead: -3 },
    ]);
  });
});

describe('the network of the hearing grammar', () => {
  const grammar = hearingGrammar(hearingFiles());
  if (grammar.kind === 'errors') throw new Error('The hearing grammar has a fault.');
  const made = grammar.network(() => true);
  const lean = joinedWords(withFewerStates(made), () => ['AH']).network;

  it('has less than half of its states', () => {
    expect(lean.states).toBeLessThan(made.states / 2);
  });

  it('lets the same be said: sentences of either are sentences of the other', () => {
    const parted = apart(lean);
    for (const [one, other] of [
      [made, parted],
      [parted, made],
    ] as const) {
      const walk = wanderer(one);
      const said = Array.from({ length: 300 }, (_, seed) => walk(seed + 1)).filter((words) => words !== null);
      expect(said.length).toBeGreaterThan(200);
      expect(said.filter((words) => !says(other, words))).toEqual([]);
    }
  });
});

/** Any way through the network, by a seed, which ends soon after eight words; null where it would become long. */
function wanderer({ arcs, silent, end }: Network): (seed: number) => string | null {
  const leaving = byState(arcs, ({ from }) => from);
  const ahead = byState(silent, ({ from }) => from);
  return (seed) => {
    let [at, turn] = [0, seed];
    const words: string[] = [];
    while (at !== end) {
      const ways = [...(leaving.get(at) ?? []), ...(ahead.get(at) ?? [])];
      turn = (turn * 48_271) % 2_147_483_647;
      const out = words.length > 8 ? ways.find(({ to }) => to === end) : undefined;
      const way = out ?? ways[turn % ways.length];
      if (way === undefined || words.length > 40) return null;
      if ('word' in way && typeof way.word === 'string') words.push(way.word);
      at = way.to;
    }
    return words.join(' ');
  };
}
