// Opens a RIFF WAVE recording and gives its sound block by block, so that hours of it need no more memory than seconds.

import { type ByteReader, byteReader } from './byte-reader.ts';
import { readFormat, type WavFormat } from './format.ts';
import { monoOf } from './samples.ts';
import { type WavEnd, type WavFault, wavFault } from './wav-fault.ts';

export interface OpenWav {
  readonly kind: 'wav';
  readonly format: WavFormat;
  /** mono, -1 to 1, at the format's rate; what it returns at last says whether the recording was whole */
  readonly blocks: AsyncGenerator<Float32Array, WavEnd, undefined>;
}

/** Frames in a block: about a fifth of a second. */
const BLOCK_SECONDS = 0.2;
// A recorder that was switched off or writes to a pipe leaves the length open, as nothing or as the highest number.
const OPEN_LENGTHS: readonly number[] = [
  0,
  0xffffffff,
  0xffffffff - 36,
  0x7fffffff,
  0x7fffffff - 36,
  0x7ffff000,
];
// Chunks that stand before the sound are notes of a few thousand bytes; a format is far smaller.
const LONGEST_FORMAT = 4096;

const text = (bytes: Uint8Array): string => String.fromCharCode(...bytes);

/** Reads up to the first sample. RIFX, RF64 and Wave64 are other formats and are refused by name. */
export async function openWav(pieces: AsyncIterable<Uint8Array>): Promise<OpenWav | WavFault> {
  const reader = byteReader(pieces);
  const head = await reader.take(12);
  if (head.length === 0) return wavFault('not-a-wave', 'is empty');
  const [riff, wave] = [text(head.subarray(0, 4)), text(head.subarray(8, 12))];
  if (riff === 'RIFX' || riff === 'RF64')
    return wavFault('unsupported', `is a ${riff} file; save it as an ordinary WAV file`);
  if (riff !== 'RIFF' || wave !== 'WAVE')
    return wavFault('not-a-wave', 'is no WAV recording: it does not begin with RIFF and WAVE');
  let format: WavFormat | null = null;
  for (;;) {
    const header = await reader.take(8);
    if (header.length < 8)
      return format === null
        ? wavFault('no-format', 'ends before its format is said')
        : wavFault('no-sound', 'holds no sound');
    const name = text(header.subarray(0, 4));
    const length = new DataView(header.buffer, header.byteOffset, 8).getUint32(4, true);
    if (name === 'data') {
      if (format === null) return wavFault('no-format', 'has sound before its format is said');
      return { kind: 'wav', format, blocks: blocksOf(reader, format, length) };
    }
    const padded = length + (length % 2);
    if (name !== 'fmt ' || length > LONGEST_FORMAT) {
      await reader.skip(padded);
      continue;
    }
    const read = readFormat((await reader.take(padded)).subarray(0, length));
    if (read.kind === 'wav-fault') return read;
    format = read;
  }
}

async function* blocksOf(
  reader: ByteReader,
  format: WavFormat,
  length: number,
): AsyncGenerator<Float32Array, WavEnd, undefined> {
  const { frameBytes, rate } = format;
  const open = OPEN_LENGTHS.includes(length);
  const blockBytes = Math.max(1, Math.round(rate * BLOCK_SECONDS)) * frameBytes;
  for (let left = open ? Number.POSITIVE_INFINITY : length; left > 0; ) {
    const asked = Math.min(blockBytes, left);
    const bytes = await reader.take(asked);
    if (bytes.length >= frameBytes) yield monoOf(bytes, format);
    left -= bytes.length;
    if (bytes.length < asked) {
      if (open) break;
      const missing = Math.max(0.1, left / frameBytes / rate).toFixed(1);
      return { kind: 'cut', why: `ends ${missing} s before its header says; what is there was heard` };
    }
  }
  return { kind: 'whole' };
}
