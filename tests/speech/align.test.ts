// The benchmark's clock: where a recording was at the microphone is found again from stamped levels, and not where it was cut.

import { describe, expect, it } from 'vitest';
import { beganAt, powerOf, type Stamped } from '../bench/word/align.ts';

const RATE = 16_000;
const ORIGIN = 1_900_000_000_000;

/** Two seconds of stillness with bursts of made-up speech within, each of another loudness. */
const file = Float32Array.from({ length: 2 * RATE }, (_, at) => {
  const ms = (at / RATE) * 1000;
  const burst = ms > 400 && ms < 1500 ? 0.1 + 0.25 * Math.abs(Math.sin(ms / 130)) : 0;
  return burst * Math.sin(at * 0.7);
});
const sound = { sums: powerOf(file), rate: RATE };

/** Levels of 120 ms as the tap would stamp them, the file having begun `late` ms after the first. */
const stampedOf = (samples: Float32Array, late: number): readonly Stamped[] =>
  Array.from({ length: 24 }, (_, index) => {
    const from = index * 120 - late;
    const part = samples.subarray(
      Math.max(0, Math.round((from / 1000) * RATE)),
      Math.max(0, Math.round(((from + 120) / 1000) * RATE)),
    );
    const rms = Math.sqrt(part.reduce((sum, value) => sum + value * value, 0) / (0.12 * RATE));
    return { from: ORIGIN + index * 120, to: ORIGIN + index * 120 + 120, rms };
  });

describe('the place of a recording', () => {
  it.each([0, 37, 250, 611])('is found within 5 ms where it began %i ms later', (late) => {
    const found = beganAt(stampedOf(file, late), sound, { from: 400, to: 1500 }, ORIGIN, 1000);
    expect(Math.abs((found ?? 0) - ORIGIN - late)).toBeLessThanOrEqual(5);
  });

  it('is not found where a part of it was lost', () => {
    const cut = Float32Array.from([...file.subarray(0, 0.8 * RATE), ...file.subarray(1.1 * RATE)]);
    expect(beganAt(stampedOf(cut, 100), sound, { from: 400, to: 1500 }, ORIGIN, 1000)).toBeNull();
  });
});
