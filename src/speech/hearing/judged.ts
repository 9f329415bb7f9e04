// The parts of what was heard, each judged: whether it was said in these words, and whether that is sure.

import type { HeardWord } from '../engine/decoder.ts';
import { chunksOf } from './chunks.ts';
import { oddsOf } from './odds.ts';
import type { JudgedWord } from './reading.ts';
import type { Part } from './utterances.ts';

/** Odds from which on the whole was said in these words. */
const SAID = 0;
/** Within a whole that was said, a part between two pauses is refused below these: it is too short to be sure by itself. */
const PART_OF_SAID = -3.1;
/** Within a whole that was not, a part is said from these on. */
const PART_OF_OTHER = 0.7;
/** Odds below which all that was understood is asked about. */
const UNSURE = 1;

/**
 * In order. `others` are what the same sound may have been as well; `all` lets everything be understood, to measure the judgement.
 */
export function partsOf(
  words: readonly JudgedWord[],
  others: readonly (readonly HeardWord[])[] = [],
  all = false,
): readonly Part[] {
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
      otherwise: others.map((other) => within(chunk, other)),
    };
  });
}

/** The words of another reading whose middle lies in the time of these. */
function within(words: readonly HeardWord[], other: readonly HeardWord[]): readonly HeardWord[] {
  const [from, to] = [words[0]?.start ?? 0, words.at(-1)?.end ?? 0];
  return other.filter(({ start, end }) => (start + end) / 2 >= from && (start + end) / 2 <= to);
}
