// Sound that ends where a telephone's does is told from sound that goes on. The sounds are made here and are nobody's.

import { describe, expect, it } from 'vitest';
import { RATE } from '../../src/speech/engine/decoder.ts';
import { bandMeter, likelyBand } from '../../src/speech/hearing/band.ts';

const LENGTH = RATE / 2;

/** Half a second of tones, each with its loudness, that come and go slowly: a click has every tone. Full scale is 1. */
const tones = (...parts: readonly (readonly [hertz: number, loudness: number])[]): Float32Array =>
  Float32Array.from({ length: LENGTH }, (_, at) => {
    const sum = parts.reduce(
      (all, [hertz, loud]) => all + loud * Math.sin((2 * Math.PI * hertz * at) / RATE),
      0,
    );
    return sum * Math.sin((Math.PI * at) / LENGTH) ** 2;
  });
const VOWEL = [300, 0.3] as const;
const vowel = tones(VOWEL, [2500, 0.1]);
/** 40 decibels under the vowel, as a faint hiss is. */
const hiss = tones(VOWEL, [6500, 0.003]);
const still = new Float32Array(LENGTH);

describe('the band of a sound', () => {
  it('is narrow where it has no more samples than a telephone’s, before anything is heard', () => {
    expect([8000, 11_025, 16_000, 48_000].map(likelyBand)).toEqual(['narrow', 'wide', 'wide', 'wide']);
  });

  it('is wide where anything of a voice lies beyond, and narrow where nothing does', () => {
    const meter = bandMeter();
    meter.push(vowel);
    expect(meter.take()).toBe('narrow');
    meter.push(hiss);
    expect(meter.take()).toBe('wide');
  });

  it('is not told by stillness', () => {
    const meter = bandMeter();
    meter.push(still);
    expect(meter.take()).toBeNull();
  });

  it('stays wide through a thump or two, and is narrow when the microphone has become so', () => {
    const meter = bandMeter();
    const taken = [hiss, vowel, vowel, vowel].map((sound) => {
      meter.push(sound);
      return meter.take();
    });
    expect(taken).toEqual(['wide', 'wide', 'wide', 'narrow']);
  });

  it('does not depend on how the sound is cut into blocks', () => {
    const [whole, parts] = [bandMeter(), bandMeter()];
    whole.push(hiss);
    for (let at = 0; at < hiss.length; at += 77) parts.push(hiss.subarray(at, at + 77));
    expect(parts.take()).toBe(whole.take());
  });
});
