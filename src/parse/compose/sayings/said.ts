// What single pieces say, for telling whether a part of a breath is whole.

import { isLikely, likelyTag, marked, type Piece, type Role, readingOf } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';

export const has = (pieces: readonly Piece[], role: Role): boolean =>
  pieces.some((piece) => piece.role === role);

/** "No", "isn't", "don't": what follows is not there. */
export const denies = (piece: Piece): boolean =>
  piece.role !== 'finding' && marked(piece, 'negation', 'before');

const figures = ({ islands }: Piece): number => islands[0]?.slots.length ?? 0;

/** A check of a limb; "pulse" alone may be one. */
export const isCheck = (piece: Piece): boolean =>
  piece.role === 'csm' ||
  (piece.role === 'vital' && figures(piece) === 0 && readingOf(piece, 'csm') !== null);

/** What is stated of a place. */
export const isStated = (piece: Piece): boolean =>
  piece.role === 'finding' || piece.role === 'care' || isCheck(piece);

/** A vital sign with its value. */
export const isReading = (piece: Piece): boolean => piece.role === 'vital' && figures(piece) > 0;

/** "Pain is six out of ten". */
export const isPainScore = (piece: Piece): boolean =>
  isReading(piece) && piece.islands[0]?.rule === 'vitals.pain-score';

/** "Trachea's in the middle", "grip's strong", "collar's on": the words themselves say where. */
export const isOfItself = (piece: Piece): boolean =>
  (piece.role === 'finding' && isLikely(piece, 'at')) ||
  (piece.role === 'csm' && isLikely(piece, 'end') && isLikely(piece, 'present')) ||
  (piece.role === 'care' && PLACELESS.has(likelyTag(piece, 'care')));

/** "Splinted it", "put it back in": of the place that was spoken of. */
export const namesIt = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  tokens.slice(from, to).some(({ word }) => word === 'it' || word === 'them');

const PLACELESS: ReadonlySet<string | null> = new Set([
  'collar',
  'oxygen',
  'airway-opened',
  'recovery-position',
  'fluids',
  'food',
  'medication',
  'cpr',
]);
