// A state word that belongs to the limb's check beside it: "pulse in the left foot is weak", "a good pulse".

import { marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused, pauseAfter } from '../../span.ts';
import type { Token } from '../../token.ts';
import { stateOf } from './state.ts';

const WORDS: ReadonlySet<Role> = new Set(['finding', 'unknown', 'care', 'small', 'asking', 'answer']);
const PASSED: ReadonlySet<Role> = new Set(['small', 'side', 'site', 'part']);

/** The pieces with those state words recast that say how a limb's check was; no finding is made of them then. */
export function withStates(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const states = new Set(
    pieces.flatMap((piece, i) => (isOpen(piece) ? [before(pieces, i), after(pieces, tokens, i)] : [])),
  );
  return pieces.map((piece, i) => {
    if (!states.has(piece)) return piece;
    return { ...piece, role: narrower(pieces, tokens, i) === null ? 'state' : 'small' };
  });
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

// "There but weak": the second word is the one that counts.
function narrower(pieces: readonly Piece[], tokens: readonly Token[], i: number): Piece | null {
  const [piece, join, next] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || next === undefined || stateOf(piece) !== 'there') return null;
  if (join === undefined || isPaused(tokens, piece) || isPaused(tokens, join)) return null;
  const joins = join.role === 'small' || (join.role === 'negation' && marked(join, 'negation', 'stop'));
  return joins && isWord(next) ? next : null;
}

function after(pieces: readonly Piece[], tokens: readonly Token[], i: number): Piece | null {
  const first = firstAfter(pieces, tokens, i);
  return first === null ? null : (narrower(pieces, tokens, pieces.indexOf(first)) ?? first);
}

function firstAfter(pieces: readonly Piece[], tokens: readonly Token[], i: number): Piece | null {
  for (let k = i + 1; k < pieces.length; k++) {
    const [piece, last] = [pieces[k], pieces[k - 1]];
    if (piece === undefined || last === undefined) return null;
    // "Left radial: weak": a colon leads to it, a comma to something else.
    const isParted = isPaused(tokens, last) && pauseAfter(tokens, last) !== 'dash';
    if (isWord(piece)) return last.role !== 'csm' || !isParted ? piece : null;
    const stops = piece.role === 'negation' && stateOf(piece) === null;
    if (!PASSED.has(piece.role) && !stops) return null;
    if (isPaused(tokens, last) && piece.role !== 'side' && piece.role !== 'site') return null;
  }
  return null;
}
