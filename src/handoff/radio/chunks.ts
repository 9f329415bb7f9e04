// A radio report is cut where a listener can answer: no piece is longer than the stated number of words, it is cut
// between lines wherever a line fits a piece, and each piece says for itself what in it is unconfirmed.

import type { RadioLine } from './line.ts';

/** Words in a piece, its last word counted; 40 words are 30 seconds at 80 words a minute, slow enough to write down. */
export const CHUNK_WORDS = 40;

/** Ends a piece that is followed by another, and the last one (prowords, ACP 125; from memory). */
const BREAK = 'break';
const OVER = 'over';
/** Opens what is left of a line that was too long for one piece, so that no half of it is heard as a whole. */
const GOES_ON = 'continuing,';
/** Opens a report of which nothing is confirmed, and each piece of which nothing is. */
const ALL_UNCONFIRMED = 'All unconfirmed.';
const UNCONFIRMED = 'Unconfirmed:';
/** The most words that a piece's opening, a line's mark and the last word take. */
const FRAME_WORDS = 6;

export interface Chunk {
  readonly text: string;
  /** ids of the entries spoken of in it */
  readonly entries: readonly string[];
}

const wordsOf = (text: string): readonly string[] => text.split(/\s+/).filter((word) => word !== '');

/** How many words a text is spoken in. */
export const countWords = (text: string): number => wordsOf(text).length;

/** The last place at or before `limit` where a comma, colon or full stop ends a word; else `limit` itself. */
function cutAt(words: readonly string[], limit: number): number {
  for (let end = limit; end > limit / 2; end -= 1) if (/[,.:]$/.test(words[end - 1] ?? '')) return end;
  return limit;
}

/** A line that is too long for a piece in several: its statements one by one, or else cut, with the trust of the whole. */
function pieces(line: RadioLine, room: number): readonly RadioLine[] {
  if (line.parts !== undefined && wordsOf(line.words).length > room)
    return line.parts.flatMap((part) => pieces(part, room));
  const cut: RadioLine[] = [];
  let left = wordsOf(line.words);
  while (left.length > room) {
    const end = cutAt(left, room);
    cut.push({
      ...line,
      words: left
        .slice(0, end)
        .join(' ')
        .replace(/[,:.]$/, ''),
    });
    left = [GOES_ON, ...left.slice(end)];
  }
  return [...cut, { ...line, words: left.join(' ') }];
}

const isUnconfirmed = (lines: readonly RadioLine[]): boolean => {
  const bearing = lines.filter(({ entries }) => entries.length > 0);
  return bearing.length > 0 && bearing.every(({ trust }) => trust === 'unconfirmed');
};

const MARKS = {
  confirmed: '',
  marked: '',
  unconfirmed: ', unconfirmed',
  'in part': ', unconfirmed in part',
} as const;

function said(lines: readonly RadioLine[], opening: string): string {
  const whole = isUnconfirmed(lines);
  const texts = lines.map(({ words, trust }) => {
    const mark = whole ? '' : MARKS[trust];
    return `${words}${mark}${mark === '' && /[.?!:]$/.test(words) ? '' : '.'}`;
  });
  return [...(whole ? [opening] : []), ...texts].join(' ');
}

/** The lines in sets that must be kept together: a block in one, where it fits a piece, else each line for itself. */
function sets(lines: readonly RadioLine[], room: number): readonly (readonly RadioLine[])[] {
  const found: RadioLine[][] = [];
  for (const line of lines) {
    const last = found.at(-1);
    const joins = line.block !== undefined && last?.[0]?.block === line.block;
    if (joins && last !== undefined && countWords(said([...last, line], ALL_UNCONFIRMED)) <= room)
      last.push(line);
    else found.push([line]);
  }
  return found;
}

/** Lines in pieces of at most `most` words, each ending in "break" and the last in "over". */
export function chunks(lines: readonly RadioLine[], most: number = CHUNK_WORDS): readonly Chunk[] {
  const room = most - 1;
  const cut = lines.flatMap((line) => pieces(line, most - FRAME_WORDS)).filter(({ words }) => words !== '');
  const opening = isUnconfirmed(cut) ? ALL_UNCONFIRMED : UNCONFIRMED;
  const packed: RadioLine[][] = [];
  for (const set of sets(cut, room)) {
    const last = packed.at(-1);
    const lead = packed.length < 2 ? opening : UNCONFIRMED;
    if (last !== undefined && countWords(said([...last, ...set], lead)) <= room) last.push(...set);
    else packed.push([...set]);
  }
  return packed.map((piece, index) => ({
    text: `${said(piece, index === 0 ? opening : UNCONFIRMED)} ${index === packed.length - 1 ? OVER : BREAK}`,
    entries: [...new Set(piece.flatMap(({ entries }) => entries))],
  }));
}
