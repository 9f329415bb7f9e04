// "There. About here, between the shoulder blades": where it is that a press was answered at.

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isLight } from '../light.ts';
import { answerWord } from '../questions/answer-word.ts';
import type { Talk } from '../talk.ts';
import { isHeard } from '../unheard-denials.ts';

/** The pieces of a clause that only points at a place, after an answer of the same breath; a look alone would lose them. */
export function pointedPlace(talk: Talk, { pieces, mood }: Clause): readonly Piece[] {
  const [first] = pieces;
  if (mood !== 'statement' || first === undefined || !pieces.some(({ role }) => role === 'site')) return [];
  const isPlain = pieces.every(
    (piece) => piece.role === 'site' || piece.role === 'part' || isLight(piece) || piece.weak,
  );
  const points = talk.tokens.slice(first.from, pieces.at(-1)?.to).some(({ word }) => POINTS.test(word));
  const before = talk.clauses.filter((one) => (one.pieces.at(-1)?.to ?? 0) <= first.from);
  const isAnswered = before.some((one) => one.mood === 'answer' || answerWord(one) !== null);
  return isPlain && points && isAnswered && !pieces.some((piece) => isHeard(talk, piece)) ? pieces : [];
}

const POINTS = /^(here|there|that|this)$/;
