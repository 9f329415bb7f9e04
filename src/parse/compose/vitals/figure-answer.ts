// A figure that answers a question after a vital sign: "what's his pulse?" "Eighty eight and regular."

import type { Vital, VitalStatement } from '../../../terms/index.ts';
import { countsThing } from '../../pieces/counts-thing.ts';
import { figureIn, type Piece } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import type { Talk } from '../talk.ts';
import { settle } from './settle.ts';
import { fromFigure } from './sign-named.ts';

/** States a figure that answers a question after a vital sign; false where the pieces hold none, or more than one thing. */
export function stateFigureAnswer(talk: Talk, pieces: readonly Piece[], vital: Vital): boolean {
  const [first] = pieces;
  // "What's her pulse?" "One oh two.": so few words may be a time of day, and answer no question after a pulse so.
  const isTime = first?.role === 'time' && figureIn(first) !== null;
  // "I raised four sons, so maybe five": four is no answer.
  const own = pieces.filter((piece, i) => piece.role === 'figure' && !countsThing(pieces, i, talk.tokens));
  const [figure, ...others] = isTime ? [first] : own;
  // "E three, V T, M five" is no figure of three.
  if (figure === undefined || others.length > 0) return false;
  const isOfElse = ({ role }: Piece, i: number): boolean =>
    role === 'vital' || (role === 'site' && !countsThing(pieces, i - 1, talk.tokens));
  if (pieces.some(isOfElse)) return false;
  const read = fromFigure(vital, figure);
  if (read === null) return false;
  const from = pieces[0]?.from ?? figure.from;
  const to = pieces.at(-1)?.to ?? figure.to;
  const like = pieces.flatMap((piece) =>
    isLikeWord(talk.tokens, piece) ? [talk.tokens[piece.from]?.word ?? ''] : [],
  );
  const { statement } = read;
  const isRate = statement.vital === 'pulse' || statement.vital === 'respirations';
  const said: VitalStatement =
    isRate && like.length > 0 ? { ...statement, value: { ...statement.value, quality: like } } : statement;
  settle(talk, { ...read, statement: said, known: { ...read.known, vital: 'carried' }, from, to });
  return true;
}

/** True for a word that says what a pulse or a breathing is like: "eighty eight and regular". */
export const isLikeWord = (tokens: readonly Token[], { role, from, to }: Piece): boolean =>
  role === 'unknown' &&
  to - from === 1 &&
  /^(regular|irregular|strong|weak|steady|thready|bounding|shallow|deep|even|laboured|labored)$/.test(
    tokens[from]?.word ?? '',
  );
