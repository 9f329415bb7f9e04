// One stretch of speech in, what was said out: the grammar's words, or that ordinary talk fits the sound as well.

import { createDecoder, type Decoder, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { ModelFiles } from '../engine/model.ts';
import { readPronunciations } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { type HearingFiles, listed } from './hearing-files.ts';
import type { HearingGrammar } from './network-of-files.ts';
import type { Segment } from './segments.ts';
import { type HeardUtterance, notUnderstood } from './utterance.ts';

export interface Listener {
  /** null where nobody spoke */
  hear(segment: Segment): HeardUtterance | null;
  close(): void;
}

/**
 * How much better, in the decoder's units of log score a second, the grammar must fit than common words do. Measured on
 * synthetic voices (tests/bench/hearing.ts): at 100 all ordinary sentences were refused, and one in twelve good ones.
 */
const LEAST_LEAD = 100;
/** The lead at which confidence is about three quarters. */
const LEAD_UNIT = 300;
/** A pause of this many seconds between two words is written as a comma. */
const COMMA = 0.45;

/** Loads both decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: ModelFiles,
  files: HearingFiles,
  { network }: HearingGrammar,
): Listener {
  const pronunciations = readPronunciations(files.pronunciations);
  const grammar = createDecoder(module, { model, pronunciations, network });
  const common = listed(files.commonWords);
  const filler = createDecoder(module, {
    // Without the model's dictionary it loads in no time; the few words come from the other decoder's.
    model: withoutDictionary(model),
    pronunciations: new Map(
      common.map((word) => [word, grammar.waysToSay(word)] as const).filter(([, ways]) => ways.length > 0),
    ),
    network: (canHear) => fillerNetwork(common.filter(canHear)),
  });
  return {
    hear: (segment) => hear(grammar, filler, segment),
    close: () => {
      grammar.close();
      filler.close();
    },
  };
}

const withoutDictionary = ({ 'dict.txt': _, ...model }: ModelFiles): ModelFiles => model;

function hear(grammar: Decoder, filler: Decoder, { start, end, sound }: Segment): HeardUtterance | null {
  const ordinary = filler.decode(sound);
  if (ordinary.words.length === 0) return null;
  const heard = grammar.decode(sound);
  const lead = heard.words.length === 0 ? Number.NEGATIVE_INFINITY : leadOf(heard, ordinary);
  const confidence = 1 / (1 + Math.exp(-lead / LEAD_UNIT));
  const words = heard.words.map((word) => ({
    word: word.word,
    start: start + word.start,
    end: start + word.end,
    confidence,
  }));
  const times = { start, end, engine: 'bundled', confidence, words } as const;
  return lead < LEAST_LEAD
    ? { ...times, text: notUnderstood(start, end), understood: false }
    : { ...times, text: textOf(heard.words), understood: true };
}

function leadOf(heard: ReturnType<Decoder['decode']>, ordinary: ReturnType<Decoder['decode']>): number {
  const [first, last] = [heard.words[0], heard.words.at(-1)];
  const spoken = Math.max(0.1, (last?.end ?? 0) - (first?.start ?? 0));
  return (heard.score - ordinary.score) / spoken;
}

const textOf = (words: readonly HeardWord[]): string =>
  words
    .map(({ word, start }, index) => {
      const before = words[index - 1];
      return before === undefined ? word : `${start - before.end >= COMMA ? ', ' : ' '}${word}`;
    })
    .join('');
