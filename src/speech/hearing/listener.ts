// One stretch of speech in, decoded while it is spoken, and what was said out: the grammar's words with how far each is to be
// trusted, and in their place among them the parts that were not understood.

import { createDecoder, type Decoder, type Decoding, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { ModelFiles } from '../engine/model.ts';
import { asciiOf, bothOf, PHONES, readPronunciations } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { withFewerStates } from '../network/fewer-states.ts';
import { joinedWords, partedWords, type WaysToSay } from '../network/joined-words.ts';
import { likelyWayIn } from '../network/likely-way.ts';
import { type Network, wordsOf } from '../network/network.ts';
import { substitutesIn } from '../network/substitutes.ts';
import type { HearingFiles } from './hearing-files.ts';
import { type JudgedWord, type OtherWord, partsOf } from './judged.ts';
import type { NearWords } from './near.ts';
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

/** Most states followed at once where words may come in any order: with three times as many no more was heard rightly. */
const LOOSE_STATES = 1500;
/** Between these odds what was heard in words of any order counts; beyond them it would change nothing. */
const DOUBTFUL = { from: -5, to: 6.5 } as const;

/** Odds below which words so far are not shown. */
const SHOWN = -1;
const ELLIPSIS = '…';

/** Loads the decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: ModelFiles,
  files: HearingFiles,
  grammar: HearingGrammar,
  without: readonly string[] = [],
): Listener {
  const { 'dict.txt': dictionary, ...bare } = model;
  const { made, looseNet, nearby, waysToSay } = saidIn(grammar, files, dictionary);
  const parted = <Heard extends HeardWord>(heard: readonly Heard[]): readonly Heard[] =>
    partedWords(heard, waysToSay);
  const decoderOf = (listenFor: Network, states?: number): Decoder => {
    const lean = joinedWords(withFewerStates(listenFor), waysToSay);
    return createDecoder(module, {
      // Of the model's 130,000 words only those are loaded that can be heard: a third of a second, and 20 megabytes.
      model: bare,
      pronunciations: new Map(wordsOf(lean.network).map((word) => [word, lean.waysToSay(word)])),
      network: () => lean.network,
      ...(states === undefined ? {} : { states }),
    });
  };
  const ears = decoderOf(made);
  const likely = likelyWayIn(made);
  const phones = createDecoder(module, {
    model: bare,
    pronunciations: new Map(PHONES.map((phone) => [phone, [phone]])),
    network: () => fillerNetwork(PHONES),
  });
  const second = createSecondHearing(module, bare, nearby, waysToSay, substitutesIn(made));
  const anyOrder = decoderOf(looseNet, LOOSE_STATES);
  const hearsLoosely = !without.includes('any-order');
  let open: { readonly words: Decoding; readonly free: Decoding; readonly loose: Decoding | null } | null =
    null;
  const push = (sound: Float32Array): void => {
    open ??= {
      words: ears.begin(),
      free: phones.begin(),
      loose: hearsLoosely ? anyOrder.begin() : null,
    };
    open.words.push(sound);
    open.free.push(sound);
    open.loose?.push(sound);
  };
  /** Joined words are weighed as one. */
  const withLeads = (
    heard: readonly HeardWord[],
    free: readonly HeardWord[],
  ): readonly (HeardWord & { readonly lead: number })[] => {
    const leads = leadsOf(heard, free);
    return parted(heard.map((word, at) => ({ ...word, lead: leads[at] ?? 0 })));
  };
  const weigh = (heard: readonly HeardWord[], free: readonly HeardWord[]): readonly JudgedWord[] => {
    const words = withLeads(heard, free);
    const chances = likely(words.map(({ word }) => word)) ?? [];
    return words.map((word, at) => ({ ...word, chance: chances[at] ?? 0, confidence: trustOf(word.lead) }));
  };
  /** The same sound in words of any order; null beyond doubt. */
  const otherwise = (
    words: readonly JudgedWord[],
    free: readonly HeardWord[],
    heard: readonly HeardWord[],
  ): readonly OtherWord[] | null => {
    const odds = oddsOf(words);
    if (!hearsLoosely || odds < DOUBTFUL.from || odds > DOUBTFUL.to) return null;
    return withLeads(heard, free);
  };
  const drop = (): void => {
    open?.words.end();
    open?.free.end();
    open?.loose?.end();
    open = null;
  };
  return {
    push,
    drop,
    soFar: () => {
      const [words, free] = [open?.words.soFar() ?? [], open?.free.soFar() ?? []];
      if (words.length === 0) return [];
      const weighed = weigh(words, free);
      return oddsOf(weighed) < SHOWN ? [ELLIPSIS] : weighed.map(({ word }) => word);
    },
    end: ({ start, end, sound }, isAll) => {
      if (!isAll) {
        drop();
        push(sound);
      }
      const [free, words] = [open?.free.end().words ?? [], open?.words.end().words ?? []];
      const loose = open?.loose?.end().words ?? [];
      open = null;
      if (free.length === 0) return [];
      const rivals = without.includes('second-hearing') ? [] : second.rivals(parted(words), sound);
      const weighed = weigh(words, free).map((word, at) =>
        rivals[at] === true ? { ...word, confidence: word.confidence * RIVALLED } : word,
      );
      const parts = partsOf(weighed, otherwise(weighed, free, loose), without.includes('trust'));
      return utterancesOf(withoutScraps(parts), start, end);
    },
    close: () => {
      drop();
      ears.close();
      phones.close();
      anyOrder.close();
      second.close();
    },
  };
}

interface Said {
  readonly made: Network;
  readonly looseNet: Network;
  readonly nearby: NearWords;
  readonly waysToSay: WaysToSay;
}

/** The networks, of words that can be said; of the pronunciations only theirs are kept. */
function saidIn(grammar: HearingGrammar, files: HearingFiles, dictionary?: Uint8Array): Said {
  const all = bothOf(
    readPronunciations(dictionary === undefined ? '' : asciiOf(dictionary)),
    readPronunciations(files.pronunciations),
  );
  const canSay = (word: string): boolean => all.has(word);
  const made = grammar.network(canSay);
  const looseNet = grammar.loose(canSay, made);
  const nearby = grammar.near(canSay);
  const words = new Set([
    ...wordsOf(made),
    ...wordsOf(looseNet),
    ...nearby.keys(),
    ...[...nearby.values()].flat(),
  ]);
  const kept = new Map([...words].map((word) => [word, all.get(word) ?? []]));
  return { made, looseNet, nearby, waysToSay: (word) => kept.get(word) ?? [] };
}
