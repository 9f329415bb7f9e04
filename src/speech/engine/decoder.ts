// One compiled decoder with one network: sound in, the best way through the network out, with words, times and score.

import type { Network } from '../network/network.ts';
import { loadModel } from './model.ts';
import type { ModelFiles } from './model-files.ts';
import type { PackageDecoder, SoundModule } from './sound-module.ts';
import { textAt } from './text-at.ts';
import { exitsOf, type WordExit } from './word-exits.ts';

export interface HeardWord {
  readonly word: string;
  /** seconds since the sound began */
  readonly start: number;
  readonly end: number;
  /** frames of a hundredth of a second, and the sound's own log score over them, without the network's */
  readonly frames: number;
  readonly fit: number;
}

export interface Decoded {
  /** without pauses; empty where no way through the network fits the sound */
  readonly words: readonly HeardWord[];
  /** the decoder's own log score of the whole sound, for comparing decoders on the same sound */
  readonly score: number;
  /** seconds of sound that were scored */
  readonly seconds: number;
}

/** Sound that is decoded as it comes; a decoder does one at a time. */
export interface Decoding {
  /** the next samples: mono, 16 000 a second, -1 to 1 */
  push(sound: Float32Array): void;
  /** the best words for what came so far; the last of them may still change */
  soFar(): readonly HeardWord[];
  /** the best way through the network for all of it */
  end(): Decoded;
}

export interface Decoder {
  begin(): Decoding;
  /** the best way through the network for the whole of the sound */
  decode(sound: Float32Array): Decoded;
  /** every word that it finished in what it heard last, on whatever way */
  exits(): readonly WordExit[];
  close(): void;
}

export interface DecoderParts {
  readonly model: ModelFiles;
  /** words that the model's dictionary lacks, with their phones */
  readonly pronunciations: ReadonlyMap<string, readonly string[]>;
  /** given the words that can be heard, what to listen for */
  readonly network: (canHear: (word: string) => boolean) => Network;
  /** most states followed at once, where less will do */
  readonly states?: number;
}

/** Samples a second that the model was made for. */
export const RATE = 16_000;
/** The model's frames of speech, a second. */
export const FRAMES = 100;
/** The weight of the network's probabilities against the sound's. */
const LANGUAGE_WEIGHT = 6;
/**
 * How much worse than the best a way may be and still be followed. With the package's 1e-48 the wide model lost its way out of one good
 * sentence in twenty; 1e-80 finds no more than this and takes a quarter more work (tests/bench/hearing/results.md).
 */
const BEAM = 1e-64;
/** How much worse than the best a finished word may be and still be followed; tighter loses long sentences whole. */
const WORD_BEAM = 1e-38;

/** Most states of words followed at once: with 2,000 one sentence in ten lost its way out, and then nothing of it was heard. */
const MOST_STATES = 6500;

/** Loads the model and sets the network; takes about half a second. Throws where the model's files are damaged. */
export function createDecoder(module: SoundModule, parts: DecoderParts): Decoder {
  // The rate must be given: the package takes the page's audio rate otherwise, and there is none.
  const decoder = new module.Decoder({
    samprate: RATE,
    beam: BEAM,
    pbeam: BEAM,
    wbeam: WORD_BEAM,
    maxhmmpf: parts.states ?? MOST_STATES,
    loglevel: 'FATAL',
  });
  loadModel(module, decoder, parts.model);
  const added = addWords(decoder, parts.pronunciations);
  const canHear = (word: string): boolean => added.has(word) || decoder.lookup_word(word) !== null;
  setNetwork(module, decoder, parts.network(canHear));
  return {
    begin: () => begin(module, decoder),
    decode: (sound) => decode(module, decoder, sound),
    exits: () => exitsOf(module, decoder.cdecoder),
    close: () => decoder.delete(),
  };
}

