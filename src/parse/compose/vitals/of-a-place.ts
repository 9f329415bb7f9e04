// Signs that are said of a place on the body, and so are no sign of the whole patient.

import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { toEnd } from '../csm/limb-ends.ts';
import type { Talk } from '../talk.ts';

/**
 * True for a sign of how awake somebody is that is said of less: "no response in the legs" is of the legs, and "no response to
 * my questions" is none to pain before that was tried.
 */
export function isNoResponseOfAll(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces.slice(i + 1).find((one) => !isSmall(one, 'article'))];
  if (piece === undefined || !marked(piece, 'vital', 'responsiveness')) return false;
  // "Naloxone four hundred, no response": to what was given.
  const isEffect = pieces.slice(0, i).at(-1)?.role === 'care' && tokens[piece.to - 1]?.word === 'response';
  if (isEffect) return true;
  const isToSomething = tokens[piece.to]?.word === 'to' && !isPaused(tokens, piece);
  if (isToSomething && marked(piece, 'avpu', 'U')) return true;
  return next !== undefined && isSmall(next, 'preposition') && leadsToSite(pieces, next);
}

const leadsToSite = (pieces: readonly Piece[], from: Piece): boolean =>
  pieces.slice(pieces.indexOf(from) + 1).find(({ role }) => role !== 'small' && role !== 'side')?.role ===
  'site';

/** True for "left foot pale and cool": said of the foot, and not of the skin as a vital sign. */
export const isOfSite = (piece: Piece, pieces: readonly Piece[]): boolean =>
  marked(piece, 'bare') &&
  marked(piece, 'vital', 'skin') &&
  pieces.some(({ role, weak }) => role === 'site' && !weak);

/** True for the skin of "right foot: pink, warm, pulse present": the limb was named just before. */
export function isOfLimbLookedAt({ clauses, context }: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'bare') || !marked(piece, 'vital', 'skin')) return false;
  const before = clauses.findLast((one) => one.pieces.every(({ to }) => to <= piece.from));
  const isLook =
    before?.pause === 'dash' &&
    before.pieces.every(({ role }) => role === 'site' || role === 'side' || role === 'small');
  return isLook && context.sites.some((ref) => toEnd(ref, null).length > 0);
}
