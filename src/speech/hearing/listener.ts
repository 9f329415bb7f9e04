// One stretch of speech in, decoded while it is spoken, and what was said out: the grammar's words with how far each is to be
// trusted, and in their place among them the parts that were not understood.

import { createDecoder, type Decoding, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { ModelFiles } from '../engine/model.ts';
import { PHONES, readPronunciations } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { substitutesIn } from '../network/substitutes.ts';
import { aside, isAside } from './aside.ts';
import { chunksOf } from './chunks.ts';
import { type HearingFiles, listed } from './hearing-files.ts';
import type { HearingGrammar } from './network-of-files.ts';
import { withoutScraps } from './scraps.ts';
import { createSecondHearing } from './second-hearing.ts';
import type { Segment } from './segments.ts';
import { trustOf } from './trust.ts';
import type { HeardUtterance } from './utterance.ts';
import { type Part, utterancesOf } from './utterances.ts';

export interface Listener {
  /** the next sound of the stretch that is being spoken; the first begins it */
  push(sound: Float32Array): void;
  /** the words of what came so far, the last of them unsure; an ellipsis stands for what is not understood */
  soFar(): readonly string[];
  /** in the order said; empty where nobody spoke. Where `isAll` is false its sound is heard anew */
  end(segment: Segment, isAll: boolean): readonly HeardUtterance[];
  /** forgets what was begun */
  drop(): void;
  close(): void;
}

/** A part with less than this on the whole was not said in these words. */
const LEAST_TRUST = 0.4;

/** A word that might as well have been another of its kind keeps so much of its trust: less than a half of all. */
const RIVALLED = 0.49;

/** Loads both decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: ModelFiles,
  files: HearingFiles,
  { network, near }: HearingGrammar,
  without: readonly string[] = [],
): Listener {
  const pronunciations = readPronunciations(files.pronunciations);
  const likened = new Map(listed(files.commonWords).map((word) => [aside(word), word]));
  let substitutes: ReturnType<typeof substitutesIn> | undefined;
  const grammar = createDecoder(module, {
    model,
    pronunciations,
    likened,
    network: (canHear) => {
      const made = network(canHear);
      substitutes = substitutesIn(made);
      return made;
    },
  });
  const phones = createDecoder(module, {
    // Without the model's dictionary it loads in no time.
    model: withoutDictionary(model),
    pronunciations: new Map(PHONES.map((phone) => [aside(phone), [phone]])),
    network: () => fillerNetwork(PHONES.map(aside)),
  });
  const canSay = (word: string): boolean => grammar.waysToSay(word).length > 0;
  const second = createSecondHearing(
    module,
    withoutDictionary(model),
    near(canSay),
    grammar.waysToSay,
    substitutes,
  );
  let open: { readonly words: Decoding; readonly free: Decoding } | null = null;
  const push = (sound: Float32Array): void => {
    open ??= { words: grammar.begin(), free: phones.begin() };
    open.words.push(sound);
    open.free.push(sound);
  };
  const drop = (): void => {
    open?.words.end();
    open?.free.end();
    open = null;
  };
  return {
    push,
    drop,
    soFar: () => shown(open?.words.soFar() ?? []),
    end: ({ start, end, sound }, isAll) => {
      if (!isAll) {
        drop();
        push(sound);
      }
      const [free, words] = [open?.free.end().words ?? [], open?.words.end().words ?? []];
      open = null;
      if (free.length === 0) return [];
      const rivals = without.includes('second-hearing') ? [] : second.rivals(words, sound);
      const trust = trustOf(words, free).map((value, at) => (rivals[at] === true ? value * RIVALLED : value));
      return utterancesOf(
        withoutScraps(partsOf(words, trust, without.includes('trust') ? 0 : LEAST_TRUST)),
        start,
        end,
      );
    },
    close: () => {
      drop();
      grammar.close();
      phones.close();
      second.close();
    },
  };
}

const ELLIPSIS = '…';

const shown = (words: readonly string[]): readonly string[] =>
  words
    .map((word) => (isAside(word) ? ELLIPSIS : word))
    .filter((word, index, all) => word !== ELLIPSIS || all[index - 1] !== ELLIPSIS);

const withoutDictionary = ({ 'dict.txt': _, ...model }: ModelFiles): ModelFiles => model;

function partsOf(words: readonly HeardWord[], trust: readonly number[], least: number): readonly Part[] {
  const trustIn = new Map(words.map((word, index) => [word, trust[index] ?? 0]));
  return chunksOf(words).map(({ words: chunk, isTalk }) => {
    const trusted = chunk.map((word) => ({ ...word, confidence: trustIn.get(word) ?? 0 }));
    const frames = chunk.reduce((sum, word) => sum + word.frames, 0);
    const whole =
      trusted.reduce((sum, { confidence, frames: length }) => sum + confidence * length, 0) / frames;
    return { words: trusted, confidence: whole, understood: !isTalk && whole >= least };
  });
}
