// Advice from loudness: too loud, too quiet, too noisy, and silence where there is nothing to say. The levels are invented.

import { describe, expect, it } from 'vitest';
import { adviceOf, decibels, recent } from '../../src/speech/level.ts';
import type { SoundLevel } from '../../src/speech/microphone/index.ts';

const amplitude = (value: number): number => 10 ** (value / 20);

/** Six seconds in which every third stretch is a pause: the voice and the noise in decibels under full scale. */
const talk = (voice: number, noise: number, clipped = 0, seconds = 6): readonly SoundLevel[] =>
  Array.from({ length: seconds * 8 }, (_, index): SoundLevel => {
    const from = index * 125;
    const rms = amplitude(index % 3 === 2 ? noise : voice);
    return { from, to: from + 125, rms, peak: Math.min(1, rms * 4), clipped };
  });

describe('advice', () => {
  it.each([
    ['a near voice in a still place', -22, -65, 0, 'fine'],
    ['a near voice in some noise', -20, -45, 0, 'fine'],
    ['a voice in wind', -22, -30, 0, 'too-noisy'],
    ['a voice far away', -55, -75, 0, 'too-quiet'],
    ['a voice that overdrives the microphone', -5, -40, 0.02, 'too-loud'],
  ] as const)('for %s', (_what, voice, noise, clipped, advice) => {
    expect(adviceOf(talk(voice, noise, clipped), true)).toBe(advice);
  });

  it('is kept back where nobody speaks: a quiet place is no fault', () => {
    expect(adviceOf(talk(-70, -72), false)).toBe('fine');
  });

  it('is kept back until there is enough to tell from', () => {
    expect(adviceOf(talk(-22, -30, 0, 2), true)).toBe('fine');
    expect(adviceOf([], true)).toBe('fine');
  });
});

describe('decibels', () => {
  it('are 0 at full scale, six fewer at a half, and never endless', () => {
    expect(decibels(1)).toBe(0);
    expect(decibels(0.5)).toBeCloseTo(-6.02, 2);
    expect(decibels(0)).toBe(-100);
  });
});

describe('the window', () => {
  it('keeps six seconds, and begins anew where the clock was set back', () => {
    const levels = talk(-20, -50, 0, 20).reduce<readonly SoundLevel[]>((kept, one) => recent(kept, one), []);
    expect((levels.at(-1)?.to ?? 0) - (levels[0]?.from ?? 0)).toBeLessThanOrEqual(6125);
    const back: SoundLevel = { from: 0, to: 125, rms: 0.1, peak: 0.2, clipped: 0 };
    expect(recent(levels, back)).toEqual([back]);
  });
});
