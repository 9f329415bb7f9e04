// The sound of an utterance in 8 kB a second and back: a WAV file with IMA ADPCM, which any player of sound can open.

import { decoded, encoded } from './ima-adpcm.ts';

type Bytes = Uint8Array<ArrayBuffer>;

/** Sound as it is kept. */
export interface CompressedSound {
  /** RFC 2361 (June 1998), appendix A: the codec by its number in WAVE, hexadecimal */
  readonly type: string;
  readonly bytes: Bytes;
}

const TYPE = 'audio/vnd.wave;codec=11';
const CODEC = 0x11;
const RATE = 16_000;
/** Bytes in a block: 4 of a head, which holds the block's first sample, and 2 samples in each of the others. */
const BLOCK = 512;
const IN_BLOCK = (BLOCK - 4) * 2 + 1;
/** RIFF head, `fmt ` of 20 bytes, `fact` of 4, head of `data`. */
const HEAD = 12 + 8 + 20 + 8 + 4 + 8;

/** What a second of sound takes, bytes. */
export const BYTES_A_SECOND: number = Math.ceil((RATE * BLOCK) / IN_BLOCK);

const asInteger = (sample: number): number =>
  Math.max(-32_768, Math.min(32_767, Math.round(sample * 32_767)));

/** Compresses mono sound of 16 000 samples a second, -1 to 1. */
export function compressed(sound: Float32Array): CompressedSound {
  const blocks = Math.ceil(sound.length / IN_BLOCK);
  const bytes = new Uint8Array(HEAD + blocks * BLOCK);
  const view = new DataView(bytes.buffer);
  writeHead(view, sound.length, blocks * BLOCK);
  let index = 0;
  for (let block = 0; block < blocks; block += 1) {
    const from = block * IN_BLOCK;
    const at = HEAD + block * BLOCK;
    let carried = { sample: asInteger(sound[from] ?? 0), index };
    view.setInt16(at, carried.sample, true);
    view.setUint8(at + 2, index);
    for (let next = 1; next < IN_BLOCK; next += 1) {
      // What the last block has no sample for is a held tone, and cut off by `fact`.
      const value = sound[from + next];
      const bits = encoded(carried, value === undefined ? carried.sample : asInteger(value));
      carried = decoded(carried, bits);
      const place = at + 4 + ((next - 1) >> 1);
      bytes[place] = (bytes[place] ?? 0) | ((next - 1) % 2 === 0 ? bits : bits << 4);
    }
    index = carried.index;
  }
  return { type: TYPE, bytes };
}

/** The sound again, or null for what `compressed` did not make. */
export function uncompressed({ type, bytes }: CompressedSound): Float32Array<ArrayBuffer> | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (type !== TYPE || bytes.length < HEAD || view.getUint32(0) !== 0x52494646) return null;
  if (view.getUint16(20, true) !== CODEC || view.getUint16(32, true) !== BLOCK) return null;
  const count = view.getUint32(48, true);
  if (count > ((bytes.length - HEAD) / BLOCK) * IN_BLOCK) return null;
  const sound = new Float32Array(count);
  for (let from = 0, at = HEAD; from < count; from += IN_BLOCK, at += BLOCK) {
    let carried = { sample: view.getInt16(at, true), index: Math.min(88, view.getUint8(at + 2)) };
    sound[from] = carried.sample / 32_767;
    for (let next = 1; next < IN_BLOCK && from + next < count; next += 1) {
      const pair = bytes[at + 4 + ((next - 1) >> 1)] ?? 0;
      carried = decoded(carried, (next - 1) % 2 === 0 ? pair & 15 : pair >> 4);
      sound[from + next] = carried.sample / 32_767;
    }
  }
  return sound;
}

/** Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft, August 1991), and RFC 2361. */
function writeHead(view: DataView, samples: number, data: number): void {
  const name = (at: number, text: string): void => {
    for (let index = 0; index < 4; index += 1) view.setUint8(at + index, text.charCodeAt(index));
  };
  name(0, 'RIFF');
  view.setUint32(4, HEAD - 8 + data, true);
  name(8, 'WAVE');
  name(12, 'fmt ');
  view.setUint32(16, 20, true);
  view.setUint16(20, CODEC, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, RATE, true);
  view.setUint32(28, BYTES_A_SECOND, true);
  view.setUint16(32, BLOCK, true);
  view.setUint16(34, 4, true);
  view.setUint16(36, 2, true);
  view.setUint16(38, IN_BLOCK, true);
  name(40, 'fact');
  view.setUint32(44, 4, true);
  view.setUint32(48, samples, true);
  name(52, 'data');
  view.setUint32(56, data, true);
}
