// The parts of what was heard, each judged: whether it was said in these words, and whether that is sure.

import type { HeardWord } from '../engine/decoder.ts';
import type { Band } from '../engine/model-files.ts';
import { chunksOf } from './chunks.ts';
import { oddsOf } from './odds.ts';
import type { JudgedWord, Reading } from './reading.ts';
import type { Part } from './utterances.ts';

/** Odds from which on the whole was said in these words. */
const SAID = 0;
/** Within a whole that was said, a part between two pauses is refused below these: it is too short to be sure by itself. */
const PART_OF_SAID = -3.1;
/** Within a whole that was not, a part is said from these on. */
const PART_OF_OTHER = 0.7;
/** Odds below which all that was understood is asked about. */
const UNSURE = 1.4;

/** In order. `other` is the other reading of the same sound; `all` lets everything be understood, to measure the judgement. */
export function partsOf(
  { from, words }: Reading,
  band: Band,
  other: Reading | null = null,
  all = false,
): readonly Part[] {
  const otherwise = other?.words ?? [];
  const odds = (some: readonly JudgedWord[], beside: readonly JudgedWord[]): number =>
    oddsOf({ from, words: some }, beside, band, other === null ? null : sameOf(some, beside));
  const whole = odds(words, otherwise);
  const chunks = chunksOf(words);
  return chunks.map((chunk) => {
    const beside = within(chunk, otherwise);
    const own = odds(chunk, beside);
    const least = whole < SAID ? PART_OF_OTHER : PART_OF_SAID;
    const frames = chunk.reduce((sum, word) => sum + word.frames, 0);
    return {
      words: chunk,
      confidence: chunk.reduce((sum, word) => sum + word.confidence * word.frames, 0) / frames,
      understood: all || (chunks.length === 1 ? whole >= SAID : own >= least),
      unsure: (whole < SAID ? own - PART_OF_OTHER : whole) < UNSURE,
      otherwise: beside,
    };
  });
}

/** How much of these words, by their lengths, the other reading says at the same time: nothing where it says nothing. */
function sameOf(words: readonly HeardWord[], other: readonly HeardWord[]): number {
  const isSame = ({ word, start, end }: HeardWord): boolean =>
    other.some((one) => one.word === word && one.start < end && one.end > start);
  const frames = (some: readonly HeardWord[]): number => some.reduce((sum, one) => sum + one.frames, 0);
  return words.length === 0 ? 0 : frames(words.filter(isSame)) / frames(words);
}

/** The words of the other reading whose middle lies in the time of these. */
function within(words: readonly HeardWord[], other: readonly JudgedWord[]): readonly JudgedWord[] {
  const [from, to] = [words[0]?.start ?? 0, words.at(-1)?.end ?? 0];
  return other.filter(({ start, end }) => (start + end) / 2 >= from && (start + end) / 2 <= to);
}
