// One stretch of speech in, decoded while it is spoken, and what was said out: the grammar's words with how far each is to be
// trusted, and in their place among them the parts that were not understood.

import { createDecoder, type Decoder, type Decoding, type HeardWord } from '../engine/decoder.ts';
import { fillerNetwork } from '../engine/filler.ts';
import type { Band, ModelFiles } from '../engine/model-files.ts';
import { asciiOf, bothOf, PHONES, readPronunciations, waysIn } from '../engine/pronunciations.ts';
import type { SoundModule } from '../engine/sound-module.ts';
import { withFewerStates } from '../network/fewer-states.ts';
import { joinedWords, partedWords, type WaysToSay } from '../network/joined-words.ts';
import { type Network, wordsOf } from '../network/network.ts';
import { substitutesIn } from '../network/substitutes.ts';
import type { HearingFiles } from './hearing-files.ts';
import { partsOf } from './judged.ts';
import type { NearWords } from './near.ts';
import type { HearingGrammar, LooseTalk } from './network-of-files.ts';
import { oddsOf } from './odds.ts';
import { type JudgedWord, likelierOf, type Reading } from './reading.ts';
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

/** Odds below which words so far are not shown. */
const SHOWN = -1;
const ELLIPSIS = '…';

/** Loads the decoders; throws where the model's files are damaged. */
export function createListener(
  module: SoundModule,
  model: { readonly band: Band; readonly files: ModelFiles },
  files: HearingFiles,
  grammar: HearingGrammar,
  without: readonly string[] = [],
): Listener {
  const { band } = model;
  const { 'dict.txt': dictionary, ...bare } = model.files;
  const { made, loose: looseTalk, nearby, waysToSay } = saidIn(grammar, files, dictionary);
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
  const phones = createDecoder(module, {
    model: bare,
    pronunciations: new Map(PHONES.map((phone) => [phone, [phone]])),
    network: () => fillerNetwork(PHONES),
  });
  const second = createSecondHearing(module, bare, nearby, waysToSay, substitutesIn(made));
  const anyOrder = decoderOf(looseTalk.network, LOOSE_STATES);
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
  /** Joined words are weighed as one, and then parted. */
  const weigh = (heard: readonly HeardWord[], free: readonly HeardWord[]): readonly JudgedWord[] => {
    const leads = leadsOf(heard, free);
    const words = partedWords(
      heard.map((word, at) => ({ ...word, lead: leads[at] ?? 0 })),
      waysToSay,
    );
    const texts = words.map(({ word }) => word);
    const [chances, besides] = [looseTalk.exam(texts), looseTalk.besides(texts)];
    return words.map((word, at) => ({
      ...word,
      chance: chances[at] ?? 0,
      besides: besides[at] ?? 0,
      confidence: trustOf(word.lead),
    }));
  };
  /** What was said and the other reading of it, so far. */
  const read = (heard: ReadWords): readonly [Reading, Reading] => {
    const [words, loose] = [weigh(heard.words, heard.free), weigh(heard.loose, heard.free)];
    return likelierOf({ from: 'grammar', words }, { from: 'any-order', words: loose }, band);
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
      const words = open?.words.soFar() ?? [];
      if (open === null || words.length === 0) return [];
      const [said, other] = read({ words, free: open.free.soFar(), loose: open.loose?.soFar() ?? [] });
      const isShown = oddsOf(said, other.words, band) >= SHOWN;
      return isShown ? said.words.map(({ word }) => word) : [ELLIPSIS];
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
      const [said, other] = read({ words, free, loose });
      const rivals = without.includes('second-hearing') ? [] : second.rivals(said.words, sound);
      const doubted = said.words.map((word, at) =>
        rivals[at] === true ? { ...word, confidence: word.confidence * RIVALLED } : word,
      );
      const parts = partsOf(
        { ...said, words: doubted },
        band,
        hearsLoosely ? other : null,
        without.includes('trust'),
      );
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

/** What the three decoders heard in one sound. */
interface ReadWords {
  readonly words: readonly HeardWord[];
  readonly free: readonly HeardWord[];
  readonly loose: readonly HeardWord[];
}

interface Said {
  readonly made: Network;
  readonly loose: LooseTalk;
  readonly nearby: NearWords;
  readonly waysToSay: WaysToSay;
}

/** The networks, of words that can be said; of the pronunciations only theirs are kept. */
function saidIn(grammar: HearingGrammar, files: HearingFiles, dictionary?: Uint8Array): Said {
  const all = bothOf(
    readPronunciations(dictionary === undefined ? '' : asciiOf(dictionary)),
    readPronunciations(files.pronunciations),
  );
  const waysToSay = waysIn(all);
  const canSay = (word: string): boolean => waysToSay(word).length > 0;
  const made = grammar.network(canSay);
  const loose = grammar.loose(canSay, made);
  const nearby = grammar.near(canSay);
  const words = new Set([
    ...wordsOf(made),
    ...wordsOf(loose.network),
    ...nearby.keys(),
    ...[...nearby.values()].flat(),
  ]);
  const kept = new Map([...words].map((word) => [word, waysToSay(word)]));
  return { made, loose, nearby, waysToSay: (word) => kept.get(word) ?? [] };
}
