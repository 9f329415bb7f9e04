// What the loudness at a microphone over some seconds says of how well it can hear, and what a person can do about it.

import type { Calibrated } from './calibration.ts';
import type { SoundLevel } from './microphone/loudness.ts';

/** `fine` is also the answer while there is too little sound to tell. */
export type Advice = 'fine' | 'too-loud' | 'too-quiet' | 'too-noisy';

/** Seconds of sound that are looked at, and the fewest from which anything is said. */
export const WINDOW = 6;
const FEWEST = 3;
/** More than this share of samples at full scale is heard as crackling, and words are lost in it. */
const CLIPPED = 0.002;
/** Speech under this, in decibels under full scale, is close to what a 16-bit microphone adds by itself. */
export const QUIET = -46;
/**
 * Speech must stand this many decibels above what lies under it. With the bundled recogniser and synthetic voices in wind,
 * a quarter to two thirds of what was said was lost at 10 dB (measured while planning; tests/bench/hearing measures anew).
 */
export const LEAST_ABOVE = 15;
/** Under this the noise is no matter, however quiet the speech. */
export const STILL = -60;
/** A voice this many decibels fainter than it was comes from four times as far (level falls as 20 log10 of the distance). */
const FAINTER = 12;

export const decibels = (rms: number): number => (rms <= 0 ? -100 : 20 * Math.log10(rms));

/** The value that the given share of the values lies under. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

/**
 * The levels of the last seconds in their order; `speech`: somebody spoke in them, as far as the ear knows. `known`: what
 * this place and speaker sounded like, where that was measured.
 */
export function adviceOf(
  levels: readonly SoundLevel[],
  speech: boolean,
  known: Calibrated | null = null,
): Advice {
  const [first, last] = [levels[0], levels.at(-1)];
  if (first === undefined || last === undefined || last.to - first.from < FEWEST * 1000) return 'fine';
  const clipped = levels.reduce((sum, level) => sum + level.clipped, 0) / levels.length;
  if (clipped > CLIPPED) return 'too-loud';
  const loudness = levels.map(({ rms }) => decibels(rms));
  if (!speech) return wouldDrown(quantile(loudness, 0.5), known) ? 'too-noisy' : 'fine';
  // Speech pauses for a fifth of the time and more; what is left then is the noise.
  const [noise, voice] = [quantile(loudness, 0.1), quantile(loudness, 0.9)];
  if (noise > STILL && voice - noise < LEAST_ABOVE) return 'too-noisy';
  return voice < faintest(known) ? 'too-quiet' : 'fine';
}

/** The voice that was measured would be lost in the noise of now, so that it can be said before anybody speaks. */
const wouldDrown = (noise: number, known: Calibrated | null): boolean =>
  known !== null && known.voice !== null && noise > STILL && known.voice - noise < LEAST_ABOVE;

/** A microphone that gives little of everything hears well all the same where the voice was measured well above its noise. */
const faintest = (known: Calibrated | null): number =>
  known === null || known.voice === null || known.voice - known.noise < LEAST_ABOVE
    ? QUIET
    : Math.min(QUIET, known.voice - FAINTER);

/** The levels of the window that ends with the newest. */
export const recent = (levels: readonly SoundLevel[], newest: SoundLevel): readonly SoundLevel[] => [
  ...levels.filter(({ from }) => newest.to - from < WINDOW * 1000 && from <= newest.from),
  newest,
];
