// Where a strike ends: at its own words, or after the thing that it names.

import { isSmall, marked, type Piece } from '../pieces/piece.ts';
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
export function isWholeStrike(draft: Draft, pieces: readonly Piece[], i: number, pause: Pause): boolean {
  const [[first], next] = [draft.pieces, pieces[i]];
  if (first === undefined || next === undefined || draft.mood !== 'strike') return false;
  if (!marked(first, 'strike', 'last')) return false;
  const names = marked(first, 'strike', 'named') && pause === '' && isNamed(next);
  return !names || (draft.pieces.length === 1 && isSaidOfPlace(pieces.slice(i)));
}

// "Scratch that left leg is numb": a place that something is said of names nothing to strike.
function isSaidOfPlace(pieces: readonly Piece[]): boolean {
  const end = pieces.findIndex(({ role }) => role !== 'site' && role !== 'side' && role !== 'part');
  const said = pieces[end];
  return end > 0 && said !== undefined && isSmall(said, 'link') && pieces.length > end + 1;
}
