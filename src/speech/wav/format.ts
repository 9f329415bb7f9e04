// The format chunk of a RIFF WAVE file, plain or WAVE_FORMAT_EXTENSIBLE, read into what its samples are.

import { type WavFault, wavFault } from './wav-fault.ts';

/** How one sample is written. Eight-bit samples are unsigned, the wider ones signed, all little-endian. */
export type SampleType = 'u8' | 's16' | 's24' | 's32' | 'f32' | 'f64';

export interface WavFormat {
  readonly kind: 'format';
  /** samples a second of each channel */
  readonly rate: number;
  readonly channels: number;
  readonly sample: SampleType;
  /** bytes of one sample of every channel */
  readonly frameBytes: number;
}

// Codes of the format tag: Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, 1991) and
// RFC 2361. An extensible chunk (Microsoft, "Multiple channel audio data and WAVE files") keeps the code in the first
// two bytes of its sub-format, at offset 24.
const PCM = 1;
const FLOAT = 3;
const EXTENSIBLE = 0xfffe;
const NAMES: Readonly<Record<number, string>> = {
  2: 'ADPCM',
  6: 'A-law',
  7: 'mu-law',
  17: 'IMA ADPCM',
  85: 'MP3',
};

const TYPES: Readonly<Record<string, SampleType>> = {
  '1/8': 'u8',
  '1/16': 's16',
  '1/24': 's24',
  '1/32': 's32',
  '3/32': 'f32',
  '3/64': 'f64',
};
const HIGHEST_RATE = 768_000;
const MOST_CHANNELS = 64;

/** Reads the chunk's content. */
export function readFormat(chunk: Uint8Array): WavFormat | WavFault {
  if (chunk.length < 16) return wavFault('no-format', 'has a format chunk that is too short');
  const view = new DataView(chunk.buffer, chunk.byteOffset, chunk.byteLength);
  const [tag, channels, rate] = [view.getUint16(0, true), view.getUint16(2, true), view.getUint32(4, true)];
  const blockBytes = view.getUint16(12, true);
  if (tag === EXTENSIBLE && chunk.length < 26)
    return wavFault('no-format', 'has an extensible format chunk that is too short');
  const code = tag === EXTENSIBLE ? view.getUint16(24, true) : tag;
  const bits = view.getUint16(14, true);
  // Twenty bits in three bytes are read as the three bytes they stand in.
  const stored = channels > 0 && blockBytes > 0 && code === PCM ? (blockBytes / channels) * 8 : bits;
  const sample = TYPES[`${code}/${stored}`];
  if (sample === undefined)
    return wavFault(
      'unsupported',
      code === PCM || code === FLOAT
        ? `has samples of ${bits} bits, which cannot be read`
        : `is coded as ${NAMES[code] ?? `format ${code}`}; only PCM and floating point can be read`,
    );
  if (channels < 1 || channels > MOST_CHANNELS)
    return wavFault('unsupported', `has ${channels} channels, which cannot be read`);
  if (rate < 1000 || rate > HIGHEST_RATE)
    return wavFault('unsupported', `has a sample rate of ${rate} a second, which cannot be read`);
  return { kind: 'format', rate, channels, sample, frameBytes: channels * bytesOf(sample) };
}

/** Bytes of one sample. */
export const bytesOf = (sample: SampleType): number =>
  sample === 'f64' ? 8 : sample === 'u8' ? 1 : Number(sample.slice(1)) / 8;
