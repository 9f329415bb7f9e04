// Of the words that were finished on any way, those that people say in that order; and how sure each is. Sounds and words are invented.

import { describe, expect, it } from 'vitest';
import { linkGrammars } from '../../src/jsgf/index.ts';
import { hearingFiles } from '../../src/replay/hearing-setup.ts';
import { createDecoder } from '../../src/speech/engine/decoder.ts';
import { fillerNetwork } from '../../src/speech/engine/filler.ts';
import { PHONES } from '../../src/speech/engine/pronunciations.ts';
import type { WordExit } from '../../src/speech/engine/word-exits.ts';
import { loadModule } from '../../src/speech/file/load-module.ts';
import { likeliest, likeliestOf } from '../../src/speech/hearing/likeliest.ts';
import { differInTelling, tellingWords } from '../../src/speech/hearing/telling-words.ts';
import { triplesOf } from '../../src/speech/network/triples.ts';

const order = triplesOf(
  [
    {
      sentences: ['right then your knee', 'right then your hip', 'the left knee is sore', 'them again'],
      worth: 1,
    },
  ],
  60,
);
const exit = (word: string, first: number, last: number, fit: number): WordExit => ({
  ...{ word, first, last, fit },
  noise: false,
});
const textOf = (exits: readonly WordExit[]): string =>
  (likeliest(exits, order)?.words ?? []).map(({ word }) => word).join(' ');

describe('the likeliest words', () => {
  const sounds = [
    exit('right', 0, 29, -300),
    exit('them', 30, 59, -500),
    exit('then', 30, 59, -510),
    exit('your', 60, 79, -200),
    exit('knee', 80, 109, -300),
  ];

  it('are those that people say in this order, where the sound is much alike', () => {
    expect(textOf(sounds)).toBe('right then your knee');
  });

  it('are those that fit, where the others do not', () => {
    const unlike = sounds.map((one) => (one.word === 'then' ? { ...one, fit: -1500 } : one));
    expect(textOf(unlike)).toBe('right them your knee');
  });

  it('have the times and the fit of their sound, and pauses are no words', () => {
    const paused = [...sounds.slice(0, 1), { ...exit('', 30, 49, -100) }, exit('then', 50, 79, -400)];
    expect(likeliest(paused, order)?.words).toMatchObject([
      { word: 'right', start: 0, end: 0.3, frames: 30, fit: -300 },
      { word: 'then', start: 0.5, end: 0.8, frames: 30 },
    ]);
  });

  it('are less sure the nearer another comes', () => {
    const sure = (fit: number): number =>
      likeliest(
        [...sounds.slice(0, 4), exit('knee', 80, 109, -300), exit('hip', 80, 109, fit)],
        order,
      )?.words.at(-1)?.sure ?? 0;
    expect(sure(-300)).toBeCloseTo(0.5, 1);
    expect(sure(-420)).toBeGreaterThan(sure(-330));
    expect(sure(-2000)).toBeGreaterThan(0.99);
  });

  it('are as sure with an "is" said short or not', () => {
    const knee = [
      exit('knee', 0, 29, -300),
      exit('is', 30, 39, -100),
      exit("knee's", 0, 39, -400),
      exit('sore', 40, 69, -300),
    ];
    expect(likeliest(knee, order)?.words[0]?.sure).toBeGreaterThan(0.95);
  });

  it('are none of no sound, and of words that do not meet', () => {
    expect(likeliest([], order)).toBeNull();
    expect(likeliest([exit('right', 0, 29, -300), exit('knee', 40, 60, -300)], order)).toBeNull();
  });

  it('are no less likely than any others of the sound', () => {
    const best = likeliest(sounds, order);
    const other = likeliestOf(
      ['right', 'them', 'your', 'knee'].map((word) => {
        const { first, last, fit } = sounds.find((one) => one.word === word) ?? exit(word, 0, 0, 0);
        return { word, start: first / 100, end: (last + 1) / 100, frames: last - first + 1, fit };
      }),
      sounds,
      order,
    );
    expect(other?.words.map(({ word }) => word)).toEqual(['right', 'them', 'your', 'knee']);
    expect(best?.score).toBeGreaterThan(other?.score ?? 0);
  });
});

describe('the words that the real recogniser finished', () => {
  it('hold every word of its best way, in its frames and with its fit', async () => {
    const { module, models } = await loadModule();
    // Single phones in any order, of which some are found in any sound.
    const decoder = createDecoder(module, {
      model: models.wide,
      pronunciations: new Map(PHONES.map((phone) => [phone, [phone]])),
      network: () => fillerNetwork(PHONES),
    });
    let seed = 1;
    const noise = Float32Array.from({ length: 16_000 }, () => {
      seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) | 0;
      return (seed / 2 ** 31) * 0.1;
    });
    const { words } = decoder.decode(noise);
    const exits = decoder.exits();
    expect(words.length).toBeGreaterThan(0);
    for (const { word, start, frames, fit } of words) {
      const first = Math.round(start * 100);
      expect(exits).toContainEqual({ word, noise: false, first, last: first + frames - 1, fit });
    }
    expect(exits.length).toBeGreaterThan(words.length);
    expect(new Set(exits.map(({ word }) => word))).toContain('');
    decoder.close();
  });
});

describe('the words in which a mistake can hurt', () => {
  const linked = linkGrammars(hearingFiles().grammar);
  if (linked.kind === 'errors') throw new Error('the grammar has faults');
  const telling = tellingWords(linked.grammars, (word) => word !== 'elbow');

  it.each(['left', 'right', 'ankle', 'shin', 'eighteen', 'two', 'no', 'not', "isn't"])(
    'are such as %s',
    (word) => expect(telling.has(word)).toBe(true),
  );

  it.each(['the', 'of', 'swollen', 'pulse', 'with', 'elbow'])(
    'and no others, nor what cannot be heard: %s',
    (word) => expect(telling.has(word)).toBe(false),
  );

  /** Words one after another, each half a second. */
  const timed = (said: string) =>
    said.split(' ').map((word, at) => ({ word, start: at / 2, end: (at + 1) / 2 }));

  it.each([
    ['left shin sore', 'right shin sore'],
    ['neck now tender', 'neck no tender'],
    ['pulse is eighteen', 'pulse is eighty'],
    ['shin is sore', 'skin is sore'],
  ])('part two readings of a sound: “%s” and “%s”', (one, other) => {
    expect(differInTelling(timed(one), timed(other), telling)).toBe(true);
    expect(differInTelling(timed(other), timed(one), telling)).toBe(true);
  });

  it.each([
    ['a sore shin', 'the sore shin'],
    ['left shin sore', 'left shin saw'],
  ])('do not part “%s” and “%s”', (one, other) =>
    expect(differInTelling(timed(one), timed(other), telling)).toBe(false),
  );

  it('are the same as a short "is" and a whole one', () => {
    const short = [
      { word: "pulse's", start: 0, end: 1 },
      { word: 'two', start: 1, end: 1.5 },
    ];
    expect(differInTelling(timed('pulse is two'), short, telling)).toBe(false);
  });
});
