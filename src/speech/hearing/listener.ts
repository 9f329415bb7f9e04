// One stretch of speech in, decoded while it is spoken, and what was said out: the grammar's words with how far each is to be
// trusted, and in their place among them the parts that were not understood.

import { createDecoder, type Decoder, type Decoding, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { Band, ModelFiles } from '../engine/model-files.ts';
import { PHONES } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import type { WordExit } from '../engine/word-exits.ts';
import { bothCounts, numbersOf } from '../network/counts.ts';
import { partedWords, waysOfJoined } from '../network/joined-words.ts';
import { type Network, wordsOf } from '../network/network.ts';
import { likelyTalk } from '../network/talk.ts';
import { triplesIn } from '../network/triples.ts';
import { partsOf } from './judged.ts';
import { type Likeliest, likeliest, likeliestOf } from './likeliest.ts';
import { oddsOf } from './odds.ts';
import { type JudgedWord, likelierOf } from './reading.ts';
import { withoutScraps } from './scraps.ts';
import type { Segment } from './segments.ts';
import { differInTelling } from './telling-words.ts';
import { leadsOf, trustOf } from './trust.ts';
import type { HeardUtterance } from './utterance.ts';
import { type Part, utterancesOf } from './utterances.ts';
import type { WorkedOut } from './work-out.ts';

export interface Listener {
  /** the next sound of the stretch that is being spoken; the first begins it */
  push(sound: Float32Array): void;
  /** the words of what came so far, the last of them unsure; an ellipsis where it is hardly what the grammar lets be said */
  soFar(): readonly string[];
  /** the same in a pause, where the words stand as they would if nothing followed: it takes some hundredths of a second, once a pause */
  inPause(): readonly string[];
  /** in the order said; empty where nobody spoke. Where `isAll` is false its sound is heard anew */
  end(segment: Segment, isAll: boolean): readonly HeardUtterance[];
  /** forgets what was begun */
  drop(): void;
  close(): void;
}

/** The confidence of a word that may as well have been another: less than a half. */
const DOUBTED = 0.49;
/** A word less sure than this might as well have been another; a side, a place, a number or a denial must be surer. */
const UNSURE = 0.4;
const TELLING = 0.8;
/** What was heard in one of the networks alone is told too where it is not less likely than by this logarithm. */
const NEARLY = 15;

/** Most states followed at once where words may come in any order: with three times as many no more was heard rightly. */
const LOOSE_STATES = 1500;

/** Odds below which words so far are not shown. */
const SHOWN = -1;
const ELLIPSIS = '…';

/** Loads the decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: { readonly band: Band; readonly files: ModelFiles },
  { said: grammar, anyOrder: loose, telling, ...known }: WorkedOut,
  without: readonly string[] = [],
): Listener {
  const { band, files } = model;
  const waysToSay = (word: string): readonly string[] => known.ways.get(word) ?? [];
  const { order, exam, besides } = likelyIn(known);
  const decoderOf = (network: Network, states?: number): Decoder =>
    createDecoder(module, {
      model: files,
      pronunciations: new Map(wordsOf(network).map((word) => [word, waysOfJoined(waysToSay)(word)])),
      network: () => network,
      ...(states === undefined ? {} : { states }),
    });
  const ears = decoderOf(grammar);
  const phones = createDecoder(module, {
    model: files,
    pronunciations: new Map(PHONES.map((phone) => [phone, [phone]])),
    network: () => fillerNetwork(PHONES),
  });
  const anyOrder = decoderOf(loose, LOOSE_STATES);
  const hearsLoosely = !without.includes('any-order');
  let open: { readonly words: Decoding; readonly free: Decoding; readonly loose: Decoding | null } | null =
    null;
  /** what stood in the pause that lasts; null where sound came since */
  let paused: readonly string[] | null = null;
  const push = (sound: Float32Array): void => {
    open ??= {
      words: ears.begin(),
      free: phones.begin(),
      loose: hearsLoosely ? anyOrder.begin() : null,
    };
    open.words.push(sound);
    open.free.push(sound);
    open.loose?.push(sound);
    paused = null;
  };
  /** Joined words are weighed as one, and then parted. */
  const weigh = (
    heard: readonly (HeardWord & { readonly sure?: number })[],
    free: readonly HeardWord[],
  ): readonly JudgedWord[] => {
    const leads = leadsOf(heard, free);
    const words = partedWords(
      heard.map((word, at) => ({ ...word, lead: leads[at] ?? 0 })),
      waysToSay,
    );
    const texts = words.map(({ word }) => word);
    const [chances, others] = [exam(texts), besides(texts)];
    return words.map((word, at) => ({
      ...word,
      sure: word.sure ?? 1,
      chance: chances[at] ?? 0,
      besides: others[at] ?? 0,
      confidence: trustOf(word.lead),
    }));
  };
  /** True for a reading that is as good as not much worse than the best. */
  const isNearly = (
    words: readonly HeardWord[],
    exits: readonly WordExit[],
    best: Likeliest | null,
  ): boolean => {
    const own = best === null ? null : likeliestOf(words, exits, order);
    return own !== null && best !== null && best.score - own.score < NEARLY;
  };
  /** The words of both networks put together, and judged. */
  const partsIn = (
    words: readonly HeardWord[],
    loose: readonly HeardWord[],
    free: readonly HeardWord[],
  ): readonly Part[] => {
    const exits = [...ears.exits(), ...(hearsLoosely ? anyOrder.exits() : [])];
    const best = likeliest(exits, order);
    const said = weigh(best?.words ?? words, free);
    const others = [words, loose]
      .filter((one) => isNearly(one, exits, best))
      .map((one) => partedWords(one, waysToSay))
      .filter((one) => differInTelling(said, one, telling));
    const doubted = said.map((word) =>
      word.sure < (telling.has(word.word) ? TELLING : UNSURE)
        ? { ...word, confidence: Math.min(word.confidence, DOUBTED) }
        : word,
    );
    return withoutScraps(partsOf(doubted, others, without.includes('trust')));
  };
  const drop = (): void => {
    open?.words.end();
    open?.free.end();
    open?.loose?.end();
    open = null;
    paused = null;
  };
  return {
    push,
    drop,
    soFar: () => {
      const words = open?.words.soFar() ?? [];
      if (open === null || words.length === 0) return [];
      const free = open.free.soFar();
      const said = likelierOf(weigh(words, free), weigh(open.loose?.soFar() ?? [], free), band);
      return oddsOf(said) >= SHOWN ? said.map(({ word }) => word) : [ELLIPSIS];
    },
    inPause: () => {
      if (open === null) return [];
      const free = open.free.soFar();
      if (free.length === 0) return [];
      paused ??= partsIn(open.words.soFar(), open.loose?.soFar() ?? [], free).flatMap(
        ({ words, understood }) => (understood ? words.map(({ word }) => word) : [ELLIPSIS]),
      );
      return paused;
    },
    end: ({ start, end, sound }, isAll) => {
      if (!isAll) {
        drop();
        push(sound);
      }
      const [free, words] = [open?.free.end().words ?? [], open?.words.end().words ?? []];
      const loose = open?.loose?.end().words ?? [];
      [open, paused] = [null, null];
      if (free.length === 0) return [];
      return utterancesOf(partsIn(words, loose, free), start, end);
    },
    close: () => {
      drop();
      ears.close();
      phones.close();
      anyOrder.close();
    },
  };
}

/** How likely words are after those before them: whatever is said, in an exam, and in what people say besides. */
function likelyIn({ words, exam, besides, heard }: Pick<WorkedOut, 'words' | 'exam' | 'besides' | 'heard'>) {
  const numbers = numbersOf(words);
  return {
    order: triplesIn(bothCounts(exam, besides), numbers, heard),
    exam: likelyTalk(triplesIn(exam, numbers, heard)),
    besides: likelyTalk(triplesIn(besides, numbers, heard)),
  };
}
