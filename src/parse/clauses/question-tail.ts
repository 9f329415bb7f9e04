// "Is she bleeding from the ear, can you see": words behind a question that ask no more than it does.

import { marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { type Draft, isFull } from './draft.ts';

/** True for such words where nothing but the answer, or whom it is said to, stands behind them. */
export function isTail(pieces: readonly Piece[], i: number, tokens: readonly Token[], draft: Draft): boolean {
  const [piece, next] = pieces.slice(i);
  if (piece === undefined || draft.mood !== 'question' || !isFull(draft.pieces)) return false;
  if (!marked(piece, 'tail') && !(marked(piece, 'ask', 'sensation') && piece.weak)) return false;
  if (next === undefined || isPaused(tokens, piece)) return true;
  const behind = pieces.slice(i + 1).find(({ role }) => role !== 'small');
  return behind === undefined || behind.role === 'talk' || behind.role === 'answer';
}
