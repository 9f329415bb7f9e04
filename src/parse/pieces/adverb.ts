// "Right behind the ear", "right in the middle": before a preposition a bare "right" says how near and not which side.

import type { Token } from '../token.ts';
import type { Piece } from './piece.ts';

const PREPOSITIONS: ReadonlySet<string> = new Set(
  `in on at over above below under underneath behind across through along around beside next near between by inside into
   against within towards beneath`.split(/\s+/),
);

/** The pieces with each "right" that is no side read as a small word; a pause after it makes it a side again. */
export const withoutAdverbs = (pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] =>
  pieces.map((piece, i) =>
    isAdverb(piece, pieces[i + 1], tokens) ? { ...piece, role: 'small', weak: false } : piece,
  );

function isAdverb(piece: Piece, next: Piece | undefined, tokens: readonly Token[]): boolean {
  const word = tokens[piece.from];
  if (piece.role !== 'side' || piece.to - piece.from > 1 || word?.word !== 'right' || word.pause !== '')
    return false;
  return next !== undefined && PREPOSITIONS.has(tokens[next.from]?.word ?? '');
}
