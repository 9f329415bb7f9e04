// What the bar says, row by row: “at the post” for what is on the post's disk and for nothing else.

import { describe, expect, it } from 'vitest';
import { barWords, type SessionState, type Tally } from '../../src/link/index.ts';

const NOW = 1_000_000;
const tally = (more: Partial<Tally>): Tally => ({
  made: 24,
  atPost: 24,
  onServer: 0,
  onVehicle: 0,
  vehicle: null,
  waiting: 0,
  ...more,
});
const state = (more: Partial<SessionState>, counts: Partial<Tally> = {}): SessionState => ({
  line: 'connected',
  tally: tally(counts),
  problem: null,
  word: null,
  wordAt: NOW - 1_000,
  troubles: [],
  ...more,
});

describe('the bar', () => {
  it.each([
    ['all is there', state({}), 'settled', 'At the post: all 24.'],
    [
      'all is there and the line is cut',
      state({ line: 'cut' }),
      'settled',
      'At the post: all 24. No connection now.',
    ],
    ['some wait', state({}, { atPost: 20, onServer: 4 }), 'waits', 'At the post: 20 of 24. 4 on the way.'],
    [
      'the line is cut',
      state({ line: 'cut' }, { atPost: 20, waiting: 4 }),
      'waits',
      'At the post: 20 of 24. 4 wait: no connection.',
    ],
    [
      'the post is silent',
      state({ wordAt: NOW - 90_000 }, { atPost: 20, onServer: 4 }),
      'waits',
      'At the post: 20 of 24. 4 wait: the post is silent.',
    ],
    ['nothing was said', state({}, { made: 0, atPost: 0 }), 'settled', 'Team: nothing to send yet.'],
    [
      'it was put out',
      state({ line: 'put-out' }, { atPost: 20 }),
      'trouble',
      'Put out of the incident. At the post: 20 of 24.',
    ],
    [
      'its code is not known at the post',
      state({ line: 'put-out', wordAt: null }, { made: 3, atPost: 0, waiting: 3 }),
      'trouble',
      'The post does not let this phone in.',
    ],
    [
      'its code is in use',
      state({ problem: 'code-in-use' }),
      'trouble',
      'Another phone uses this code: nothing is sent.',
    ],
  ] as const)('says where %s', (_name, now, tone, text) => {
    expect(barWords(now, NOW)).toMatchObject({ tone, text });
  });

  it('never says that all is at the post while a server alone has it', () => {
    const words = barWords(state({}, { atPost: 0, onServer: 24 }), NOW);
    expect(words.text).not.toContain('all');
    expect(words.more).toContain('24 are on the server, and not known to be written at the post.');
  });

  it('names the vehicle that has it', () => {
    const words = barWords(state({}, { atPost: 22, onServer: 2, onVehicle: 2, vehicle: 'van-1' }), NOW);
    expect(words.more).toContain('2 are on the server of van-1, and not at the post yet.');
  });

  it('says in every trouble that nothing is lost on the phone', () => {
    for (const problem of ['code-in-use', 'other-history'] as const)
      expect(barWords(state({ problem }), NOW).more.join(' ')).toContain('Everything stays on this phone.');
  });
});
