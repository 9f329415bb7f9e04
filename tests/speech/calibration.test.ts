// The measurement of place and speaker, with sound made by flite and SoX where they are installed: synthetic, not a hill.

import { execFileSync } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  ageWords,
  type Calibrated,
  calibrationOf,
  calibrationWords,
  gathered,
  stillGood,
} from '../../src/speech/calibration.ts';
import { adviceOf } from '../../src/speech/level.ts';
import { emptyLoudness, louder, type SoundLevel } from '../../src/speech/microphone/loudness.ts';

const amplitude = (value: number): number => 10 ** (value / 20);
const NOON = Date.UTC(2031, 3, 5, 12);

/** Levels, eight a second, of what `at` gives in decibels for each second since noon. */
const levels = (seconds: number, at: (second: number) => number): readonly SoundLevel[] =>
  Array.from({ length: seconds * 8 }, (_, index): SoundLevel => {
    const from = NOON + index * 125;
    const rms = amplitude(at(index / 8));
    return { from, to: from + 125, rms, peak: Math.min(1, rms * 4), clipped: 0 };
  });
/** Two seconds of the place, then speech with a pause every third stretch. */
const spoken = (voice: number, noise: number) =>
  levels(5, (second) => (second < 2 || Math.round(second * 8) % 3 === 0 ? noise : voice));

function known(some: readonly SoundLevel[]): Calibrated {
  const now = calibrationOf(some);
  if (now.state !== 'known') throw new Error(`it is still at ${now.state}`);
  return now.calibrated;
}

describe('the measurement', () => {
  it('asks for quiet, then for speech, counts down, and is done after five seconds', () => {
    const all = spoken(-20, -60);
    expect(calibrationOf([])).toEqual({ state: 'still', left: 5 });
    expect(calibrationOf(all.slice(0, 8))).toEqual({ state: 'still', left: 4 });
    expect(calibrationOf(all.slice(0, 24))).toEqual({ state: 'speak', left: 2 });
    expect(calibrationOf(all).state).toBe('known');
  });

  it('finds the voice and the noise', () => {
    const { noise, voice, at } = known(spoken(-22, -58));
    expect(noise).toBeCloseTo(-58, 5);
    expect(voice).toBeCloseTo(-22, 5);
    expect(at).toBe(NOON + 5000);
  });

  it('finds the noise also where somebody spoke from the first', () => {
    const { noise } = known(levels(5, (second) => (Math.round(second * 8) % 3 === 0 ? -58 : -22)));
    expect(noise).toBeCloseTo(-58, 5);
  });

  it('takes nobody for a voice where none stood out', () => {
    expect(known(levels(5, () => -40)).voice).toBeNull();
  });

  it('begins anew where sound was missing', () => {
    const [first, ...more] = spoken(-20, -60);
    const late = more.at(-1);
    if (first === undefined || late === undefined) throw new Error('no sound');
    expect(gathered([first], late)).toEqual([late]);
  });
});

describe('what it says', () => {
  it.each([
    [-62, -25, /^Your voice is 37 decibels louder than the noise here: good\.$/],
    [-100, -20, /^Your voice is more than 40 decibels/],
    [-45, -27, /enough, with little to spare/],
    [-35, -25, /^Too noisy: your voice is only 10 decibels louder/],
    [-70, -52, /faint at this microphone/],
    [-75, null, /still here\. No voice was heard/],
    [-30, null, /noisy here, and no voice stood out/],
  ] as const)('with a noise of %s and a voice of %s decibels', (noise, voice, words) => {
    expect(calibrationWords({ noise, voice, at: 0 })).toMatch(words);
  });
});

describe('advice that is measured against it', () => {
  const near = known(spoken(-24, -62));

  it('says that the wind is up before anybody speaks', () => {
    const wind = levels(6, () => -34);
    expect(adviceOf(wind, false)).toBe('fine');
    expect(adviceOf(wind, false, near)).toBe('too-noisy');
    expect(
      adviceOf(
        levels(6, () => -50),
        false,
        near,
      ),
    ).toBe('fine');
  });

  it('does not call a voice too quiet at a microphone that gives little of everything', () => {
    const little = spoken(-50, -85);
    expect(adviceOf(little, true)).toBe('too-quiet');
    expect(adviceOf(little, true, known(little))).toBe('fine');
    expect(adviceOf(spoken(-68, -85), true, known(little))).toBe('too-quiet');
  });

  it('is as without it where the measurement found no voice', () => {
    const deaf = { noise: -40, voice: null, at: NOON };
    expect(
      adviceOf(
        levels(6, () => -34),
        false,
        deaf,
      ),
    ).toBe('fine');
    expect(adviceOf(spoken(-50, -85), true, deaf)).toBe('too-quiet');
  });
});

