// "Swelling of the left ankle: none": a denial behind a colon or a dash belongs to the finding before it.

import { marked, type Piece } from '../pieces/piece.ts';
import type { Clause } from './clause.ts';

/** The clauses with each bare "none" joined to the finding that a colon or a dash parts it from. */
export function withNone(clauses: readonly Clause[]): readonly Clause[] {
  const out: Clause[] = [];
  for (const clause of clauses) {
    const before = out.at(-1);
    if (before !== undefined && names(before) && isNone(clause))
      out[out.length - 1] = { ...before, pieces: [...before.pieces, ...clause.pieces], pause: clause.pause };
    else out.push(clause);
  }
  return out;
}

// What was found is named, and nothing denies it yet.
const names = ({ mood, pause, pieces }: Clause): boolean =>
  mood === 'statement' &&
  pause === 'dash' &&
  pieces.some(({ role }) => role === 'finding') &&
  !pieces.some(denies);

const denies = (piece: Piece): boolean =>
  piece.role !== 'finding' && (marked(piece, 'negation', 'before') || marked(piece, 'negation', 'after'));

const isNone = ({ pieces }: Clause): boolean => {
  const [first, ...rest] = pieces;
  return first !== undefined && rest.length === 0 && marked(first, 'negation', 'after');
};
