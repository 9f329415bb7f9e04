// "What's his pulse?" "Eighty eight and regular.": a figure that answers a question after a vital sign.

import type { Clause } from '../../clauses/clause.ts';
import { spanned } from '../../span.ts';
import { isLight } from '../light.ts';
import { bear, type Talk } from '../talk.ts';
import { isLikeWord, stateFigureAnswer } from '../vitals/figure-answer.ts';

/** States the figure that answers the open question after a vital sign; false where the clause gives none. */
export function answerWithFigure(talk: Talk, clause: Clause): boolean {
  const { asked } = talk.context;
  if (asked?.about !== 'vital' || isOfThen(talk, clause)) return false;
  const [only] = clause.pieces;
  // "And the heart rate?" "One eighteen.": so few words may be a time of day.
  const isTime = only?.role === 'time' && clause.pieces.length === 1;
  const isBare =
    isTime ||
    clause.pieces.every(
      (piece) => piece.role === 'figure' || isLight(piece) || isLikeWord(talk.tokens, piece),
    );
  if ((asked.named === true && !isBare) || !stateFigureAnswer(talk, clause.pieces, asked.vital)) return false;
  bear(talk, { asked: null });
  return true;
}

// "It was eight, now it's five": what it was does not answer where what it is follows.
function isOfThen({ tokens }: Talk, { pieces }: Clause): boolean {
  const { from, to } = spanned(pieces);
  const isWas = tokens.slice(from, to).some(({ word }) => /^(was|were)$/.test(word));
  return isWas && tokens.slice(to).some(({ word }) => word === 'now');
}
