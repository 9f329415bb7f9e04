// Every word that the decoder finished on any way that it followed, and not only on the best one: the package keeps them and has no
// function that gives them.

import type { SoundModule } from './sound-module.ts';
import { textAt } from './text-at.ts';

/** A word that may have been said from its first to its last frame. */
export interface WordExit {
  /** a word of the network, or '' for a pause or a noise */
  readonly word: string;
  readonly noise: boolean;
  /** frames of a hundredth of a second, both within the word */
  readonly first: number;
  readonly last: number;
  /** the sound's own log score over them, in the decoder's units, without the network's */
  readonly fit: number;
}

/** So much of a network's log score is one unit of the sound's: the compiled code keeps the latter in a coarser one (its SENSCR_SHIFT). */
const COARSER = 10;

// Fields of the compiled code's structures, in words of four bytes; tests/speech/word-exits.test.ts notices where a new version lays
// them out otherwise. Read in the headers of SoundSwallower (search_module.h, fsg_search_internal.h, fsg_history.h, blkarray_list.h,
// fsg_model.h).
const SEGMENT = { search: 1 } as const;
const SEARCH = { network: 16, history: 18 } as const;
const HISTORY = { network: 0, entries: 1 } as const;
const LIST = { rows: 0, rowLength: 2, count: 3 } as const;
const ENTRY = { arc: 0, score: 1, before: 2, frame: 3 } as const;
const ARC = { logProbability: 2, word: 3 } as const;
const NETWORK = { words: 4 } as const;

/** What is not laid out as it is read here. */
class UnknownLayout extends Error {
  constructor() {
    super('The recogniser keeps its words otherwise than version 0.6 of the package did.');
  }
}

/** The exits of what the decoder heard last, each word once for the same frames, by its best fit; none where nothing was heard. Throws where the package lays them out otherwise. */
export function exitsOf(module: SoundModule, decoder: number): readonly WordExit[] {
  const { HEAP32 } = module;
  const field = (address: number, number: number): number => HEAP32[(address >> 2) + number] ?? 0;
  const segment = module._decoder_seg_iter(decoder);
  if (segment === 0) return [];
  const search = field(segment, SEGMENT.search);
  const [network, history] = [field(search, SEARCH.network), field(search, SEARCH.history)];
  if (history === 0 || field(history, HISTORY.network) !== network) throw new UnknownLayout();
  const list = field(history, HISTORY.entries);
  const [rows, length] = [field(list, LIST.rows), field(list, LIST.rowLength)];
  const entryAt = (index: number): number => field(field(rows, Math.floor(index / length)), index % length);
  const texts = new Map<number, string>();
  const textOf = (word: number): string => {
    const known = texts.get(word);
    if (known !== undefined) return known;
    const text = textAt(module, field(field(network, NETWORK.words), word)).replace(/\(\d+\)$/, '');
    texts.set(word, text);
    return text;
  };
  const best = new Map<string, WordExit>();
  for (let index = 0; index < field(list, LIST.count); index++) {
    const entry = entryAt(index);
    const arc = field(entry, ENTRY.arc);
    const word = arc === 0 ? -1 : field(arc, ARC.word);
    // A silent step says nothing.
    if (word < 0) continue;
    const before = field(entry, ENTRY.before);
    const from = before < 0 ? null : entryAt(before);
    const fit =
      field(entry, ENTRY.score) -
      (from === null ? 0 : field(from, ENTRY.score)) -
      (field(arc, ARC.logProbability) >> COARSER);
    const first = from === null ? 0 : field(from, ENTRY.frame) + 1;
    const last = field(entry, ENTRY.frame);
    const key = `${word} ${first} ${last}`;
    if ((best.get(key)?.fit ?? Number.NEGATIVE_INFINITY) >= fit) continue;
    const text = textOf(word);
    const isWord = !/^[<([+]/.test(text);
    best.set(key, { word: isWord ? text : '', noise: !isWord && text !== '<sil>', first, last, fit });
  }
  freeSegments(module, segment);
  return [...best.values()];
}

// Going on to its end frees it.
function freeSegments(module: SoundModule, segment: number): void {
  for (let at = segment; at !== 0; ) at = module._seg_iter_next(at);
}