describe('the measurement is forgotten', () => {
  const one: Calibrated = { noise: -60, voice: -20, at: NOON };
  it.each([
    ['not after an hour', 3_600_000, one],
    ['after half a day', 12 * 3_600_000, null],
    ['when the clock was set back', -60_000, null],
  ] as const)('%s', (_what, later, left) => {
    expect(stillGood(one, NOON + later)).toEqual(left);
  });
});

/** The levels of made sound, as the tap tells them: an RMS of 120 ms each. */
function levelsOf(samples: Float32Array, rate = 16_000): readonly SoundLevel[] {
  const size = Math.round(rate * 0.12);
  return Array.from({ length: Math.floor(samples.length / size) }, (_, index): SoundLevel => {
    const { power, peak, clipped, count } = louder(
      emptyLoudness,
      samples.subarray(index * size, (index + 1) * size),
    );
    const from = NOON + index * 120;
    return { from, to: from + 120, rms: Math.sqrt(power / count), peak, clipped: clipped / count };
  });
}

const folder = mkdtempSync(join(tmpdir(), 'fieldsay-wind-'));
const voice = join(folder, 'voice.wav');

/** Two still seconds and a spoken line, mixed with brown noise, which has wind's weight on low tones, at so many decibels. */
function made(noise: number | null): Float32Array {
  const raw = ['-t', 'raw', '-e', 'floating-point', '-b', '32', '-r', '16000', '-c', '1', '-'];
  const wind = join(folder, 'wind.wav');
  if (noise === null) return floats(execFileSync('sox', ['-R', voice, ...raw]));
  execFileSync('sox', [
    '-R',
    '-n',
    '-r',
    '16000',
    '-c',
    '1',
    wind,
    'synth',
    '10',
    'brownnoise',
    'norm',
    String(noise),
  ]);
  return floats(execFileSync('sox', ['-R', '-m', '-v', '1', voice, '-v', '1', wind, ...raw]));
}
const floats = (bytes: Buffer): Float32Array =>
  new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length));

function speak(): boolean {
  try {
    const line = join(folder, 'line.wav');
    execFileSync('flite', [
      '-voice',
      'rms',
      '-t',
      'left forearm swelling, no deformity of the right wrist',
      '-o',
      line,
    ]);
    execFileSync('sox', ['-R', line, '-r', '16000', '-c', '1', voice, 'norm', '-6', 'pad', '2.1', '1']);
    return true;
  } catch {
    return false;
  }
}

const WHY = speak() ? '' : ' (not tested: flite or sox is not installed: apt-get install flite sox)';

describe.skipIf(WHY !== '')(`with made sound${WHY}`, () => {
  it('a voice in silence is good, and gets no advice', () => {
    const some = levelsOf(made(null));
    expect(calibrationWords(known(some))).toMatch(/good\.$/);
    expect(adviceOf(some.slice(-40), true)).toBe('fine');
  });

  it('a voice in loud wind is too noisy, in the measurement and in the advice', () => {
    const some = levelsOf(made(-8));
    expect(calibrationWords(known(some))).toMatch(/^(Too noisy|It is noisy here)/);
    expect(adviceOf(some.slice(-40), true)).toBe('too-noisy');
  });

  it('a breath of wind is no matter', () => {
    const some = levelsOf(made(-40));
    expect(calibrationWords(known(some))).toMatch(/(good|to spare)\.$/);
    expect(adviceOf(some.slice(-40), true)).toBe('fine');
  });
});

describe('without a voice', () => {
  it('silence gets no advice, and in the measurement the advice to speak', () => {
    const some = levelsOf(new Float32Array(16_000 * 7));
    expect(adviceOf(some.slice(-40), true)).toBe('too-quiet');
    expect(adviceOf(some.slice(-40), false)).toBe('fine');
    expect(calibrationWords(known(some))).toMatch(/No voice was heard/);
  });
});

describe('its age', () => {
  it.each([
    [0, 'Measured just now.'],
    [59, 'Measured just now.'],
    [60, 'Measured 1 minute ago.'],
    [12 * 60, 'Measured 12 minutes ago.'],
    [3600, 'Measured 1 hour ago. The place or the wind may be another by now.'],
    [7 * 3600, 'Measured 7 hours ago. The place or the wind may be another by now.'],
  ])('of %i seconds is said in words', (seconds, words) => {
    const calibrated: Calibrated = { noise: -60, voice: -30, at: NOON };
    expect(ageWords(calibrated, NOON + seconds * 1000)).toBe(words);
  });
});
