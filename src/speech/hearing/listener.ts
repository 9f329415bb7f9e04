// One stretch of speech in, decoded while it is spoken, and what was said out: the grammar's words with how far each is to be
// trusted, and in their place among them the parts that were not understood.

import { createDecoder, type Decoding, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { ModelFiles } from '../engine/model.ts';
import { PHONES, readPronunciations } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { type LikelyWay, likelyWayIn } from '../network/likely-way.ts';
import { substitutesIn } from '../network/substitutes.ts';
import type { HearingFiles } from './hearing-files.ts';
import { type JudgedWord, partsOf } from './judged.ts';
import type { HearingGrammar } from './network-of-files.ts';
import { oddsOf } from './odds.ts';
import { withoutScraps } from './scraps.ts';
import { createSecondHearing } from './second-hearing.ts';
import type { Segment } from './segments.ts';
import { leadsOf, trustOf } from './trust.ts';
import type { HeardUtterance } from './utterance.ts';
import { utterancesOf } from './utterances.ts';

export interface Listener {
  /** the next sound of the stretch that is being spoken; the first begins it */
  push(sound: Float32Array): void;
  /** the words of what came so far, the last of them unsure; an ellipsis where it is hardly what the grammar lets be said */
  soFar(): readonly string[];
  /** in the order said; empty where nobody spoke. Where `isAll` is false its sound is heard anew */
  end(segment: Segment, isAll: boolean): readonly HeardUtterance[];
  /** forgets what was begun */
  drop(): void;
  close(): void;
}

/** A word that might as well have been another of its kind keeps so much of its trust: less than a half of all. */
const RIVALLED = 0.49;

/** Odds below which words so far are not shown. */
const SHOWN = -1;
const ELLIPSIS = '…';

/** Loads both decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: ModelFiles,
  files: HearingFiles,
  { network, near }: HearingGrammar,
  without: readonly string[] = [],
): Listener {
  const pronunciations = readPronunciations(files.pronunciations);
  let likely: LikelyWay = () => null;
  let substitutes: ReturnType<typeof substitutesIn> | undefined;
  const grammar = createDecoder(module, {
    model,
    pronunciations,
    network: (canHear) => {
      const made = network(canHear);
      substitutes = substitutesIn(made);
      likely = likelyWayIn(made);
      return made;
    },
  });
  const phones = createDecoder(module, {
    // Without the model's dictionary it loads in no time.
    model: withoutDictionary(model),
    pronunciations: new Map(PHONES.map((phone) => [phone, [phone]])),
    network: () => fillerNetwork(PHONES),
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
  const weigh = (words: readonly HeardWord[], free: readonly HeardWord[]): readonly JudgedWord[] => {
    const leads = leadsOf(words, free);
    const chances = likely(words.map(({ word }) => word)) ?? [];
    return words.map((word, at) => {
      const lead = leads[at] ?? 0;
      return { ...word, lead, chance: chances[at] ?? 0, confidence: trustOf(lead) };
    });
  };
  const drop = (): void => {
    open?.words.end();
    open?.free.end();
    open = null;
  };
  return {
    push,
    drop,
    soFar: () => {
      const [words, free] = [open?.words.soFar() ?? [], open?.free.soFar() ?? []];
      if (words.length === 0) return [];
      return oddsOf(weigh(words, free)) < SHOWN ? [ELLIPSIS] : words.map(({ word }) => word);
    },
    end: ({ start, end, sound }, isAll) => {
      if (!isAll) {
        drop();
        push(sound);
      }
      const [free, words] = [open?.free.end().words ?? [], open?.words.end().words ?? []];
      open = null;
      if (free.length === 0) return [];
      const rivals = without.includes('second-hearing') ? [] : second.rivals(words, sound);
      const weighed = weigh(words, free).map((word, at) =>
        rivals[at] === true ? { ...word, confidence: word.confidence * RIVALLED } : word,
      );
      return utterancesOf(withoutScraps(partsOf(weighed, without.includes('trust'))), start, end);
    },
    close: () => {
      drop();
      grammar.close();
      phones.close();
      second.close();
    },
  };
}

const withoutDictionary = ({ 'dict.txt': _, ...model }: ModelFiles): ModelFiles => model;
