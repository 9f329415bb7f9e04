// Two hours of recording stream through: memory stays flat, progress is told, and every stretch of speech is found at its
// time. The recogniser is a fake; reading, resampling, filtering and finding speech are real. The sound is made up.

import { describe, expect, it } from 'vitest';
import { segmenter } from '../../src/speech/hearing/segments.ts';
import type { Hearing } from '../../src/speech/index.ts';
import { highPass, resampler } from '../../src/speech/wav/index.ts';
import { hearBlob } from '../../src/speech/worker/hear-file.ts';
import { fakeDetector } from './fake-detector.ts';

const RATE = 8000;
const HOURS = 2;
/** A tone of a second at the beginning of each minute. */
const MINUTES = HOURS * 60;

function minute(): Uint8Array {
  const made = new Int16Array(60 * RATE);
  for (let at = RATE; at < 2 * RATE; at++) made[at] = 12_000 * Math.sin((2 * Math.PI * 700 * at) / RATE);
  return new Uint8Array(made.buffer);
}

function header(bytes: number): Uint8Array {
  const view = new DataView(new ArrayBuffer(44));
  const name = (at: number, text: string): void => {
    for (let index = 0; index < text.length; index++) view.setUint8(at + index, text.charCodeAt(index));
  };
  name(0, 'RIFF');
  view.setUint32(4, 36 + bytes, true);
  name(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, RATE, true);
  view.setUint32(28, RATE * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  name(36, 'data');
  view.setUint32(40, bytes, true);
  return new Uint8Array(view.buffer);
}

/** A file that is made minute by minute while it is read, as one on a disk is read. */
function longFile(): Blob {
  const one = minute();
  let made = -1;
  const stream = () =>
    new ReadableStream<Uint8Array>({
      pull: (to) => {
        if (made >= MINUTES) to.close();
        else to.enqueue(made === -1 ? header(MINUTES * one.length) : one);
        made += 1;
      },
    });
  return { size: 44 + MINUTES * one.length, stream } as unknown as Blob;
}

const hearing: Hearing = {
  kind: 'hearing',
  begin: (rate) => {
    const [even, calm, segments] = [
      resampler(rate, 16_000),
      highPass(300, 16_000),
      segmenter(fakeDetector()),
    ];
    const hear = (pieces: ReturnType<typeof segments.push>) =>
      pieces.flatMap((piece) => {
        if (piece.kind === 'sound') return [];
        const { start, end, sound } = piece.segment;
        const said = {
          text: 'tone',
          understood: true,
          engine: 'bundled' as const,
          alternatives: [],
          confidence: 1,
        };
        return [{ utterance: { ...said, start, end, words: [], doubt: [] }, sound }];
      });
    return {
      push: (samples) => hear(segments.push(calm(even.push(samples)))),
      flush: () => hear(segments.end()),
      isSpeech: segments.isSpeech,
      soFar: () => [],
    };
  },
  close: () => undefined,
};

describe('a recording of two hours', () => {
  it('is heard to its end, with its times, in flat memory and with progress', async () => {
    const starts: number[] = [];
    const progress: number[] = [];
    const held = () => process.memoryUsage().arrayBuffers / 1e6;
    const before = held();
    let most = 0;
    const end = await hearBlob(hearing, longFile(), {
      heard: ({ start }) => starts.push(start),
      progress: (seconds) => {
        progress.push(seconds);
        most = Math.max(most, held() - before);
      },
    });
    expect(end).toMatchObject({ kind: 'heard', seconds: expect.closeTo(HOURS * 3600, 3), cut: null });
    expect(starts).toHaveLength(MINUTES);
    starts.forEach((start, index) => {
      expect(Math.abs(start - (60 * index + 1))).toBeLessThan(0.4);
    });
    expect(progress.length).toBeGreaterThan(MINUTES);
    // The whole is 115 MB as it lies on the disk, and 460 MB as samples of the recogniser's rate.
    expect(most).toBeLessThan(100);
  }, 900_000);
});
