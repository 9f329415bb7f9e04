// Questions that a recogniser writes without their sign: "how old are you thirty four" asks, and answers in the same breath.

import { figureIn, type Piece, type Role, tagIn } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { begin, type Place, type Turn } from './place.ts';

// A number or a time after a question of these is its answer, and no part of the question.
const BY_NUMBER: ReadonlySet<string> = new Set(['age', 'weight', 'onset', 'last-intake']);

const isOpenEnd = (tokens: readonly Token[], from: number): boolean =>
  tokens.slice(from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';

/** Begins the answer where a number or a time follows a question after one, with no question mark behind it. */
export function repliedByNumber({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  if (draft.mood !== 'question' || before === undefined || isPaused(tokens, before)) return null;
  if (!BY_NUMBER.has(tagIn(before, 'history.ask', 'asks') ?? '') || !isOpenEnd(tokens, piece.from))
    return null;
  const isNumber = piece.role === 'time' || piece.role === 'figure' || figureIn(piece) !== null;
  const isSaid = piece.role === 'history' && (piece.islands[0]?.slots.length ?? 0) > 0;
  return isNumber || isSaid ? begin('statement') : null;
}

const TOLD: ReadonlySet<Role> = new Set(['unknown', 'figure', 'time', 'history', 'ask', 'attribute']);

/** True where words that may be an answer follow a whole question of history in the same breath, and no question mark. */
export function mayHoldAnswer(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const at = pieces.findIndex((piece) => tagIn(piece, 'history.ask', 'asks') !== null);
  const ask = pieces[at];
  if (ask === undefined || !isOpenEnd(tokens, ask.to - 1)) return false;
  return pieces.slice(at + 1).some(({ role, weak }) => TOLD.has(role) && !weak);
}
