// Whether sound reaches beyond what a telephone passes: sound that does not is heard by the model that was made for it.

import { RATE } from '../engine/decoder.ts';
import type { Band } from '../engine/model-files.ts';
import { highPass } from '../wav/index.ts';

/** Samples a second up to which there can be nothing beyond a telephone's band. */
const TELEPHONE = 8000;
/** Hertz, well above what is left of a telephone's band by its own filter and by the one that measures. */
const BEYOND = 5500;
/**
 * What lies beyond is this many decibels under the loudest of a voice, at least: in 64 sentences of each of four synthetic voices
 * -3 to -51 ("no" in the one that has the least), and -60 to -86 when they were passed through 8,000 samples a second.
 */
const LEAST = -55;
/** A microphone that passed more once passes it still: a thump has nothing that is high. So many stretches say otherwise. */
const IN_A_ROW = 3;
/** Samples over which loudness is taken. */
const FRAME = 320;

export interface BandMeter {
  /** the next sound, mono at 16 000 a second, before any noise is added to it */
  push(block: Float32Array): void;
  /** asked after each stretch of speech, says what the microphone is like; null where all was still */
  take(): Band | null;
}

/** Sound of so many samples a second is first taken for this. */
export const likelyBand = (rate: number): Band => (rate <= TELEPHONE ? 'narrow' : 'wide');

/** Compares the loudest moment beyond the band with the loudest of all. */
export function bandMeter(): BandMeter {
  const filters = [highPass(BEYOND, RATE), highPass(BEYOND, RATE)] as const;
  let [sums, count]: [readonly [all: number, beyond: number], number] = [[0, 0], 0];
  let [wasWide, row] = [false, 0];
  let loudest: readonly [all: number, beyond: number] = [0, 0];
  const add = (all: number, beyond: number): void => {
    sums = [sums[0] + all * all, sums[1] + beyond * beyond];
    count += 1;
    if (count < FRAME) return;
    loudest = [Math.max(loudest[0], sums[0]), Math.max(loudest[1], sums[1])];
    [sums, count] = [[0, 0], 0];
  };
  return {
    push: (block) => {
      const beyond = filters.reduce((sound, filter) => filter(sound), block);
      for (const [at, sample] of block.entries()) add(sample, beyond[at] ?? 0);
    },
    take: () => {
      const [all, beyond] = loudest;
      loudest = [0, 0];
      if (all === 0) return null;
      const isWide = 10 * Math.log10(beyond / all) >= LEAST;
      row = isWide ? 0 : row + 1;
      wasWide = isWide || (wasWide && row < IN_A_ROW);
      return wasWide ? 'wide' : 'narrow';
    },
  };
}
