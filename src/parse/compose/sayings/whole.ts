// Whether the part before says something whole: of what, and how it is.

import { isLikely, marked, type Piece, type Role } from '../../pieces/piece.ts';
import type { Opening } from './opens.ts';
import { denies, has, isCheck, isOfItself, isReading, isStated } from './said.ts';

/** True where these pieces need nothing of what follows; `isParted` where a pause or an "and" stands between. */
export function saysWhole(
  left: readonly Piece[],
  next: readonly Piece[],
  isParted: boolean,
  opening: Opening,
): boolean {
  if (has(left, 'history') || left.some(isReading) || left.some(isOfItself)) return true;
  // "Splint on, sensation intact" has its place from before; heard without a pause it may still come.
  if (has(left, 'care') && isParted) return true;
  if (!has(left, 'site')) return false;
  if (has(left, 'care') || has(left, 'finding') || left.some((piece) => saysHow(piece, left))) return true;
  // "Looking at the ear and the belly's rigid", "not sure about the knee, the back isn't tender".
  if (isParted && has(left, 'intention')) return true;
  if (isParted && opening === 'place' && left.some(isOfOwn)) return true;
  // "Pulse in the left foot" may share with another check what is said behind it.
  const first = next.find(isStated);
  return left.some(isCheck) && (first === undefined || !isCheck(first) || opening === 'itself');
}

// A check that says how it was.
const saysHow = (piece: Piece, part: readonly Piece[]): boolean =>
  piece.role === 'csm' &&
  (marked(piece, 'present') || marked(piece, 'warmth') || has(part, 'state') || part.some(denies));

// More than a place that what follows may be said of as well.
const isOfOwn = (piece: Piece): boolean =>
  (OWN.has(piece.role) || marked(piece, 'negation', 'possible-before')) && !marked(piece, 'except');

const OWN: ReadonlySet<Role> = new Set(['answer', 'unknown', 'mood']);

const SITE: Role = 'site';

/** "Swelling of the left knee ankle and foot are fine": the places before the "and" are of one list with what follows it. */
export const endsInList = (left: readonly Piece[]): boolean =>
  left.at(-1)?.role === SITE && left.at(-2)?.role === SITE;

/** True where something is found that a score may be of. */
export const hurts = (left: readonly Piece[]): boolean =>
  !left.some(denies) &&
  left.some((piece) => piece.role === 'finding' && !isLikely(piece, 'present', 'false'));
