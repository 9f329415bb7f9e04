// Where a strike ends: at its own words, or after the thing that it names.

import { marked, type Piece } from '../pieces/piece.ts';
import type { Pause } from '../token.ts';
import type { Draft } from './draft.ts';

// What a strike can name: a thing, and no new reading ("scratch that, pulse ninety").
const isNamed = (piece: Piece): boolean => {
  const { role } = piece;
  if (role === 'finding' || role === 'site' || role === 'side' || role === 'csm') return true;
  if (role === 'vital') return marked(piece, 'heading');
  return (role === 'care' || role === 'history') && marked(piece, 'noun');
};

/** "Strike that" is whole by itself; what follows it is said anew, unless it names what to strike ("scratch that bruise"). */
export function isWholeStrike(draft: Draft, next: Piece, pause: Pause): boolean {
  const [first] = draft.pieces;
  if (first === undefined || draft.mood !== 'strike' || !marked(first, 'strike', 'last')) return false;
  return !(marked(first, 'strike', 'named') && pause === '' && isNamed(next));
}
