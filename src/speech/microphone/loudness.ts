// How loud a stretch of sound is: its power, its highest value, and how much of it stands at full scale.

export interface Loudness {
  /** sum of squares */
  readonly power: number;
  /** highest value, 0 to 1 */
  readonly peak: number;
  /** samples at full scale */
  readonly clipped: number;
  readonly count: number;
}

/** What the page is told of the last tenth of a second or so; times by the wall clock, epoch ms. */
export interface SoundLevel {
  readonly from: number;
  readonly to: number;
  /** root mean square, 0 to 1 */
  readonly rms: number;
  /** 0 where the sound is nothing but zeros */
  readonly peak: number;
  /** share of the samples at full scale, 0 to 1 */
  readonly clipped: number;
}

const FULL_SCALE = 0.99;

export const emptyLoudness: Loudness = { power: 0, peak: 0, clipped: 0, count: 0 };

/** The loudness of a stretch with more sound added. */
export function louder(before: Loudness, samples: Float32Array): Loudness {
  let { power, peak, clipped } = before;
  for (const sample of samples) {
    const size = Math.abs(sample);
    power += sample * sample;
    if (size > peak) peak = size;
    if (size >= FULL_SCALE) clipped += 1;
  }
  return { power, peak, clipped, count: before.count + samples.length };
}
