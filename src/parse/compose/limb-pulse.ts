// A pulse that is said of a limb is a check of that limb and no vital sign.

import { isSite } from '../../terms/index.ts';
import { marked, type Piece, readingOf, tagIn } from '../pieces/piece.ts';
import { endOf } from './csm/limb-ends.ts';

/** The pieces with a pulse that is said of a limb read as a check of that limb. */
export const withLimbPulse = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece) => (piece.role === 'vital' && isPulseOfLimb(piece, pieces) ? asCsm(piece) : piece));

/**
 * "A pulse in the left foot": without a rate, a pulse at a limb is a check of that limb. `before`: the pieces of the same
 * utterance that were read already, of which the last may be the limb ("left hand: pulse present").
 */
export const isPulseOfLimb = (
  piece: Piece,
  pieces: readonly Piece[],
  before: () => readonly Piece[] = () => [],
): boolean =>
  (marked(piece, 'late') || marked(piece, 'spoken-site')) &&
  !pieces.some(({ role }) => role === 'figure') &&
  (pieces.some(isLimb) ||
    before().slice(-1).some(isLimb) ||
    // "Feet: left cold. Right warm with a pulse."
    (pieces.some(({ role }) => role === 'csm') && before().some(isLimb)));

const isLimb = (one: Piece): boolean => one.role === 'site' && !one.weak && isOfLimb(one);

const isOfLimb = (piece: Piece): boolean =>
  (tagIn(piece, 'sites', 'site') ?? '').split('+').some((site) => isSite(site) && endOf(site) !== null);

/** The piece read as a check of a limb; one that was named just before is as good as one in the same clause. */
export const asCsm = (piece: Piece): Piece => ({
  ...piece,
  role: readingOf(piece, 'csm') === null ? 'unknown' : 'csm',
  islands: piece.islands.map((island) => ({
    ...island,
    tags: island.tags.filter(({ key }) => key !== 'spoken-site'),
  })),
});
