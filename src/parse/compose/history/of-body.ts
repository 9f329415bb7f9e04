// Whether a bare weight is the patient's: "male, eighty kilos", and not "pulled about ten kilos" or "a pack of twenty kilos".

import { isSmall, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';

const OTHER: ReadonlySet<Role> = new Set(['care', 'finding', 'csm', 'vital']);

/** True where nothing beside the weight at `i` says that something else weighs it. */
export function isOfBody(tokens: readonly Token[], pieces: readonly Piece[], i: number): boolean {
  const [before, piece, after] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || pieces.slice(0, i).some(({ role }) => OTHER.has(role))) return false;
  const subject = pieces[i - 2];
  // "The litter is about thirty kilos".
  const isOther = isLink(before) && subject !== undefined && !isSmall(subject, 'person');
  const opens = before === undefined || isPaused(tokens, before) || (isLead(before) && !isOther);
  const closes = after === undefined || isPaused(tokens, piece) || isLead(after) || isSmall(after, 'or');
  return opens && closes;
}

const isLink = (piece: Piece | undefined): boolean => piece !== undefined && isSmall(piece, 'link');

const isLead = (piece: Piece): boolean =>
  piece.role === 'history' ||
  piece.role === 'talk' ||
  isSmall(piece, 'join') ||
  isSmall(piece, 'person') ||
  isLink(piece);
