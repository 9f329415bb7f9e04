// Cuts what was heard at its pauses, so that a part that is ordinary talk takes none of the others with it.

import type { HeardWord } from '../engine/decoder.ts';
import { isAside } from './aside.ts';

/** A stretch between two pauses; the times are those of its sound. */
export interface Chunk {
  readonly words: readonly HeardWord[];
  /** some of it was heard as ordinary talk: then the rest may be half of a sentence, and its "no" may be in that part */
  readonly isTalk: boolean;
}

/**
 * A pause of this many seconds ends a chunk. A breath between two sentences may be as short; where the pause was within
 * one, nothing is lost, since chunks that were understood are joined again.
 */
const PAUSE = 0.07;

export function chunksOf(words: readonly HeardWord[]): readonly Chunk[] {
  const chunks: HeardWord[][] = [];
  for (const word of words) {
    const last = chunks.at(-1)?.at(-1);
    if (last === undefined || word.start - last.end >= PAUSE) chunks.push([word]);
    else chunks.at(-1)?.push(word);
  }
  return chunks.map((chunk) => ({ words: chunk, isTalk: chunk.some(({ word }) => isAside(word)) }));
}
