// Wind under speech: sox's brown noise in gusts, the same on every run, so many decibels under the speech.

import { execFileSync } from 'node:child_process';

const RATE = 16_000;
const SECONDS = 60;
let made: Float32Array | null = null;

/** Noise that falls 6 dB an octave, as wind over a microphone does, with gusts every three seconds or so. */
function wind(): Float32Array {
  if (made !== null) return made;
  // -R fixes the seed of the noise.
  const form = ['-t', 'raw', '-b', '16', '-e', 'signed', '-'];
  const gusts = ['tremolo', '0.31', '60', 'gain', '-n', '-3'];
  const words = ['-R', '-n', '-r', `${RATE}`, '-c', '1', ...form, 'synth', `${SECONDS}`, 'brownnoise'];
  const bytes = execFileSync('sox', [...words, ...gusts], { maxBuffer: 2 ** 24 });
  made = Float32Array.from(
    new Int16Array(bytes.buffer, bytes.byteOffset, bytes.length / 2),
    (v) => v / 32_768,
  );
  return made;
}

const power = (sound: Float32Array): number =>
  sound.reduce((sum, value) => sum + value * value, 0) / sound.length;

/** The power of the speech in it: of its loudest half, since pauses say nothing of how loud a voice is. */
function speechPower(sound: Float32Array): number {
  const frames = Array.from({ length: Math.floor(sound.length / 320) }, (_, i) =>
    power(sound.subarray(i * 320, (i + 1) * 320)),
  ).toSorted((a, b) => b - a);
  const loud = frames.slice(0, Math.max(1, frames.length >> 1));
  return loud.reduce((sum, value) => sum + value, 0) / loud.length;
}

/** The sound in wind `decibels` under its speech, over the whole band; `place` chooses a part of the wind. */
export function inWind(sound: Float32Array, decibels: number, place: number): Float32Array {
  const noise = wind();
  const from = (place * 7919) % (noise.length - sound.length);
  const part = noise.subarray(from, from + sound.length);
  const gain = Math.sqrt(speechPower(sound) / power(part) / 10 ** (decibels / 10));
  return sound.map((value, index) => value + gain * (part[index] ?? 0));
}
