// A stream of sound in, utterances out, in a page's worker as in Node: cut at pauses, heard one stretch after another.

import { RATE } from '../engine/decoder.ts';
import type { ModelFiles } from '../engine/model.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { highPass, resampler } from '../wav/index.ts';
import { withFloor } from './floor.ts';
import type { HearingFiles } from './hearing-files.ts';
import { createListener } from './listener.ts';
import { hearingGrammar } from './network-of-files.ts';
import { type Piece, type Segment, segmenter } from './segments.ts';
import type { HeardUtterance } from './utterance.ts';
import { isWhole } from './whole.ts';

export interface HearingParts {
  /** the package's compiled module, as its default export gives it */
  readonly module: SoundModule;
  readonly model: ModelFiles;
  readonly files: HearingFiles;
  /** a rule of the grammar, named in full, to listen for instead of a whole utterance */
  readonly root?: string;
  /** hertz below which nothing is heard */
  readonly highPass?: number;
  /** steps that are left out, to measure what each is worth */
  readonly without?: readonly ('any-order' | 'floor' | 'second-hearing' | 'trust')[];
}

/** The ears, loaded once (about a second); each stream that is begun forgets the one before. */
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

/** A fault in the grammar's files: what is wrong and where. */
export interface HearingFault {
  readonly kind: 'fault';
  readonly why: string;
}

/** Hertz; wind and handling lie below it, and the model was made for telephones, which carry little there. */
const WIND = 300;

/** Seconds of sound kept around an utterance. */
const MARGIN = 0.25;

function soundOf({ start, sound }: Segment, utterance: HeardUtterance): Float32Array {
  const at = (time: number): number => Math.max(0, Math.round((time - start) * RATE));
  return sound.slice(at(utterance.start - MARGIN), at(utterance.end + MARGIN));
}

/** Loads grammar and model. A fault in the project's own files is an answer; a damaged model throws. */
export function openHearing(parts: HearingParts): Hearing | HearingFault {
  const { module, model, files, highPass: corner = WIND, without = [] } = parts;
  const grammar = hearingGrammar(files, parts.root);
  if (grammar.kind === 'errors') {
    const [first] = grammar.errors;
    return { kind: 'fault', why: `${first?.file}:${first?.line}: ${first?.message}` };
  }
  const listener = createListener(module, model, files, grammar, without);
  return {
    kind: 'hearing',
    begin: (rate) => {
      const even = resampler(rate, RATE);
      listener.drop();
      const segments = segmenter(module, () => isWhole(listener.soFar()));
      const calmed = highPass(corner, RATE);
      const floor = without.includes('floor') ? (sound: Float32Array) => sound : withFloor();
      const calm = (sound: Float32Array): Float32Array => floor(calmed(sound));
      const hear = (pieces: readonly Piece[]): readonly Heard[] =>
        pieces.flatMap((piece) => {
          if (piece.kind === 'ended')
            return listener
              .end(piece.segment, piece.isAll)
              .map((utterance) => ({ utterance, sound: soundOf(piece.segment, utterance) }));
          listener.push(piece.sound);
          return [];
        });
      return {
        push: (samples) => hear(segments.push(calm(even.push(samples)))),
        flush: () => [...hear(segments.push(calm(even.end()))), ...hear(segments.end())],
        isSpeech: () => segments.isSpeech(),
        soFar: () => listener.soFar(),
      };
    },
    close: () => listener.close(),
  };
}
