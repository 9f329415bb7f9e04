// A "no" that the same breath takes back settles nothing: "no, no, ow, yes there", "no. no. a bit there".

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isChatter } from '../light.ts';
import type { Talk } from '../talk.ts';
import { wordOf } from './answer-word.ts';

/** The pieces from the "no" of a clause up to the words that take it back; null where it stands. `rest` is what follows it. */
export function takenBack(talk: Talk, clause: Clause, rest: readonly Piece[]): readonly Piece[] | null {
  if (turnsToYes(rest)) return clause.pieces;
  if (!rest.every((piece) => isChatter(piece) || wordOf(piece) === 'no')) return null;
  const after = talk.clauses.slice(talk.clauses.indexOf(clause) + 1);
  const turn = after.findIndex(({ pieces, mood }) => mood === 'question' || !pieces.every(isNo));
  const said = after[turn];
  if (said === undefined || said.mood === 'question' || !isYes(said.pieces)) return null;
  return [clause, ...after.slice(0, turn + 1)].flatMap(({ pieces }) => pieces);
}

const isNo = (piece: Piece): boolean => isChatter(piece) || wordOf(piece) === 'no';

// "A bit there", "yes", "ow, yeah": and nothing that says of itself what there is.
const isYes = (pieces: readonly Piece[]): boolean =>
  pieces.some((piece) => wordOf(piece) === 'yes' && !isChatter(piece)) &&
  pieces.every((piece) => isChatter(piece) || wordOf(piece) === 'yes');

// The last word takes the first back, and where it hurt nobody said.
function turnsToYes(rest: readonly Piece[]): boolean {
  const turn = rest.findIndex(
    (piece) => piece.role === 'site' || piece.role === 'side' || (wordOf(piece) === 'yes' && !piece.weak),
  );
  // "No, here no, here yes": it ends on a yes.
  const last = rest.findLast((piece) => !isChatter(piece) || wordOf(piece) !== null);
  if (last !== undefined && last.role === 'answer' && wordOf(last) === 'yes' && rest.every(isAnswerOrChatter))
    return true;
  const role = rest[turn]?.role;
  // "No, a bit stiff" says of itself what there is a bit of.
  return role === 'answer' || (role === 'attribute' && rest.slice(turn + 1).every(isYesOrChatter));
}

const isAnswerOrChatter = (piece: Piece): boolean => isChatter(piece) || wordOf(piece) !== null;

const isYesOrChatter = (piece: Piece): boolean => isChatter(piece) || wordOf(piece) === 'yes';
