// "Bleeding from the left thigh, stopped ten minutes ago", "tingling in the hand, it went away at ten to two": at that time it was over. A
// bleeding is told as in "bleeding stopped at ten to two", and of other things it is said that they were not there then.

import { saidIn, type Token } from '../token.ts';
import { marked, type Piece, type Role } from './piece.ts';
import { reread } from './reread.ts';

/** The pieces, with the words that say when something was over told of that thing. */
export function withStoppedAtTime(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const ends = pieces.map((_, i) => endOf(pieces, tokens, i));
  if (ends.every((end) => end === null)) return pieces;
  return pieces.flatMap((piece, i) => {
    const end = ends[i] ?? null;
    if (end !== null) return [end];
    // "It" would begin something else.
    const isIt = saidIn(tokens, piece.from, piece.to) === 'it';
    return isIt && ends[i + 1] !== null && ends[i + 1] !== undefined ? [] : [piece];
  });
}

const BETWEEN: ReadonlySet<Role> = new Set(['small', 'side', 'site', 'part']);

const STOPS: readonly string[] = ['pain', 'numbness', 'tingling', 'weakness'];

const OVER = /\b(stopped|ceased|gone|went away)\b/;

/** The piece at `i` read as what was over at the time straight behind it; null where it is anything else. */
function endOf(pieces: readonly Piece[], tokens: readonly Token[], i: number): Piece | null {
  const piece = pieces[i];
  if (piece?.role !== 'negation' || pieces[i + 1]?.role !== 'time') return null;
  const words = saidIn(tokens, piece.from, piece.to);
  const finding = pieces.slice(0, i).findLast(({ role }) => !BETWEEN.has(role));
  if (!OVER.test(words) || finding?.role !== 'finding') return null;
  if (marked(finding, 'finding', 'bleeding'))
    return /\b(stopped|ceased)\b/.test(words)
      ? reread(piece, 'attribute', 'findings.quality', { quality: 'controlled' })
      : null;
  return STOPS.some((one) => marked(finding, 'finding', one))
    ? reread(piece, 'negation', 'negation.negation', { negation: 'after' })
    : null;
}
