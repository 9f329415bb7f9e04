// What a word says of the other side: there, weak, absent … or that what was said of the first is not so of it.

import { figureIn, marked, type Piece, tagIn } from '../../pieces/piece.ts';
import type { State } from '../../states.ts';

/** The state that a piece may name, or null. */
export function stateOf(piece: Piece): State | null {
  const said = tagIn(piece, 'states', 'state') as State | null;
  if (said !== null) return said;
  // "Hurts on the right, no, on the left" takes back a side.
  if (marked(piece, 'plain')) return null;
  const kind = tagIn(piece, 'negation', 'negation');
  if (kind === 'before') return 'not';
  return kind === 'after' ? 'absent' : null;
}

/** The number that a piece is, for "four seconds on the left, right is two". */
export const figureOf = (piece: Piece): number | null => (piece.role === 'figure' ? figureIn(piece) : null);
