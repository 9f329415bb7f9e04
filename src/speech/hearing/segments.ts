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

/** News of a stretch while it is spoken: its sound as it comes, from its beginning on, and at last the whole. */
export type Piece =
  | { readonly kind: 'sound'; readonly sound: Float32Array }
  /** `isAll`: what came as `sound` is the whole, and nothing but stillness after it */
  | { readonly kind: 'ended'; readonly segment: Segment; readonly isAll: boolean };

export interface Segmenter {
  /** what the block brings, in its order */
  push(block: Float32Array): readonly Piece[];
  /** the last stretch, if speech went on to the end */
  end(): readonly Piece[];
  /** true while a stretch is open */
  isSpeech(): boolean;
  /** true in a pause of the open stretch, whose sound was handed on up to there */
  isPause(): boolean;
}

/** How long a pause is one within an utterance, in seconds: "no deformity … swelling or tenderness". */
export interface Pauses {
  /** where what was said so far may well go on */
  readonly long: number;
  /** where it is whole, and what may follow cannot change it */
  readonly short: number;
}

export const PAUSES: Pauses = { long: 0.8, short: 0.1 };
/** Kept of the quiet before and after, for a consonant that the detector took for noise. */
const MARGIN = 0.2;
/** The detector decides on this many seconds at once, so its news is late by up to as much. */
const WINDOW = 0.3;
/** How strictly the detector tells speech from noise: 0 takes most for speech, 3 least. */
const STRICTNESS = 0;
/** A frame this many times weaker than the loudest of a stretch is stillness: in it nobody has begun to speak again. */
const STILL = 1000;
/** After this many seconds any pause will do. */
const LONG = 15;
/** No stretch is longer; it is cut in the quietest moment of its last third. */
const LONGEST = 30;

/** What is held of the past: enough for the detector's delay. */
const seconds = (samples: number): number => samples / RATE;
const samples = (time: number): number => Math.round(time * RATE);

/** Sound is mono, 16 000 samples a second; `isWhole` is asked in a pause whether what was said so far is whole. */
export function segmenter(
  module: SoundModule,
  isWhole: () => boolean = () => false,
  pauses: Pauses = PAUSES,
): Segmenter {
  const detector = new module.Endpointer({ samprate: RATE, mode: STRICTNESS, window: WINDOW });
  const frameSize = detector.get_frame_size();
  // `held` begins at sample `origin` of the stream; `seen` samples have been shown to the detector.
  let held: Float32Array = new Float32Array(0);
  let [origin, seen] = [0, 0];
  let speech: { readonly start: number; readonly end: number | null } | null = null;
  // Up to which sample the open stretch was handed on; null before it began.
  let handed: number | null = null;
  let pause: number | null = null;
  /** power of the loudest frame of the open stretch, and the end of the last one that was not still beside it */
  let [loudest, stillSince] = [0, 0];

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
    const power = powerOf(frame);
    loudest = speech === null ? power : Math.max(loudest, power);
    if (power * STILL > loudest) stillSince = seconds(seen);
    const now = detector.get_in_speech();
    if (now && !before) speech = { start: speech?.start ?? detector.get_speech_start(), end: null };
    else if (before && !now && speech !== null) speech = { ...speech, end: detector.get_speech_end() };
  }

  /** What is new of the open stretch; of a pause no more than its margin, since it may be the last. */
  function news(): readonly Piece[] {
    if (speech === null) return [];
    const from = handed ?? Math.max(origin, samples(speech.start - MARGIN));
    const to = speech.end === null ? seen : Math.min(seen, samples(speech.end + MARGIN));
    if (to <= from) return [];
    handed = to;
    return [{ kind: 'sound', sound: held.slice(from - origin, to - origin) }];
  }

  function ended(end: number, stretch: Segment): Piece {
    // The detector's news are late, so that a little of the stillness was handed on too.
    const isAll = handed !== null && Math.abs(handed - samples(end + MARGIN)) < samples(2 * WINDOW);
    handed = null;
    return { kind: 'ended', segment: stretch, isAll };
  }

  function finished(): Piece | null {
    if (speech === null) return null;
    const { start, end } = speech;
    const time = seconds(seen);
    // The detector tells late that somebody speaks again; stillness tells at once that nobody does.
    const late = time - stillSince > WINDOW ? 0 : WINDOW;
    if (end === null) pause = null;
    // Asked once in a pause, as soon as the shortest is over.
    if (end !== null && time > end + pauses.short + late)
      pause ??= end - start > LONG ? 0 : isWhole() ? pauses.short : pauses.long;
    if (end !== null && pause !== null && time > end + pause + late) {
      speech = null;
      pause = null;
      return ended(end, slice(start, end));
    }
    if (time - start < LONGEST) return null;
    const cut = quietest(held, samples(time - LONGEST / 3) - origin, seen - origin, frameSize) + origin;
    speech = { start: seconds(cut), end };
    return ended(seconds(cut), { ...slice(start, seconds(cut) - MARGIN), end: seconds(cut) });
  }

  function forget(): void {
    const needed = speech?.start ?? seconds(seen) - 2 * WINDOW;
    const from = Math.max(origin, samples(needed - MARGIN));
    held = held.slice(from - origin);
    origin = from;
  }

  function push(block: Float32Array): readonly Piece[] {
    const joined = new Float32Array(held.length + block.length);
    joined.set(held);
    joined.set(block, held.length);
    held = joined;
    const pieces: Piece[] = [];
    while (seen + frameSize <= origin + held.length) {
      listen();
      const last = finished();
      if (last !== null) pieces.push(last);
      pieces.push(...news());
    }
    forget();
    return pieces;
  }

  return {
    push,
    // The stillness after the end of the stream lets the detector settle.
    end: () => push(new Float32Array(samples(pauses.long + 4 * WINDOW))),
    isSpeech: () => speech !== null,
    isPause: () => speech !== null && speech.end !== null,
  };
}

const powerOf = (sound: Float32Array): number => sound.reduce((sum, value) => sum + value * value, 0);

/** The start of the quietest stretch of `size` samples between two places. */
function quietest(sound: Float32Array, from: number, to: number, size: number): number {
  let [best, least] = [to, Number.POSITIVE_INFINITY];
  for (let at = Math.max(0, from); at + size <= to; at += size) {
    const loudness = powerOf(sound.subarray(at, at + size));
    if (loudness < least) [best, least] = [at, loudness];
  }
  return best;
}
