// Whatever is said, the reader does not fail, gives frames of the right shape, and loses no word of substance.

import { beforeAll, describe, expect, it } from 'vitest';
import type { Reader } from '../../src/parse/index.ts';
import { seeded } from '../seeded.ts';
import { realReader } from '../talk-case.ts';
import { keeper } from './fuzz/kept.ts';
import { mixtures } from './fuzz/mixture.ts';
import { faultsOf } from './fuzz/well-formed.ts';
import { HEARD_AT, ZONE } from './round-trip/sentence.ts';

const SEED = 20260504;
const MIXTURES = 100_000;
const MINUTES = 60_000;

// What is told or asked of somebody is no statement, and its words may go; more than this share may not.
const MAY_GO: ReadonlySet<string> = new Set(['instruction', 'question']);
const MOST_GONE = 0.05;

let reader: Reader;
beforeAll(() => {
  reader = realReader();
});

/** Reads the texts as one long talk. */
function readAll(texts: Iterable<string>) {
  const keep = keeper();
  const found = { thrown: [] as string[], faults: [] as string[], lost: [] as string[], words: 0, gone: 0 };
  let context = reader.begin();
  for (const text of texts) {
    try {
      const reading = reader.read({ text, heardAt: HEARD_AT, zone: ZONE }, context);
      const { substantive, unkept } = keep(text, context, reading.frames);
      found.words += substantive;
      for (const { word, mood, at } of unkept) {
        if (MAY_GO.has(mood ?? '')) found.gone++;
        else found.lost.push(`${word} (${mood}) in … ${text.slice(Math.max(0, at - 60), at + 60)} …`);
      }
      for (const frame of reading.frames)
        for (const fault of faultsOf(frame, text))
          found.faults.push(`${fault}: ${frame.heard.slice(0, 120)}`);
      context = reading.context;
    } catch (error) {
      found.thrown.push(`${error} in ${text.slice(0, 300)}`);
      context = reader.begin();
    }
  }
  return found;
}

function* texts(count: number, tokens: (draw: () => number) => number): Generator<string> {
  const chance = seeded(SEED + count);
  const mix = mixtures(chance);
  for (let i = 0; i < count; i++) yield mix(tokens(chance.next));
}

const KINDS: readonly (readonly [name: string, count: number, tokens: (draw: () => number) => number])[] = [
  // Short ones come more often, as in talk.
  [`${MIXTURES} mixtures of 1 to 60 tokens`, MIXTURES, (draw) => 1 + Math.floor(draw() ** 6 * 60)],
  ['20 mixtures of 1000 tokens', 20, () => 1000],
  ['20 mixtures of 5000 tokens', 21, () => 5000],
];

describe.each(KINDS)('%s', (name, count, tokens) => {
  let found: ReturnType<typeof readAll>;
  beforeAll(() => {
    found = readAll(texts(count, tokens));
    const share = ((found.gone / found.words) * 100).toFixed(2);
    console.info(
      `${name}: ${found.words} words of substance, ${found.gone} (${share} %) told or asked of somebody`,
    );
  }, 10 * MINUTES);

  it('make the reader throw nothing', () => expect(found.thrown.slice(0, 20)).toEqual([]));

  it('give frames whose spans and slots are sound', () => expect(found.faults.slice(0, 20)).toEqual([]));

  it('lose no word of substance', () => expect(found.lost.slice(0, 20)).toEqual([]));

  it(`leave out at most ${MOST_GONE * 100} words in 100 that were told or asked of somebody`, () => {
    expect(found.words).toBeGreaterThan(0);
    expect(found.gone / found.words).toBeLessThanOrEqual(MOST_GONE);
  });
});
