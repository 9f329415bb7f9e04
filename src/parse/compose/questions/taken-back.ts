// A "no" that the same breath takes back settles nothing: "no, no, ow, yes there", "no. no. a bit there".

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isChatter } from '../light.ts';
import type { Talk } from '../talk.ts';
import { type AnswerWord, wordOf } from './answer-word.ts';

/** The pieces from the "no" of a clause up to the words that take it back; null where it stands. `rest` is what follows it. */
export function takenBack(talk: Talk, clause: Clause, rest: readonly Piece[]): readonly Piece[] | null {
  if (turnsToYes(rest)) return clause.pieces;
  if (!rest.every(isOnly('no'))) return null;
  const after = talk.clauses.slice(talk.clauses.indexOf(clause) + 1);
  const turn = after.findIndex(({ pieces, mood }) => mood === 'question' || !pieces.every(isOnly('no')));
  const said = after[turn];
  // "A bit there", "ow, yeah": a yes, and nothing that says of itself what there is.
  if (said === undefined || said.mood === 'question' || !said.pieces.every(isOnly('yes'))) return null;
  return [clause, ...after.slice(0, turn + 1)].flatMap(({ pieces }) => pieces);
}

/** True for chatter and these answers. */
const isOnly =
  (...words: readonly AnswerWord[]) =>
  (piece: Piece): boolean => {
    const word = wordOf(piece);
    return isChatter(piece) || (word !== null && words.includes(word));
  };

// The last word takes the first back, and where it hurt nobody said.
function turnsToYes(rest: readonly Piece[]): boolean {
  // "No, here no, here yes": it ends on a yes.
  const last = rest.findLast((piece) => !isChatter(piece));
  const ends = last?.role === 'answer' && wordOf(last) === 'yes';
  if (ends && rest.every(isOnly('yes', 'no', 'unsure'))) return true;
  const turn = rest.findIndex(
    (piece) => piece.role === 'site' || piece.role === 'side' || (wordOf(piece) === 'yes' && !piece.weak),
  );
  const role = rest[turn]?.role;
  // "No, a bit stiff" says of itself what there is a bit of.
  return role === 'answer' || (role === 'attribute' && rest.slice(turn + 1).every(isOnly('yes')));
}
