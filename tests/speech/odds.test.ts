// Whether sound was said in the words that were heard in it: by how well they fit it, and how likely they are. Words invented.

import { describe, expect, it } from 'vitest';
import { partsOf } from '../../src/speech/hearing/judged.ts';
import { oddsOf } from '../../src/speech/hearing/odds.ts';
import { type JudgedWord, likelierOf } from '../../src/speech/hearing/reading.ts';
import { HARDLY_HEARD, utterancesOf } from '../../src/speech/hearing/utterances.ts';
import type { Network } from '../../src/speech/network/network.ts';
import { likelyWayIn } from './likely-way.ts';

/** A word that is `exam` likelier in an exam than besides. */
const word = (lead: number, exam: number, sure = 0.95) => ({
  frames: 40,
  lead,
  chance: exam - 6,
  besides: -6,
  sure,
});

const odds = (...words: readonly ReturnType<typeof word>[]): number => oddsOf(words);

describe('the odds of what was heard', () => {
  it('grow with how well it fits', () => {
    expect(odds(word(0, 2))).toBeGreaterThan(odds(word(-10, 2)));
  });

  it('grow with how much likelier the words are in an exam than in what people say besides', () => {
    expect(odds(word(0, 5), word(0, 5))).toBeGreaterThan(odds(word(0, -5), word(0, -5)) + 3);
  });

  it('are more for a sentence of which there is more, of the one kind or the other', () => {
    expect(odds(word(0, 2), word(0, 2), word(0, 2))).toBeGreaterThan(odds(word(0, 2)));
    expect(odds(word(0, -2), word(0, -2), word(0, -2))).toBeLessThan(odds(word(0, -2)));
  });

  it('count a long word for more than a short one', () => {
    const [long, short] = [{ ...word(-20, 2), frames: 80 }, word(5, 2)];
    expect(odds(long, short)).toBeLessThan(odds({ ...long, frames: 10 }, short));
  });

  it('are less where other words may have been said as well', () => {
    expect(odds(word(0, 2, 0.5))).toBeLessThan(odds(word(0, 2)) - 1);
  });

  it('are none without a word', () => {
    expect(odds()).toBe(Number.NEGATIVE_INFINITY);
  });
});

/** Words of 0.4 s; a number is a pause in seconds. */
function judged(lead: number, exam: number, ...said: readonly (string | number)[]): readonly JudgedWord[] {
  let at = 0;
  return said.flatMap((one) => {
    const start = at;
    at += typeof one === 'number' ? one : 0.4;
    const times = { start, end: at, frames: 40, fit: -1000 };
    return typeof one === 'number' ? [] : [{ ...word(lead, exam), word: one, ...times, confidence: 0.9 }];
  });
}

const heard = (words: readonly JudgedWord[]) => utterancesOf(partsOf(words), 0, 20);

describe('what is made of it', () => {
  const said = ['left', 'knee', 'is', 'swollen'];

  it('stands where it fits and is likely', () => {
    expect(heard(judged(2, 5, ...said))).toMatchObject([{ understood: true, doubt: [] }]);
  });

  it('is refused where it fits badly, or is likelier in what people say besides', () => {
    expect(heard(judged(-40, 1, ...said))).toMatchObject([{ understood: false }]);
    expect(heard(judged(-4, -1, ...said))).toMatchObject([{ understood: false }]);
  });

  it('is asked about in between', () => {
    expect(heard(judged(-2, 1.3, ...said))).toMatchObject([{ understood: true, doubt: [HARDLY_HEARD] }]);
  });

  it('keeps a part that is sure by itself beside one that was other talk', () => {
    const words = [...judged(-40, -3, 'the', 'mouth', 'are', 'cut'), ...judged(4, 6, 2.6, ...said)];
    expect(heard(words).map(({ understood }) => understood)).toEqual([false, true]);
  });
});

describe('one sound in two readings', () => {
  const inGrammar = (lead: number, chance: number) => judged(lead, chance, 'left', 'temple', 'is', 'swollen');
  const inAnyOrder = (lead: number, chance: number) => judged(lead, chance, 'left', 'ankle', 'is', 'swollen');

  it('is shown in any order where the two are alike: that shows what other talk was', () => {
    const loose = inAnyOrder(0, 2);
    expect(likelierOf(inGrammar(0, 2), loose, 'wide')).toBe(loose);
  });

  it('is shown as the grammar has it where that fits far better, or is far likelier', () => {
    const loose = inAnyOrder(0, 0);
    for (const grammar of [inGrammar(20, 0), inGrammar(0, 4)])
      expect(likelierOf(grammar, loose, 'wide')).toBe(grammar);
  });

  it('is the one that has words', () => {
    const grammar = inGrammar(-40, -9);
    expect(likelierOf(grammar, [], 'wide')).toBe(grammar);
    expect(likelierOf([], grammar, 'wide')).toBe(grammar);
  });
});

describe('the chance of each word', () => {
  // "left knee" or "right knee", and then perhaps "tender", into which a silent step leads.
  const network: Network = {
    states: 4,
    end: 3,
    arcs: [
      { from: 0, to: 1, word: 'left', chance: 0.75 },
      { from: 0, to: 1, word: 'right', chance: 0.25 },
      { from: 1, to: 2, word: 'knee', chance: 1 },
      { from: 3, to: 3, word: 'tender', chance: 0.5 },
    ],
    silent: [{ from: 2, to: 3, chance: 0.5 }],
  };
  const likely = likelyWayIn(network);

  it('is that of its arc and of the silent step before it', () => {
    expect(likely(['left', 'knee', 'tender'])?.map(Math.exp)).toEqual([
      expect.closeTo(0.75),
      expect.closeTo(1),
      expect.closeTo(0.25),
    ]);
  });

  it('is that of the likeliest of several ways', () => {
    const twice = { ...network, arcs: [...network.arcs, { from: 0, to: 2, word: 'left', chance: 0.9 }] };
    expect(likelyWayIn(twice)(['left'])).toEqual([expect.closeTo(Math.log(0.9))]);
  });

  it('is none where the words are no way', () => {
    expect(likely(['knee', 'left'])).toBeNull();
  });
});
