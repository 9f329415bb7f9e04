// The parts of what was heard, each judged: whether it was said in these words, and whether that is sure.

import type { HeardWord } from '../engine/decoder.ts';
import { chunksOf } from './chunks.ts';
import { leadOf, oddsOf, type WeighedWord } from './odds.ts';
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
 * Odds below which all that was understood is asked about. With what the other reading does not say it marks 21 of 22 sentences
 * that were heard otherwise than said, and 32 of 81 that were heard as said (tests/bench/hearing/results.md).
 */
const UNSURE = 2;

/** A word of another reading of the same sound. */
export type OtherWord = HeardWord & Pick<WeighedWord, 'lead'>;

/**
 * In order. `otherwise` is the same sound in words of any order, or null where it was not heard so; `all` lets everything be
 * understood, to measure what the judgement is worth.
 */
export function partsOf(
  words: readonly JudgedWord[],
  otherwise: readonly OtherWord[] | null = null,
  all = false,
): readonly Part[] {
  const whole = oddsOf(words, gapOf(words, otherwise ?? []));
  const chunks = chunksOf(words);
  return chunks.map((chunk) => {
    const other = within(chunk, otherwise ?? []);
    const own = oddsOf(chunk, gapOf(chunk, other));
    const least = whole < SAID ? PART_OF_OTHER : PART_OF_SAID;
    const frames = chunk.reduce((sum, word) => sum + word.frames, 0);
    return {
      words: chunk,
      confidence: chunk.reduce((sum, word) => sum + word.confidence * word.frames, 0) / frames,
      understood: all || (chunks.length === 1 ? whole >= SAID : own >= least),
      unsure: (whole < SAID ? own - PART_OF_OTHER : whole) < UNSURE,
      otherwise: other,
    };
  });
}

/** How far the other reading is ahead of these words; null where there is none. */
function gapOf(words: readonly JudgedWord[], other: readonly OtherWord[]): number | null {
  const [lead, leadOfOther] = [leadOf(words), leadOf(other)];
  return lead === null || leadOfOther === null ? null : leadOfOther - lead;
}

/** The words of the other reading whose middle lies in the time of these. */
function within(words: readonly HeardWord[], other: readonly OtherWord[]): readonly OtherWord[] {
  const [from, to] = [words[0]?.start ?? 0, words.at(-1)?.end ?? 0];
  return other.filter(({ start, end }) => (start + end) / 2 >= from && (start + end) / 2 <= to);
}
