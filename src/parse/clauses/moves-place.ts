// "Graze on the left thigh, no, left knee": a "no" between pauses with nothing behind it but another place.

import { marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';

const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part']);
const BESIDE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'unknown', 'negation']);

/** How many of these pieces name places alone, up to a pause or the end; 0 where none do, or where something else is said behind. */
export function placesAlone(pieces: readonly Piece[], tokens: readonly Token[]): number {
  const end = pieces.findIndex(({ role }) => !PLACES.has(role));
  const to = end < 0 ? pieces.length : end;
  const last = pieces[to - 1];
  const named = pieces.slice(0, to);
  if (last === undefined || !named.some(({ role }) => role === 'site')) return 0;
  const rest = pieces.slice(to);
  return isPaused(tokens, last) || rest.length === 0
    ? rest.every(({ role }) => BESIDE.has(role))
      ? to
      : 0
    : 0;
}

/** True for a "no" between a pause and the next, however the grammar takes it. */
export const isNoAlone = (piece: Piece, tokens: readonly Token[]): boolean =>
  piece.to - piece.from === 1 && tokens[piece.from]?.word === 'no' && isPaused(tokens, piece);

/** True where piece `i` is a "no" that moves what the pieces before it found to the place that follows. */
export function movesPlace(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  said: readonly Piece[],
): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (before === undefined || piece === undefined || !isNoAlone(piece, tokens)) return false;
  if (!isPaused(tokens, before)) return false;
  // "Pain in the left thigh, no, left knee, no": answers of a list, each behind its place.
  const isFound = said.some(({ role }) => role === 'finding') && said.some(({ role }) => role === 'site');
  const isDenied = said.some((one) => marked(one, 'negation') || marked(one, 'plain'));
  return isFound && !isDenied && placesAlone(pieces.slice(i + 1), tokens) > 0;
}
