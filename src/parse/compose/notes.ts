// Keeps as a note every word of substance that found no place, so that nothing said is lost.

import type { Clause } from '../clause.ts';
import { hasTag } from '../islands/island.ts';
import type { Piece, Role } from '../pieces/piece.ts';
import { state, type Talk, textOf } from './talk.ts';

// These say something by themselves; a clause that leaves one unplaced is kept in words.
const SUBSTANCE: ReadonlySet<Role> = new Set([
  'unknown',
  'vital',
  'history',
  'care',
  'csm',
  'limbs',
  'finding',
  'site',
  'figure',
  'attribute',
  'time',
  'same',
]);

const hasPlace = (talk: Talk, piece: Piece): boolean => {
  for (let at = piece.from; at < piece.to; at++) if (talk.placed[at] !== true) return false;
  return true;
};

const isOwed = (talk: Talk, piece: Piece): boolean => {
  if (hasPlace(talk, piece)) return false;
  if (piece.role === 'unknown') return isWord(talk, piece);
  if (piece.role === 'finding' && piece.weak)
    return piece.islands[0] !== undefined && !hasTag(piece.islands[0], 'soft');
  return SUBSTANCE.has(piece.role) && !piece.weak;
};

// "Right lower and left lower, same": places and nothing else, which no site took up.
function isOwedPlace(talk: Talk, clause: Clause, piece: Piece): boolean {
  if (clause.mood !== 'statement' || !PLACES.has(piece.role) || hasPlace(talk, piece)) return false;
  if (!piece.weak) return true;
  return clause.pieces.filter(({ role }) => PLACES.has(role)).length > 1;
}

const PLACES: ReadonlySet<Role> = new Set(['side', 'part', 'same']);

const isWord = (talk: Talk, piece: Piece): boolean =>
  /[\p{L}\p{N}]/u.test(talk.tokens[piece.from]?.word ?? '');

/** Notes what the clauses left over. A clause that gave nothing is kept whole; of another, the stretch that was left. */
export function noteLeftovers(talk: Talk): void {
  for (const clause of talk.clauses) {
    const owed = clause.pieces.filter((piece) => isOwed(talk, piece) || isOwedPlace(talk, clause, piece));
    if (owed.length === 0 || !keeps(clause, owed)) continue;
    const gave = clause.pieces.some((piece) => !owed.includes(piece) && isPlacedSubstance(talk, piece));
    const from = gave ? (owed[0]?.from ?? 0) : firstOf(clause);
    const to = gave ? (owed.at(-1)?.to ?? 0) : (clause.pieces.at(-1)?.to ?? 0);
    state(talk, [{ statement: { kind: 'note', text: textOf(talk, from, to) }, from, to }]);
  }
}

const isPlacedSubstance = (talk: Talk, piece: Piece): boolean =>
  SUBSTANCE.has(piece.role) && hasPlace(talk, piece);

const firstOf = (clause: Clause): number =>
  (clause.pieces.find((piece) => piece.role !== 'talk') ?? clause.pieces[0])?.from ?? 0;

// An instruction is kept only where it holds a reading or several words that nobody knows: then it may be none.
function keeps(clause: Clause, owed: readonly Piece[]): boolean {
  if (clause.mood !== 'instruction') return true;
  const unknown = owed.filter((piece) => piece.role === 'unknown').length;
  return unknown > 1 || owed.some((piece) => piece.role === 'vital' && piece.islands[0]?.slots.length !== 0);
}
