// A radio report is cut where a listener can answer: no piece is longer than the stated number of words, and it is cut
// between sentences wherever a sentence fits a piece.

import type { Sentence } from '../text.ts';

/** Words in a piece, its last word counted; 40 words are 30 seconds at 80 words a minute, slow enough to write down. */
export const CHUNK_WORDS = 40;

/** Ends a piece that is followed by another, and the last one (prowords, ACP 125; from memory). */
const BREAK = 'break';
const OVER = 'over';
/** Opens what is left of a sentence that was too long for one piece, so that no half of it is heard as a whole. */
const GOES_ON = 'continuing,';

export interface Chunk {
  readonly text: string;
  /** ids of the entries spoken of in it */
  readonly entries: readonly string[];
}

const wordsOf = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '');

/** The last place at or before `limit` where a comma, colon or full stop ends a word; else `limit` itself. */
function cutAt(words: readonly string[], limit: number): number {
  for (let end = limit; end > limit / 2; end -= 1) if (/[,.:]$/.test(words[end - 1] ?? '')) return end;
  return limit;
}

function pieces(sentence: Sentence, room: number): readonly Sentence[] {
  const cut: Sentence[] = [];
  let left = wordsOf(sentence.text);
  while (left.length > room) {
    const end = cutAt(left, room);
    cut.push({ text: left.slice(0, end).join(' '), entries: sentence.entries });
    left = [GOES_ON, ...left.slice(end)];
  }
  return [...cut, { text: left.join(' '), entries: sentence.entries }];
}

/** Sentences in pieces of at most `most` words, each ending in "break" and the last in "over". */
export function chunks(sentences: readonly Sentence[], most: number = CHUNK_WORDS): readonly Chunk[] {
  const room = most - 1;
  const packed: { words: number; texts: string[]; entries: Set<string> }[] = [];
  for (const piece of sentences.flatMap((sentence) => pieces(sentence, room))) {
    const words = wordsOf(piece.text).length;
    if (words === 0) continue;
    const last = packed.at(-1);
    if (last !== undefined && last.words + words <= room) {
      last.words += words;
      last.texts.push(piece.text);
      for (const id of piece.entries) last.entries.add(id);
    } else packed.push({ words, texts: [piece.text], entries: new Set(piece.entries) });
  }
  return packed.map(({ texts, entries }, index) => ({
    text: `${texts.join(' ')} ${index === packed.length - 1 ? OVER : BREAK}`,
    entries: [...entries],
  }));
}
