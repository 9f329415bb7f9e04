// "The pulse should be ninety", "I got the sats wrong, it's ninety five": what is put right was named before the words that do so.

import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { reread } from '../../pieces/reread.ts';
import { saidIn } from '../../token.ts';
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
  const sign = open.findLast((piece) => isHeading(piece) || isPulseNamed(talk, piece));
  if (sign !== undefined) return isHeading(sign) ? sign : asHeading(sign);
  return open.some(({ role }) => OTHER.has(role)) && tells(talk, clause.pieces) ? 'other' : null;
}

const isHeading = (piece: Piece): boolean => piece.role === 'vital' && marked(piece, 'heading');

// "That pulse, make that ninety": what has a figure is no limb's pulse.
const isPulseNamed = ({ tokens }: Talk, piece: Piece): boolean =>
  piece.role === 'csm' &&
  marked(piece, 'aspect', 'circulation') &&
  /^(that|this|his|her|their) (pulse|heart rate)$/.test(saidIn(tokens, piece.from, piece.to));

const asHeading = (piece: Piece): Piece =>
  reread(piece, 'vital', 'vitals.pulse', { vital: 'pulse', heading: '' });

// "X should be …", "X was wrong": X is what is meant.
const tells = ({ tokens }: Talk, [first]: readonly Piece[]): boolean =>
  /^(should|wrong)$/.test(tokens[first?.from ?? -1]?.word ?? '');
