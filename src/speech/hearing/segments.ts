// Cuts a stream of sound into stretches of speech with their times; a short pause cuts nothing, so that no "no" is parted
// from what it denies.

import { RATE } from '../engine/decoder.ts';
import type { SoundModule } from '../engine/sound-module.ts';

export interface Segment {
  /** seconds since the stream began */
  readonly start: number;
  readonly end: number;
  readonly sound: Float32Array;
}

export interface Segmenter {
  /** the stretches that the block completes */
  push(block: Float32Array): readonly Segment[];
  /** the last one, if speech went on to the end */
  end(): readonly Segment[];
  /** true while a stretch is open */
  isSpeech(): boolean;
}

/** A pause of less than this, in seconds, is one within an utterance: "no deformity … swelling or tenderness". */
const PAUSE = 0.8;
/** Kept of the quiet before and after, for a consonant that the detector took for noise. */
const MARGIN = 0.2;
/** The detector decides on this many seconds at once, so its news is late by up to as much. */
const WINDOW = 0.3;
/** How strictly the detector tells speech from noise: 0 takes most for speech, 3 least. */
const STRICTNESS = 0;
/** After this many seconds any pause will do. */
const LONG = 15;
/** No stretch is longer; it is cut in the quietest moment of its last third. */
const LONGEST = 30;

/** What is held of the past: enough for the detector's delay. */
const seconds = (samples: number): number => samples / RATE;
const samples = (time: number): number => Math.round(time * RATE);

/** Sound is mono, 16 000 samples a second. */
export function segmenter(module: SoundModule): Segmenter {
  const detector = new module.Endpointer({ samprate: RATE, mode: STRICTNESS, window: WINDOW });
  const frameSize = detector.get_frame_size();
  // `held` begins at sample `origin` of the stream; `seen` samples have been shown to the detector.
  let held: Float32Array = new Float32Array(0);
  let [origin, seen] = [0, 0];
  let speech: { readonly start: number; readonly end: number | null } | null = null;

  const slice = (start: number, end: number): Segment => {
    const from = Math.max(origin, samples(start - MARGIN));
    const to = Math.min(origin + held.length, samples(end + MARGIN));
    return { start: seconds(from), end: seconds(to), sound: held.slice(from - origin, to - origin) };
  };

  function listen(): void {
    const frame = held.subarray(seen - origin, seen - origin + frameSize);
    const before = detector.get_in_speech();
    detector.process(frame);
    seen += frameSize;
    const now = detector.get_in_speech();
    if (now && !before) speech = { start: speech?.start ?? detector.get_speech_start(), end: null };
    else if (before && !now && speech !== null) speech = { ...speech, end: detector.get_speech_end() };
  }

  function finished(): Segment | null {
    if (speech === null) return null;
    const { start, end } = speech;
    const time = seconds(seen);
    const pause = end !== null && end - start > LONG ? 0 : PAUSE;
    if (end !== null && time > end + pause + WINDOW) {
      speech = null;
      return slice(start, end);
    }
    if (time - start < LONGEST) return null;
    const cut = quietest(held, samples(time - LONGEST / 3) - origin, seen - origin, frameSize) + origin;
    speech = { start: seconds(cut), end };
    return { ...slice(start, seconds(cut) - MARGIN), end: seconds(cut) };
  }

  function forget(): void {
    const needed = speech?.start ?? seconds(seen) - 2 * WINDOW;
    const from = Math.max(origin, samples(needed - MARGIN));
    held = held.slice(from - origin);
    origin = from;
  }

  function push(block: Float32Array): readonly Segment[] {
    const joined = new Float32Array(held.length + block.length);
    joined.set(held);
    joined.set(block, held.length);
    held = joined;
    const done: Segment[] = [];
    while (seen + frameSize <= origin + held.length) {
      listen();
      const segment = finished();
      if (segment !== null) done.push(segment);
    }
    forget();
    return done;
  }

  return {
    push,
    // The stillness after the end of the stream lets the detector settle.
    end: () => push(new Float32Array(samples(PAUSE + 4 * WINDOW))),
    isSpeech: () => speech !== null,
  };
}

/** The start of the quietest stretch of `size` samples between two places. */
function quietest(sound: Float32Array, from: number, to: number, size: number): number {
  let [best, least] = [to, Number.POSITIVE_INFINITY];
  for (let at = Math.max(0, from); at + size <= to; at += size) {
    const loudness = sound.subarray(at, at + size).reduce((sum, value) => sum + value * value, 0);
    if (loudness < least) [best, least] = [at, loudness];
  }
  return best;
}
