// "The pulse should be ninety", "I got the sats wrong, it's ninety five": what is put right was named before the words that do so.

import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPlaced, type Talk } from '../talk.ts';

const OTHER: ReadonlySet<Role> = new Set(['unknown', 'site', 'finding', 'csm', 'care', 'history']);

/**
 * The sign that the clause before names and gives no figure; `other` where it names something else that is not stated yet, so
 * that the figure is not of what was said last; null where it names nothing.
 */
export function signMeant(talk: Talk, pieces: readonly Piece[]): Piece | 'other' | null {
  const at = talk.clauses.findIndex((clause) => clause.pieces.some((piece) => pieces.includes(piece)));
  const [before, clause] = [talk.clauses[at - 1], talk.clauses[at]];
  if (before === undefined || before.sentence !== clause?.sentence || before.mood === 'question') return null;
  const open = before.pieces.filter((piece) => !isPlaced(talk, piece));
  const sign = open.findLast((piece) => piece.role === 'vital' && marked(piece, 'heading'));
  if (sign !== undefined) return sign;
  return open.some(({ role }) => OTHER.has(role)) && tells(talk, clause.pieces) ? 'other' : null;
}

// "X should be …", "X was wrong": X is what is meant.
const tells = ({ tokens }: Talk, [first]: readonly Piece[]): boolean =>
  /^(should|wrong)$/.test(tokens[first?.from ?? -1]?.word ?? '');
