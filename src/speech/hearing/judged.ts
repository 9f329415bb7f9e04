// The parts of what was heard, each judged: whether it was said in these words, and whether that is sure.

import type { HeardWord } from '../engine/decoder.ts';
import { chunksOf } from './chunks.ts';
import { oddsOf, type WeighedWord } from './odds.ts';
import type { Part } from './utterances.ts';

export interface JudgedWord extends HeardWord, WeighedWord {
  readonly confidence: number;
}

/** Odds from which on the whole was said in these words. */
const SAID = 0;
/** Within a whole that was said, a part between two pauses is refused below these: it is too short to be sure by itself. */
const PART_OF_SAID = -2.5;
/** Within a whole that was not, a part is said from these on. */
const PART_OF_OTHER = 2;
/**
 * Odds below which what was understood is asked about. Of 16 sentences that were heard otherwise than said 12 stand below it, and
 * of 68 that were heard as said 26.
 */
const UNSURE = 3;

/** In order; `all` lets everything be understood, to measure what the judgement is worth. */
export function partsOf(words: readonly JudgedWord[], all = false): readonly Part[] {
  const whole = oddsOf(words);
  const chunks = chunksOf(words);
  return chunks.map((chunk) => {
    const own = oddsOf(chunk);
    const least = whole < SAID ? PART_OF_OTHER : PART_OF_SAID;
    const frames = chunk.reduce((sum, word) => sum + word.frames, 0);
    return {
      words: chunk,
      confidence: chunk.reduce((sum, word) => sum + word.confidence * word.frames, 0) / frames,
      understood: all || (chunks.length === 1 ? whole >= SAID : own >= least),
      unsure: (whole < SAID ? own - PART_OF_OTHER : whole) < UNSURE,
    };
  });
}
