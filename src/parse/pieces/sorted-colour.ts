// "Red, priority one": a colour by which somebody is sorted is no colour of the place in mind.

import type { Token } from '../token.ts';
import type { Piece } from './piece.ts';

const COLOUR = /^(red|yellow|green|black|blue|amber|orange|white|purple)$/;
const SORTS = /^(priority|category|cat|triage|triaged|tag|tagged|p1|p2|p3)$/;

// Behind a place ("left foot black, priority one") the colour is that place's.
const TELLS: ReadonlySet<string> = new Set(['site', 'side', 'finding', 'csm', 'vital', 'part']);

/** The pieces with a colour that nothing but a word of sorting follows, and no place goes before, read as no finding. */
export function withSortedColours(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  return pieces.map((piece, i) => {
    if (piece.to - piece.from !== 1 || !COLOUR.test(tokens[piece.from]?.word ?? '')) return piece;
    if (!SORTS.test(tokens[piece.to]?.word ?? '')) return piece;
    if (pieces.slice(0, i).some(({ role }) => TELLS.has(role))) return piece;
    return { ...piece, role: 'unknown', islands: [] };
  });
}
