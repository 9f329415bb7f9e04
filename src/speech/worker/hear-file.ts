// Hears a recording that a person chose, piece by piece, and says how far it has come.

import type { Hearing } from '../hearing/hearing.ts';
import type { HeardUtterance } from '../hearing/utterance.ts';
import { openWav } from '../wav/index.ts';
import type { FileHeard } from './messages.ts';

/** Seconds of sound between two reports of progress. */
const STEP = 2;

/** `progress` is told seconds of sound and the share of the bytes, 0 to 1. */
export async function hearBlob(
  hearing: Hearing,
  file: Blob,
  progress: (seconds: number, share: number) => void,
): Promise<FileHeard> {
  let bytes = 0;
  const wav = await openWav(piecesOf(file, (length) => (bytes += length)));
  if (wav.kind === 'wav-fault') return { kind: 'unheard', why: wav.why };
  const stream = hearing.begin(wav.format.rate);
  const utterances: HeardUtterance[] = [];
  const keep = (heard: ReturnType<typeof stream.push>) =>
    utterances.push(...heard.map(({ utterance }) => utterance));
  let [seconds, told] = [0, 0];
  for (;;) {
    const next = await wav.blocks.next();
    if (next.done === true) {
      keep(stream.flush());
      if (seconds === 0) return { kind: 'unheard', why: 'holds no sound' };
      return { kind: 'heard', utterances, seconds, cut: next.value.kind === 'cut' ? next.value.why : null };
    }
    seconds += next.value.length / wav.format.rate;
    keep(stream.push(next.value));
    if (seconds - told < STEP) continue;
    told = seconds;
    progress(seconds, Math.min(1, bytes / file.size));
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
