// How well each word fits its sound, against the best string of phones for the same sound: a word that was not said loses
// to phones that were.

import type { HeardWord } from '../engine/decoder.ts';

/**
 * How far, in the decoder's units of log score a frame, a word may fall behind free phones before it is unsure. Measured on
 * synthetic voices (tests/bench/hearing): of the words rightly heard one in forty falls further behind with the telephone's
 * model, one in 23 of 2,528 with the wide one.
 */
const MOST_BEHIND = 14;
/** The steepness of the measure. */
const UNIT = 5;
/** Frames on both sides that are taken along: the borders between words are never sure. */
const BORDER = 2;

/** Of a word by its lead: 0 to 1, below a half where it is unsure. A measure and no probability. */
export const trustOf = (lead: number): number => 1 / (1 + Math.exp(-(lead + MOST_BEHIND) / UNIT));

/** Of each word how far it is ahead of the phones, in the decoder's units of log score a frame; mostly it is behind. */
export function leadsOf(words: readonly HeardWord[], phones: readonly HeardWord[]): readonly number[] {
  const free = perFrame(phones);
  const own = perFrame(words);
  return words.map((word) => {
    const [first, last] = framesOf(word);
    let lead = 0;
    for (let frame = first - BORDER; frame <= last + BORDER; frame++)
      lead += (own.get(frame) ?? free.get(frame) ?? 0) - (free.get(frame) ?? own.get(frame) ?? 0);
    return lead / (last - first + 1 + 2 * BORDER);
  });
}

const framesOf = ({ start, frames }: HeardWord): readonly [first: number, last: number] => {
  const first = Math.round(start * 100);
  return [first, first + frames - 1];
};

function perFrame(words: readonly HeardWord[]): ReadonlyMap<number, number> {
  const fits = new Map<number, number>();
  for (const word of words) {
    const [first, last] = framesOf(word);
    for (let frame = first; frame <= last; frame++) fits.set(frame, word.fit / word.frames);
  }
  return fits;
}
