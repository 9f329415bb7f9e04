// One written word becomes the plain lower-case words that the grammar knows, the same way for talk and for grammar.

// Maps, since a word such as "constructor" must find nothing.
const SYMBOLS = new Map(
  Object.entries({
    '%': 'percent',
    '°': 'degrees',
    '&': 'and',
    '+': 'plus',
    '×': 'x',
    '@': 'at',
    '<': 'less than',
    '≤': 'less than',
    '>': 'more than',
    '≥': 'more than',
    '~': 'about',
    '½': 'half',
    '¼': 'quarter',
  }),
);

const FRACTIONS = new Map(
  Object.entries({
    '1/2': 'half',
    '1/4': 'quarter',
    '3/4': 'three quarters',
  }),
);

// A figure keeps its decimal point or its colon; letters and digits part company ("c5", "4mm"); all else is a symbol.
const PIECE = /\d+(?:[.:]\d+)*|[\p{L}\p{M}]+(?:['’][\p{L}\p{M}]+)*|\/|[%°&+×@<≤>≥~½¼]/gu;
// Most words are this plain; the rest of the reading is not needed for them.
const PLAIN = /^[a-z]+$/;
const ENDS_IN_S = /['’]s$/;

/** A piece of a written word: the words it stands for and where it lies (offsets into that written word). */
export interface WordPiece {
  readonly words: readonly string[];
  readonly from: number;
  readonly to: number;
}

/** "4mm" gives 4 and mm, "120/80" gives 120, over and 80, "patient's" gives patient; a word of mere signs gives none. */
export function splitWord(written: string): readonly WordPiece[] {
  if (PLAIN.test(written)) return [{ words: [written], from: 0, to: written.length }];
  const text = written.toLowerCase().replace(/(\d),(?=\d{3}\b)/g, '$1');
  // Dropping the thousands comma shifts offsets by one; the whole word is then the span, which is all a reader needs.
  const exact = text.length === written.length;
  const fraction = FRACTIONS.get(text);
  if (fraction !== undefined) return [{ words: fraction.split(' '), from: 0, to: written.length }];
  const pieces: WordPiece[] = [];
  for (const match of text.matchAll(PIECE)) {
    const words = wordsOf(match[0], text, match.index);
    const span = exact ? [match.index, match.index + match[0].length] : [0, written.length];
    if (words.length > 0) pieces.push({ words, from: span[0] ?? 0, to: span[1] ?? 0 });
  }
  return pieces;
}

function wordsOf(piece: string, text: string, at: number): readonly string[] {
  if (piece === '/') {
    const between = /\d/.test(text[at - 1] ?? '') && /\d/.test(text[at + 1] ?? '');
    return between ? ['over'] : [];
  }
  const symbol = SYMBOLS.get(piece);
  if (symbol !== undefined) return symbol.split(' ');
  return [piece.replace(ENDS_IN_S, '').replace(/['’]/g, '')];
}
