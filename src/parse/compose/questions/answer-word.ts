// The yes, the no or the "not sure" that opens an answer, and how bad its words make it.

import type { SeverityWord } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { marked, type Piece, tagIn } from '../../pieces/piece.ts';
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
  const after = pieces.findIndex(
    (piece, i) => i > start && (wordOf(piece) !== word || deniesNext(pieces, i)),
  );
  const heads = after < 0 ? pieces : pieces.slice(0, after);
  const severities = heads.map((piece) => tagIn(piece, 'talk.answer', 'severity') as SeverityWord | null);
  return { word, heads, severity: severities.find((one) => one !== null) ?? null };
}
