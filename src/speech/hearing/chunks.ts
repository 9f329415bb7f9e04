// Cuts what was heard at its pauses, so that a part that is ordinary talk takes none of the others with it.

import type { HeardWord } from '../engine/decoder.ts';

/**
 * A pause of this many seconds ends a chunk. A breath between two sentences may be as short; where the pause was within
 * one, nothing is lost, since chunks that were understood are joined again.
 */
const PAUSE = 0.07;

/** Stretches between two pauses; the times of the words are those of the sound. */
export function chunksOf<Word extends HeardWord>(words: readonly Word[]): readonly (readonly Word[])[] {
  const chunks: Word[][] = [];
  for (const word of words) {
    const last = chunks.at(-1)?.at(-1);
    if (last === undefined || word.start - last.end >= PAUSE) chunks.push([word]);
    else chunks.at(-1)?.push(word);
  }
  return chunks;
}
