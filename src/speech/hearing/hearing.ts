// A stream of sound in, utterances out, in a page's worker as in Node: cut at pauses, heard one stretch after another.

import { RATE } from '../engine/decoder.ts';
import type { Band, Models } from '../engine/model-files.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { highPass, resampler } from '../wav/index.ts';
import { bandMeter, likelyBand } from './band.ts';
import { withFloor } from './floor.ts';
import { createListener, type Listener } from './listener.ts';
import { type Piece, type Segment, segmenter } from './segments.ts';
import type { HeardUtterance } from './utterance.ts';
import { isWhole } from './whole.ts';
import type { WorkedOut } from './work-out.ts';

export interface HearingParts {
  /** the package's compiled module, as its default export gives it */
  readonly module: SoundModule;
  readonly models: Models;
  /** what is listened for */
  readonly worked: WorkedOut;
  /** hertz below which nothing is heard */
  readonly highPass?: number;
  /** the model to hear with, whatever the sound; otherwise each sound has its own */
  readonly band?: Band;
  /** steps that are left out, to measure what each is worth */
  readonly without?: readonly ('any-order' | 'floor' | 'trust')[];
}

/** The ears, loaded once; each stream that is begun forgets the one before. */
export interface Hearing {
  readonly kind: 'hearing';
  /** a new stream of mono sound, -1 to 1, at `rate` samples a second; its times count from its first sample */
  begin(rate: number): HearingStream;
  close(): void;
}

/** Blocks may have any length; each is heard in the call that brings it, which takes a quarter of its length or so. */
export interface HearingStream {
  /** what the block completes; mostly nothing */
  push(samples: Float32Array): readonly Heard[];
  /** what is still open, as if silence followed; the stream is over then */
  flush(): readonly Heard[];
  /** true from shortly after somebody begins to speak until shortly after they stop */
  isSpeech(): boolean;
  /** the words of what is being said, as far as it was heard; they may still change, and must enter nothing */
  soFar(): readonly string[];
}

export interface Heard {
  readonly utterance: HeardUtterance;
  /** its sound with a little quiet around it, mono at 16 000 a second, with what lies below a voice filtered out */
  readonly sound: Float32Array;
}

/**
 * Hertz; wind and handling lie below it. Telephones carry little there, and the model that was made for them misses nothing; the wide
 * one hears best at 150 in wind and at 200 or 300 without (tests/bench/hearing/results.md).
 */
const WIND: Readonly<Record<Band, number>> = { wide: 200, narrow: 300 };

/** Seconds of sound kept around an utterance. */
const MARGIN = 0.25;

function soundOf({ start, sound }: Segment, utterance: HeardUtterance): Float32Array {
  const at = (time: number): number => Math.max(0, Math.round((time - start) * RATE));
  return sound.slice(at(utterance.start - MARGIN), at(utterance.end + MARGIN));
}

/** Loads the model and sets the networks; a damaged model throws. */
export function openHearing(parts: HearingParts): Hearing {
  const { module, models, worked, without = [] } = parts;
  const listenerOf = (band: Band): Listener =>
    createListener(module, { band, files: models[band] }, worked, without);
  // One at a time: together they would take twice the memory, and a microphone is mostly of one kind.
  const first = parts.band ?? 'wide';
  let open = { band: first, listener: listenerOf(first) };
  const listenerFor = (band: Band): Listener => {
    if (open.band === band) return open.listener;
    open.listener.close();
    open = { band, listener: listenerOf(band) };
    return open.listener;
  };
  return {
    kind: 'hearing',
    begin: (rate) => {
      listenerFor(parts.band ?? likelyBand(rate)).drop();
      return streamOf(parts, rate, () => open, listenerFor);
    },
    close: () => open.listener.close(),
  };
}

function streamOf(
  { module, band: only, highPass: corner, without = [] }: HearingParts,
  rate: number,
  now: () => { readonly band: Band; readonly listener: Listener },
  listenerFor: (band: Band) => Listener,
): HearingStream {
  const even = resampler(rate, RATE);
  const segments = segmenter(module, () => isWhole(soFar()));
  const soFar = (): readonly string[] =>
    segments.isPause() ? now().listener.inPause() : now().listener.soFar();
  const calmed = highPass(corner ?? WIND[now().band], RATE);
  const floor = without.includes('floor') ? (sound: Float32Array) => sound : withFloor();
  const meter = bandMeter();
  let heardAs = now().band;
  const calm = (sound: Float32Array): Float32Array => {
    const quiet = calmed(sound);
    meter.push(quiet);
    return floor(quiet);
  };
  const hear = (pieces: readonly Piece[]): readonly Heard[] =>
    pieces.flatMap((piece) => {
      if (piece.kind === 'sound') {
        now().listener.push(piece.sound);
        return [];
      }
      const { band, listener } = now();
      heardAs = only ?? meter.take() ?? heardAs;
      // Only its end shows that a stretch is of the other band; it is then heard anew, and the next one as it is spoken.
      if (heardAs !== band) listener.drop();
      return listenerFor(heardAs)
        .end(piece.segment, piece.isAll && heardAs === band)
        .map((utterance) => ({ utterance, sound: soundOf(piece.segment, utterance) }));
    });
  return {
    push: (samples) => hear(segments.push(calm(even.push(samples)))),
    flush: () => [...hear(segments.push(calm(even.end()))), ...hear(segments.end())],
    isSpeech: () => segments.isSpeech(),
    soFar,
  };
}
