// Signs that are no reading of now: what was before, what was given up for a later figure, and what is denied.

import { marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { saidIn, type Token } from '../../token.ts';
import { namesEarlier } from '../corrections/nth-reading.ts';
import { isPlaced, type Talk, timeOf } from '../talk.ts';
import { isBefore } from './before.ts';

/**
 * True for "was one ten over seventy", "he was unresponsive when we came": what was before is no reading of now, and stays in
 * words; said with its time it is one of then.
 */
export function isFormer(talk: Talk, pieces: readonly Piece[], i: number): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  // "Correction, earlier pulse was eighty": it is that reading which is put right.
  if (piece !== undefined && namesEarlier(talk, piece.from)) return false;
  const isWord = piece !== undefined && marked(piece, 'avpu') && piece.islands[0]?.slots.length === 0;
  if (isWord && /^(was|were|been|from)$/.test(talk.tokens[piece.from - 1]?.word ?? ''))
    return timeOf(talk, piece) === undefined;
  if (piece !== undefined && (isBefore(talk, pieces, i) || isSuperseded(talk, pieces, i)))
    return timeOf(talk, piece) === undefined;
  const earlier = pieces.slice(0, i - 1).some((one) => one.role === 'vital' && isPlaced(talk, one));
  const isWas = before !== undefined && /^(was|were)$/.test(talk.tokens[before.to - 1]?.word ?? '');
  return isWas && earlier && marked(piece as Piece, 'bare') && timeOf(talk, piece as Piece) === undefined;
}

// "Sats were seventy nine when I put the probe on, they're ninety five now": the figure with "now" is the reading.
function isSuperseded({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const [piece, rest] = [pieces[i], pieces.slice(i + 1)];
  if (piece === undefined || rest.length === 0) return false;
  const words = tokens.slice(piece.from, piece.to + 2).map(({ word }) => word);
  if (!words.some((word) => /^(was|were)$/.test(word)) || marked(piece, 'num', 'former')) return false;
  const next = rest.findIndex(({ role }) => role === 'vital');
  const mine = next < 0 ? rest : rest.slice(0, next);
  return mine.some(
    ({ role, from, to }) =>
      role === 'figure' && [tokens[from - 1], tokens[to]].some((beside) => beside?.word === 'now'),
  );
}

/** True for "not alert", "does not respond to voice": a sign that is denied is none, and nobody can say what there is instead. */
export function isDeniedSign({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece === undefined || (piece.islands[0]?.slots.length ?? 0) > 0) return false;
  const before = pieces.slice(0, i).findLast((one) => one.role !== 'small');
  if (before === undefined || isPaused(tokens, before) || marked(before, 'plain')) return false;
  if (isToldAnew(tokens, piece)) return false;
  return marked(before, 'negation', 'before') || marked(before, 'answer', 'no');
}

// "I don't like his skin, it's pale": past the pause it is told how it is, and nothing of that is denied.
function isToldAnew(tokens: readonly Token[], { from, to }: Piece): boolean {
  const pause = tokens.findIndex((token, at) => at >= from && at < to - 1 && token.pause !== '');
  return (
    pause >= 0 &&
    /^(it|he|she|they|that|this) (is|are|looks|feels)$/.test(saidIn(tokens, pause + 1, pause + 3))
  );
}
