// Sound kept in 8 kB a second: it comes back as speech, and another program reads the same of it.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BYTES_A_SECOND, compressed, uncompressed } from '../../src/speech/compressed/index.ts';

/** A made-up voice: a tone of 140 a second with its overtones, swelling and fading, and a little noise. */
const voice = (seconds: number): Float32Array =>
  Float32Array.from({ length: Math.round(seconds * 16_000) }, (_, index) => {
    const time = index / 16_000;
    const tone = [1, 2, 3, 5, 8].reduce((sum, n) => sum + Math.sin(2 * Math.PI * 140 * n * time) / n, 0);
    return 0.2 * tone * Math.sin(Math.PI * 3 * time) ** 2 + 0.002 * Math.sin(index * index);
  });

/** Decibels between the sound and what was lost of it. */
function clearness(sound: Float32Array, again: Float32Array): number {
  const power = (values: Float32Array): number => values.reduce((sum, value) => sum + value * value, 0);
  return 10 * Math.log10(power(sound) / power(sound.map((value, at) => value - (again[at] ?? 0))));
}

describe('an utterance’s sound', () => {
  it.each([0, 1, 1016, 1017, 1018, 5000])('of %s samples comes back with its length', (samples) => {
    expect(uncompressed(compressed(voice(samples / 16_000)))).toHaveLength(samples);
  });

  it.each([0.2, 0.5, 3.217])('of %s s comes back clear enough to be understood', (seconds) => {
    const sound = voice(seconds);
    const again = uncompressed(compressed(sound));
    expect(again).not.toBeNull();
    // Speech over a telephone (ITU-T G.711) has about 35; 20 is plain speech, from memory.
    if (again !== null) expect(clearness(sound, again)).toBeGreaterThan(20);
  });

  it('takes 8 kB a second, as is said of it', () => {
    expect(compressed(voice(60)).bytes.length / 60).toBeLessThan(BYTES_A_SECOND + 20);
    expect(BYTES_A_SECOND).toBeLessThan(8100);
  });

  it('that is too loud stays at full scale and does not turn over', () => {
    const again = uncompressed(compressed(new Float32Array(4000).fill(1.7)));
    expect(again?.slice(100).every((value) => value > 0.98)).toBe(true);
  });

  it.each([
    ['nothing', new Uint8Array(0)],
    [
      'a text',
      new TextEncoder().encode('no sound at all, but long enough for a head of sixty bytes, invented'),
    ],
    ['half of it', compressed(voice(1)).bytes.slice(0, 4000)],
  ])('is not made of %s', (_title, bytes) => {
    expect(uncompressed({ type: 'audio/vnd.wave;codec=11', bytes })).toBeNull();
  });

  // Against SoX, a program of its own for sound, as Debian has it.
  it('is the same for SoX, sample by sample', () => {
    const folder = mkdtempSync(join(tmpdir(), 'fieldsay-sound-'));
    const [file, raw] = [join(folder, 'kept.wav'), join(folder, 'raw')];
    const clip = compressed(voice(1.3));
    writeFileSync(file, clip.bytes);
    execFileSync('sox', [file, '-t', 'raw', '-e', 'signed-integer', '-b', '16', '-L', raw]);
    const bytes = readFileSync(raw);
    const theirs = Array.from({ length: bytes.length / 2 }, (_, at) => bytes.readInt16LE(at * 2));
    const ours = Array.from(uncompressed(clip) ?? [], (value) => Math.round(value * 32_767));
    // SoX gives the whole of the last block; what is over is the held tone.
    expect(theirs.length - ours.length).toBeLessThan(1017);
    expect(theirs.slice(0, ours.length)).toEqual(ours);
  });
});
