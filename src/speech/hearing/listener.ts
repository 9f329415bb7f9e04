// One stretch of speech in, what was said out: the grammar's words with how far each is to be trusted, and in their place
// among them the parts that were not understood.

import { createDecoder, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { ModelFiles } from '../engine/model.ts';
import { PHONES, readPronunciations } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { aside } from './aside.ts';
import { chunksOf } from './chunks.ts';
import { type HearingFiles, listed } from './hearing-files.ts';
import type { HearingGrammar } from './network-of-files.ts';
import { withoutScraps } from './scraps.ts';
import type { Segment } from './segments.ts';
import { trustOf } from './trust.ts';
import type { HeardUtterance } from './utterance.ts';
import { type Part, utterancesOf } from './utterances.ts';

export interface Listener {
  /** in the order said; empty where nobody spoke */
  hear(segment: Segment): readonly HeardUtterance[];
  close(): void;
}

/** A part with less than this on the whole was not said in these words. */
const LEAST_TRUST = 0.4;

/** Loads both decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: ModelFiles,
  files: HearingFiles,
  { network }: HearingGrammar,
): Listener {
  const pronunciations = readPronunciations(files.pronunciations);
  const likened = new Map(listed(files.commonWords).map((word) => [aside(word), word]));
  const grammar = createDecoder(module, { model, pronunciations, likened, network });
  const phones = createDecoder(module, {
    // Without the model's dictionary it loads in no time.
    model: withoutDictionary(model),
    pronunciations: new Map(PHONES.map((phone) => [aside(phone), [phone]])),
    network: () => fillerNetwork(PHONES.map(aside)),
  });
  return {
    hear: ({ start, end, sound }) => {
      const free = phones.decode(sound).words;
      if (free.length === 0) return [];
      const { words } = grammar.decode(sound);
      return utterancesOf(withoutScraps(partsOf(words, trustOf(words, free))), start, end);
    },
    close: () => {
      grammar.close();
      phones.close();
    },
  };
}

const withoutDictionary = ({ 'dict.txt': _, ...model }: ModelFiles): ModelFiles => model;

function partsOf(words: readonly HeardWord[], trust: readonly number[]): readonly Part[] {
  const trustIn = new Map(words.map((word, index) => [word, trust[index] ?? 0]));
  return chunksOf(words).map(({ words: chunk, isTalk }) => {
    const trusted = chunk.map((word) => ({ ...word, confidence: trustIn.get(word) ?? 0 }));
    const frames = chunk.reduce((sum, word) => sum + word.frames, 0);
    const whole =
      trusted.reduce((sum, { confidence, frames: length }) => sum + confidence * length, 0) / frames;
    return { words: trusted, confidence: whole, understood: !isTalk && whole >= LEAST_TRUST };
  });
}
