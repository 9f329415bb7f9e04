// The network that the recogniser searches lacks what is hardly ever said. The networks are invented but for the project's own.

import { describe, expect, it } from 'vitest';
import { hearingFiles } from '../../src/replay/hearing-setup.ts';
import { hearingGrammar } from '../../src/speech/hearing/network-of-files.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { withoutRare } from '../../src/speech/network/without-rare.ts';
import { says } from './says.ts';

const arc = (from: number, to: number, word: string, chance = 1) => ({ from, to, word, chance });
const step = (from: number, to: number, chance = 1) => ({ from, to, chance });

// "knee hurts" 9 times in 10; else "hip", which is followed by "hurts" or, 1 time in 50, by "clicks a bit".
const NETWORK: Network = {
  states: 7,
  end: 6,
  arcs: [
    ...[arc(0, 1, 'knee', 0.9), arc(0, 2, 'hip', 0.1), arc(1, 5, 'hurts')],
    ...[arc(3, 5, 'hurts'), arc(2, 4, 'clicks', 0.02), arc(4, 5, 'a bit')],
  ],
  silent: [step(2, 3, 0.98), step(5, 6)],
};

describe('a network without what is rare', () => {
  const lean = withoutRare(NETWORK, 0.01);

  it.each(['knee hurts', 'hip hurts'])('still lets be said: %s', (said) => {
    expect(says(lean, said)).toBe(true);
  });

  it('lets no rare step be taken, nor what only that leads to or from', () => {
    expect(lean.arcs.map(({ word }) => word)).toEqual(['knee', 'hip', 'hurts', 'hurts']);
  });

  it('counts how often a step is taken in the whole, and not from where it begins', () => {
    expect(says(withoutRare(NETWORK, 0.2), 'hip hurts')).toBe(false);
    expect(says(withoutRare(NETWORK, 0.2), 'knee hurts')).toBe(true);
  });

  it('goes round a loop more than once', () => {
    const looping: Network = {
      states: 3,
      end: 2,
      arcs: [arc(0, 1, 'tender'), arc(1, 1, 'very', 0.5), arc(1, 1, 'so', 0.06)],
      silent: [step(1, 2, 0.44)],
    };
    // It is come to 1 / 0.44 times, so "so" is said 0.136 times.
    expect(withoutRare(looping, 0.13).arcs).toHaveLength(3);
    expect(withoutRare(looping, 0.14).arcs).toHaveLength(2);
  });

  it('keeps what is common of the project’s own, with two thirds of its steps gone', () => {
    const grammar = hearingGrammar(hearingFiles());
    if (grammar.kind === 'errors') throw new Error('the hearing grammar has faults');
    const whole = grammar.network(() => true);
    const own = withoutRare(whole, 1e-4);
    for (const said of ['left knee is swollen', 'no pain in the neck', 'pulse is ninety two'])
      expect(says(own, said), said).toBe(true);
    expect(own.arcs.length).toBeLessThan(0.4 * whole.arcs.length);
  });
});
