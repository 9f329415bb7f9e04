// A state word that belongs to the limb's check beside it: "pulse in the left foot is weak", "a good pulse".

import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { stateOf } from './state.ts';

const WORDS: ReadonlySet<Role> = new Set(['finding', 'unknown', 'care', 'small']);
const PASSED: ReadonlySet<Role> = new Set(['small', 'side', 'site', 'part']);

/** The pieces with those state words recast that say how a limb's check was; no finding is made of them then. */
export function withStates(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const states = new Set(
    pieces.flatMap((piece, i) => (isOpen(piece) ? [before(pieces, i), after(pieces, tokens, i)] : [])),
  );
  return pieces.map((piece) => (states.has(piece) ? { ...piece, role: 'state' } : piece));
}

// A check whose own words do not say yet how it was.
const isOpen = (piece: Piece): boolean =>
  piece.role === 'csm' &&
  !marked(piece, 'quality') &&
  !marked(piece, 'strength') &&
  !marked(piece, 'refill') &&
  !marked(piece, 'warmth') &&
  !marked(piece, 'present', 'no');

const isWord = (piece: Piece): boolean =>
  WORDS.has(piece.role) && stateOf(piece) !== null && marked(piece, 'state');

function before(pieces: readonly Piece[], i: number): Piece | null {
  const [piece, last] = [pieces[i], pieces[i - 1]];
  return piece !== undefined && last !== undefined && marked(piece, 'late') && isWord(last) ? last : null;
}

function after(pieces: readonly Piece[], tokens: readonly Token[], i: number): Piece | null {
  for (let k = i + 1; k < pieces.length; k++) {
    const [piece, last] = [pieces[k], pieces[k - 1]];
    if (piece === undefined || last === undefined) return null;
    if (isWord(piece)) return last.role !== 'csm' || !isPaused(tokens, last) ? piece : null;
    const stops = piece.role === 'negation' && stateOf(piece) === null;
    if (!PASSED.has(piece.role) && !stops) return null;
    if (isPaused(tokens, last) && piece.role !== 'side' && piece.role !== 'site') return null;
  }
  return null;
}
