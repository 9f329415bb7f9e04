// "Right behind the ear", "bleeding now": before a preposition a bare "right" says how near and not which side, and a "now"
// after what is stated begins nothing.

import type { Token } from '../token.ts';
import type { Piece, Role } from './piece.ts';

const PREPOSITIONS: ReadonlySet<string> = new Set(
  `in on at over above below under underneath behind across through along around beside next near between by inside into
   against within towards beneath`.split(/\s+/),
);

/** The pieces with each such "right" or "now" read as a small word; a pause makes it what it was. */
export const withoutAdverbs = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) =>
    isPassing(piece, pieces[i - 1], tokens) || isAdverb(piece, pieces[i + 1], tokens)
      ? { ...piece, role: 'small', weak: false }
      : piece,
  );

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital']);

// "Bleeding now from the left ear": within a breath "now" opens nothing.
function isPassing(piece: Piece, before: Piece | undefined, tokens: readonly Token[]): boolean {
  if (piece.to - piece.from > 1 || tokens[piece.from]?.word !== 'now' || before === undefined) return false;
  // "Six point four now", "any rash there now": closing a breath it is said of the figure or of the spot.
  const isOf = before.role === 'figure' || /^(there|here)$/.test(tokens[before.to - 1]?.word ?? '');
  const closes = isOf && (tokens[piece.from]?.pause !== '' || piece.to === tokens.length);
  return (STATING.has(before.role) || closes) && tokens[before.to - 1]?.pause === '';
}

function isAdverb(piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean {
  const word = tokens[piece.from];
  if (piece.role !== 'side' || piece.to - piece.from > 1 || word?.word !== 'right' || word.pause !== '')
    return false;
  return next !== undefined && PREPOSITIONS.has(tokens[next.from]?.word ?? '');
}
