// What the loudness at a microphone over some seconds says of how well it can hear, and what a person can do about it.

import type { SoundLevel } from './microphone/loudness.ts';

/** `fine` is also the answer while there is too little sound to tell. */
export type Advice = 'fine' | 'too-loud' | 'too-quiet' | 'too-noisy';

/** Seconds of sound that are looked at, and the fewest from which anything is said. */
export const WINDOW = 6;
const FEWEST = 3;
/** More than this share of samples at full scale is heard as crackling, and words are lost in it. */
const CLIPPED = 0.002;
/** Speech under this, in decibels under full scale, is close to what a 16-bit microphone adds by itself. */
const QUIET = -46;
/**
 * Speech must stand this many decibels above what lies under it. With the bundled recogniser and synthetic voices in wind,
 * a quarter to two thirds of what was said was lost at 10 dB (measured while planning; tests/bench/hearing measures anew).
 */
const LEAST_ABOVE = 15;
/** Under this the noise is no matter, however quiet the speech. */
const STILL = -60;

export const decibels = (rms: number): number => (rms <= 0 ? -100 : 20 * Math.log10(rms));

/** The value that the given share of the values lies under. */
function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

/** The levels of the last seconds in their order; `speech`: somebody spoke in them, as far as the ear knows. */
export function adviceOf(levels: readonly SoundLevel[], speech: boolean): Advice {
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined || last.to - first.from < FEWEST * 1000) return 'fine';
  const clipped = levels.reduce((sum, level) => sum + level.clipped, 0) / levels.length;
  if (clipped > CLIPPED) return 'too-loud';
  if (!speech) return 'fine';
  const loudness = levels.map(({ rms }) => decibels(rms));
  // Speech pauses for a fifth of the time and more; what is left then is the noise.
  const [noise, voice] = [quantile(loudness, 0.1), quantile(loudness, 0.9)];
  if (noise > STILL && voice - noise < LEAST_ABOVE) return 'too-noisy';
  return voice < QUIET ? 'too-quiet' : 'fine';
}

/** The levels of the window that ends with the newest. */
export const recent = (levels: readonly SoundLevel[], newest: SoundLevel): readonly SoundLevel[] => [
  ...levels.filter(({ from }) => newest.to - from < WINDOW * 1000 && from <= newest.from),
  newest,
];
