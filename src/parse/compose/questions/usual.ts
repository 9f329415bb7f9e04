// "What's your pressure usually?" "One thirty over eighty.": what a sign usually is, is no reading of now, and stays in words.

import type { Clause } from '../../clauses/clause.ts';
import { figureIn } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import { saidIn } from '../../token.ts';
import { place, type Talk } from '../talk.ts';
import { noteAnswer } from './note-answer.ts';

const USUAL = /\b(normally|usually|typically)\b|\b(usual|normal) [a-z]/i;
const NOW = /\b(now|today|currently|at the moment)\b/;

/** True for a question after what something is on other days. */
export const asksUsual = (question: string | null): boolean => question !== null && USUAL.test(question);

/** Keeps the number that answers such a question beside it; false where the clause gives none, or one of now. */
export function answersUsual(talk: Talk, clause: Clause): boolean {
  const { clauses, context, tokens } = talk;
  if (!asksUsual(context.question) || (clause.mood !== 'statement' && clause.mood !== 'answer')) return false;
  const before = clauses[clauses.indexOf(clause) - 1];
  if (before === undefined ? !context.asking : before.mood !== 'question') return false;
  const { from, to } = spanned(clause.pieces);
  const isNumber = clause.pieces.some((piece) => piece.role === 'vital' || figureIn(piece) !== null);
  if (!isNumber || NOW.test(saidIn(tokens, from, to))) return false;
  noteAnswer(talk, { from, to });
  place(talk, { from, to });
  return true;
}
