// "Yes! Yes I am": an answer that the next words give again, in a sentence of its own, is one answer.

import { type Piece, tagIn } from '../pieces/piece.ts';
import type { Clause } from './clause.ts';

/** The clauses with each answer that is said again joined to the first. */
export function withRepeated(clauses: readonly Clause[]): readonly Clause[] {
  const out: Clause[] = [];
  for (const clause of clauses) {
    const before = out.at(-1);
    if (before !== undefined && isAgain(before, clause))
      out[out.length - 1] = { ...before, pieces: [...before.pieces, ...clause.pieces], pause: clause.pause };
    else out.push(clause);
  }
  return out;
}

const wordOf = (piece: Piece): string | null => tagIn(piece, 'talk.answer', 'answer');

function isAgain(before: Clause, { mood, pieces: [again] }: Clause): boolean {
  const said = before.pieces.filter(({ role }) => role !== 'talk');
  const word = said[0] === undefined ? null : wordOf(said[0]);
  if (before.mood !== 'answer' || (mood !== 'statement' && mood !== 'answer') || again === undefined)
    return false;
  // A bare "no" behind a "no" may be one to another question.
  const isWhole = again.to - again.from > 1 && again.role === 'answer';
  return (
    /^(yes|no)$/.test(word ?? '') &&
    said.every((piece) => wordOf(piece) === word) &&
    isWhole &&
    wordOf(again) === word
  );
}
