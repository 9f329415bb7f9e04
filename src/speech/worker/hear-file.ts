// Hears a recording that a person chose, piece by piece, and says how far it has come.

import type { Heard, Hearing } from '../hearing/hearing.ts';
import type { HeardUtterance } from '../hearing/utterance.ts';
import { openWav } from '../wav/index.ts';
import type { FileEnd } from './messages.ts';

/** Seconds of sound between two reports of progress. */
const STEP = 2;

export interface FileNews {
  heard(utterance: HeardUtterance, sound: Float32Array<ArrayBuffer>): void;
  /** seconds of sound heard so far, and the share of the bytes, 0 to 1 */
  progress(seconds: number, share: number): void;
}

/** Hears it from its beginning to its end; what was heard before a fault was told already. */
export async function hearBlob(hearing: Hearing, file: Blob, news: FileNews): Promise<FileEnd> {
  let bytes = 0;
  const pieces = piecesOf(file, (length) => {
    bytes += length;
  });
  const wav = await openWav(pieces);
  if (wav.kind === 'wav-fault') return { kind: 'unheard', why: wav.why };
  const stream = hearing.begin(wav.format.rate);
  const tell = (heard: readonly Heard[]): void => {
    for (const { utterance, sound } of heard) news.heard(utterance, new Float32Array(sound));
  };
  let [seconds, told] = [0, 0];
  for (;;) {
    const next = await wav.blocks.next();
    if (next.done === true) {
      tell(stream.flush());
      if (seconds === 0) return { kind: 'unheard', why: 'holds no sound' };
      return { kind: 'heard', seconds, cut: next.value.kind === 'cut' ? next.value.why : null };
    }
    seconds += next.value.length / wav.format.rate;
    tell(stream.push(next.value));
    if (seconds - told < STEP) continue;
    told = seconds;
    news.progress(seconds, Math.min(1, bytes / file.size));
  }
}

/** The file's bytes as they are read; not every browser can loop over a stream by itself. */
async function* piecesOf(file: Blob, read: (length: number) => void): AsyncGenerator<Uint8Array> {
  const reader = file.stream().getReader();
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return;
    read(value.length);
    yield value;
  }
}
