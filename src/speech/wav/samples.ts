// Bytes of a recording as one channel of numbers from -1 to 1; several channels give their mean.

import { bytesOf, type SampleType, type WavFormat } from './format.ts';

type Read = (view: DataView, at: number) => number;

const READERS: Readonly<Record<SampleType, Read>> = {
  u8: (view, at) => (view.getUint8(at) - 128) / 128,
  s16: (view, at) => view.getInt16(at, true) / 32_768,
  s24: (view, at) => (view.getUint8(at) + view.getInt16(at + 1, true) * 256) / 8_388_608,
  s32: (view, at) => view.getInt32(at, true) / 2_147_483_648,
  f32: (view, at) => finite(view.getFloat32(at, true)),
  f64: (view, at) => finite(view.getFloat64(at, true)),
};

// A broken float would poison every filter after it; sound beyond full scale is real, and is kept up to a bound.
const finite = (value: number): number => (Number.isFinite(value) ? Math.max(-8, Math.min(8, value)) : 0);

/** The mono samples of whole frames; bytes past the last whole frame are left out. */
export function monoOf(bytes: Uint8Array, { sample, channels, frameBytes }: WavFormat): Float32Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const read = READERS[sample];
  const step = bytesOf(sample);
  const mono = new Float32Array(Math.floor(bytes.length / frameBytes));
  for (let frame = 0; frame < mono.length; frame++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++)
      sum += read(view, frame * frameBytes + channel * step);
    mono[frame] = sum / channels;
  }
  return mono;
}
