// A radio report is cut where a listener can answer: no piece is longer than the stated number of words, it is cut
// between lines wherever a line fits a piece, and each piece says for itself what in it is unconfirmed.

import { perLine, type RadioLine } from './line.ts';

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

// A report is tried at many lengths, and each line is asked again for each of them.
const wordsIn = perLine(({ words }) => countWords(words));
const evenly = perLine((line) => ({ ...line, words: wordsOf(line.words).join(' ') }));

/** The last place at or before `limit` where a comma, colon or full stop ends a word; else `limit` itself. */
function cutAt(words: readonly string[], limit: number): number {
  for (let end = limit; end > limit / 2; end -= 1) if (/[,.:]$/.test(words[end - 1] ?? '')) return end;
  return limit;
}

/** A line that is too long for a piece in several: its statements one by one, or else cut, with the trust of the whole. */
function pieces(line: RadioLine, room: number): readonly RadioLine[] {
  if (wordsIn(line) <= room) return [evenly(line)];
  if (line.parts !== undefined) return line.parts.flatMap((part) => pieces(part, room));
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

/** How many words the lines are said in, without the word that ends the piece. */
function spoken(lines: readonly RadioLine[], opening: string): number {
  const whole = isUnconfirmed(lines);
  const marked = (line: RadioLine): number =>
    wordsIn(line) + (whole ? 0 : countWords(MARKS[line.trust].slice(1)));
  return lines.reduce((sum, line) => sum + marked(line), whole ? countWords(opening) : 0);
}

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
    if (joins && last !== undefined && spoken([...last, line], ALL_UNCONFIRMED) <= room) last.push(line);
    else found.push([line]);
  }
  return found;
}

/** Lines in pieces, each with what opens it where none of it is confirmed. */
function packed(
  lines: readonly RadioLine[],
  most: number,
): readonly { readonly piece: RadioLine[]; readonly opening: string }[] {
  const room = most - 1;
  const cut = lines.flatMap((line) => pieces(line, most - FRAME_WORDS)).filter(({ words }) => words !== '');
  const opening = isUnconfirmed(cut) ? ALL_UNCONFIRMED : UNCONFIRMED;
  const filled: RadioLine[][] = [];
  for (const set of sets(cut, room)) {
    const last = filled.at(-1);
    const lead = filled.length < 2 ? opening : UNCONFIRMED;
    if (last !== undefined && spoken([...last, ...set], lead) <= room) last.push(...set);
    else filled.push([...set]);
  }
  return filled.map((piece, index) => ({ piece, opening: index === 0 ? opening : UNCONFIRMED }));
}

/** Lines in pieces of at most `most` words, each ending in "break" and the last in "over". */
export const chunks = (lines: readonly RadioLine[], most: number = CHUNK_WORDS): readonly Chunk[] =>
  packed(lines, most).map(({ piece, opening }, index, all) => ({
    text: `${said(piece, opening)} ${index === all.length - 1 ? OVER : BREAK}`,
    entries: [...new Set(piece.flatMap(({ entries }) => entries))],
  }));

/** How many words these lines are in pieces, without writing them out. */
export const wordsInChunks = (lines: readonly RadioLine[]): number =>
  packed(lines, CHUNK_WORDS).reduce((sum, { piece, opening }) => sum + spoken(piece, opening) + 1, 0);