function addWords(
  decoder: PackageDecoder,
  pronunciations: DecoderParts['pronunciations'],
): ReadonlySet<string> {
  const entries = [...pronunciations].flatMap(([word, ways]) => {
    // A word that the dictionary has keeps its ways; ours come after them.
    let way = 1;
    const name = () => (way === 1 ? word : `${word}(${way})`);
    return ways.map((phones) => {
      while (decoder.lookup_word(name()) !== null) way += 1;
      const entry = [name(), phones] as const;
      way += 1;
      return entry;
    });
  });
  decoder.add_words(...entries);
  return new Set(pronunciations.keys());
}

function setNetwork(module: SoundModule, { cdecoder }: PackageDecoder, network: Network): void {
  const { states, end, arcs, silent } = network;
  const logmath = module._decoder_logmath(cdecoder);
  const made = withText(module, 'hearing', (name) =>
    module._fsg_model_init(name, logmath, LANGUAGE_WEIGHT, states),
  );
  module._fsg_set_states(made, 0, end);
  const ids = new Map<string, number>();
  const weigh = (chance: number): number =>
    Math.round(module._logmath_log(logmath, chance) * LANGUAGE_WEIGHT);
  for (const { from, to, word, chance } of arcs) {
    const id = ids.get(word) ?? withText(module, word, (text) => module._fsg_model_word_add(made, text));
    ids.set(word, id);
    module._fsg_model_trans_add(made, from, to, weigh(chance), id);
  }
  for (const { from, to, chance } of silent) module._fsg_model_null_trans_add(made, from, to, weigh(chance));
  if (module._decoder_set_fsg(cdecoder, made) < 0) throw new Error('The recogniser refuses the network.');
}

/** Hands a text to compiled code as it wants it, and takes the memory back. */
function withText<T>(module: SoundModule, text: string, use: (address: number) => T): T {
  // The model's words are ASCII.
  const bytes = Uint8Array.from(`${text}\0`, (letter) => letter.charCodeAt(0));
  const address = module._malloc(bytes.length);
  module.HEAP8.set(bytes, address);
  const result = use(address);
  module._free(address);
  return result;
}

function begin(module: SoundModule, decoder: PackageDecoder): Decoding {
  let frames = 0;
  decoder.start();
  return {
    push: (sound) => {
      if (sound.length > 0) frames += decoder.process_audio(sound, false, false);
    },
    soFar: () => found(module, decoder, frames).words,
    end: () => {
      decoder.stop();
      return found(module, decoder, frames);
    },
  };
}

function decode(module: SoundModule, decoder: PackageDecoder, sound: Float32Array): Decoded {
  decoder.start();
  const frames = decoder.process_audio(sound, false, true);
  decoder.stop();
  return found(module, decoder, frames);
}

function found(module: SoundModule, decoder: PackageDecoder, frames: number): Decoded {
  const address = module._malloc(4);
  const text = module._decoder_hyp(decoder.cdecoder, address);
  const score = module.HEAP32[address >> 2] ?? 0;
  module._free(address);
  return { words: text === 0 ? [] : wordsOf(module, decoder.cdecoder), score, seconds: frames / FRAMES };
}

// Fields of the compiled code's seg_iter_t, in words of four bytes: its text's address, first and last frame, and the
// score of the sound alone, for which the package has no function. tests/speech/hearing.test.ts
// notices where a new version lays them out otherwise.
const [TEXT, FIRST, LAST, FIT] = [2, 3, 4, 5] as const;

// "<sil>", "(NULL)" and "[NOISE]" stand for no words; "that(2)" is "that", said the second way.
function wordsOf(module: SoundModule, decoder: number): readonly HeardWord[] {
  const words: HeardWord[] = [];
  for (let at = module._decoder_seg_iter(decoder); at !== 0; at = module._seg_iter_next(at)) {
    const field = (number: number): number => module.HEAP32[(at >> 2) + number] ?? 0;
    const text = textAt(module, field(TEXT));
    if (/^[<([+]/.test(text)) continue;
    const [first, last] = [field(FIRST), field(LAST)];
    const word = text.replace(/\(\d+\)$/, '');
    const times = { start: first / FRAMES, end: (last + 1) / FRAMES };
    words.push({ word, ...times, frames: last + 1 - first, fit: field(FIT) });
  }
  return words;
}
