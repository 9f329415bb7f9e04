// The yes, the no or the "not sure" that opens an answer, and how bad its words make it.

import type { SeverityWord } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isSmall, marked, type Piece, tagIn } from '../../pieces/piece.ts';
import { isChatter } from '../light.ts';

export type AnswerWord = 'yes' | 'no' | 'unsure';

export interface Answered {
  readonly word: AnswerWord;
  /** the pieces that are the answer itself, with the small words before them */
  readonly heads: readonly Piece[];
  readonly severity: SeverityWord | null;
}

/** The answer that a piece is, or null. */
export const wordOf = (piece: Piece): AnswerWord | null =>
  tagIn(piece, 'talk.answer', 'answer') as AnswerWord | null;

// "No obvious": so many words may stand between the two.
const FAR = 3;

// "No, no step in the spine": the second one denies what follows it.
function deniesNext(pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  const next = pieces.slice(i + 1).find(({ role }) => role !== 'attribute' && role !== 'small');
  if (piece === undefined || next === undefined || !marked(piece, 'negation', 'before')) return false;
  const isNamed = (next.role === 'finding' && !next.weak) || next.role === 'csm' || next.role === 'history';
  return isNamed && next.from - piece.to < FAR && !marked(next, 'adj');
}

/** The answer at a clause's start ("well, yes, yeah a little"), or null. */
export function answerWord({ pieces }: Clause): Answered | null {
  const start = pieces.findIndex((piece) => wordOf(piece) !== null || !isChatter(piece));
  const first = pieces[start];
  const word = first === undefined ? null : wordOf(first);
  if (word === null) return null;
  const turned = turnedWord(pieces.slice(start));
  const counts = turned?.word ?? word;
  const from = start + (turned?.at ?? 0);
  const after = pieces.findIndex(
    (piece, i) => i > from && (wordOf(piece) !== counts || deniesNext(pieces, i)),
  );
  const heads = after < 0 ? pieces : pieces.slice(0, after);
  const severities = heads.map((piece) => tagIn(piece, 'talk.answer', 'severity') as SeverityWord | null);
  return { word: counts, heads, severity: severities.find((one) => one !== null) ?? null };
}

interface Turned {
  readonly word: AnswerWord;
  /** where the word that counts stands */
  readonly at: number;
}

// "Yeah, no, it's fine" is a no. "No, yeah, there is" is a yes where it says so itself; a bare "yes" only takes back the "no".
function turnedWord(pieces: readonly Piece[]): Turned | null {
  const [first] = pieces;
  const before = first === undefined ? null : wordOf(first);
  const at = pieces.findIndex((piece) => wordOf(piece) !== before);
  const [turn, ...behind] = pieces.slice(at);
  if (turn === undefined || at < 1) return null;
  // "Yes and no."
  const [last, ...more] = behind;
  const isBoth = isSmall(turn, 'join') && last !== undefined && more.length === 0;
  if (isBoth && /^(yes|no)$/.test(wordOf(last) ?? '') && wordOf(last) !== before)
    return { word: 'unsure', at: at + 1 };
  const word = wordOf(turn);
  if (word === null || deniesNext(pieces, at)) return null;
  // "Yeah, nothing too bad."
  if (marked(turn, 'nothing') && behind.length > 0) return null;
  if (before === 'yes' && word === 'no') return { word, at };
  const end = behind.findIndex((piece) => wordOf(piece) !== 'yes');
  const run = [turn, ...(end < 0 ? behind : behind.slice(0, end))];
  const says = run.some((piece) => marked(piece, 'explicit') || marked(piece, 'severity'));
  // "No, yes there": another spot.
  const isThere = run.some((piece) => marked(piece, 'pointed') || marked(piece, 'spot'));
  return before === 'no' && word === 'yes' && says && !isThere ? { word, at } : null;
}
