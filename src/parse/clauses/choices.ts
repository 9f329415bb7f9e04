// "Which knee hurts, left or right", "left or right knee hurting": what is to be chosen from is asked after, and found nowhere.

import { openingOf } from '../compose/sayings/index.ts';
import { isChoice } from '../pieces/choices.ts';
import { isSmall, marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import type { Mood } from './clause.ts';
import { begin, type Place, type Turn } from './place.ts';
import { isOpenEnd } from './run-on.ts';

/** The mood of a statement that leaves open which of two sides it is said of: asked, or kept in words; null for any other. */
export function moodOfChoice(pieces: readonly Piece[], tokens: readonly Token[]): Mood | null {
  const at = pieces.findIndex(isChoice);
  if (at < 0 || !pieces.some(({ role }) => role === 'finding' || role === 'csm')) return null;
  // "No swelling of the left or right knee" denies it of both.
  if (pieces.some((piece) => marked(piece, 'negation', 'before') || marked(piece, 'present', 'false')))
    return null;
  const isYours = tokens.slice(pieces[0]?.from, pieces.at(-1)?.to).some(({ word }) => word === 'your');
  return isYours || at === pieces.length - 1 ? 'question' : 'supposing';
}

const THING = /^(one|side|of)$/;

/** True for a "which" before a thing ("which hip", "which of your hands") that opens what is said; "the hip, which is sore" goes on. */
export function asksWhich(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next === undefined || piece.to - piece.from > 1) return false;
  if (tokens[piece.from]?.word !== 'which') return false;
  const start =
    pieces.slice(0, i).findLastIndex(({ to }) => /^(end|ask)$/.test(tokens[to - 1]?.pause ?? '')) + 1;
  const opens = pieces
    .slice(start, i)
    .every((one) => one.role === 'talk' || isSmall(one, 'join') || isSmall(one, 'word'));
  return opens && (next.role === 'site' || THING.test(tokens[next.from]?.word ?? ''));
}

/** "Which foot can't you feel the left": behind what was asked after a side alone answers. */
export function chosenInBreath({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'question' || tokens[draft.pieces[0]?.from ?? -1]?.word !== 'which') return null;
  if (piece.role !== 'side' || isChoice(piece) || !isOpenEnd(tokens, piece.from)) return null;
  const isAsked = draft.pieces.some(
    ({ role, weak }) => (role === 'finding' && !weak) || role === 'csm' || role === 'ask',
  );
  const isLed = /^(on|in|at|to|down|along)$/.test(tokens[piece.from]?.word ?? '');
  const isLast = i === pieces.length - 1 || isPaused(tokens, piece);
  return isAsked && !isLed && isLast ? begin('statement') : null;
}

/** "Which ankle, let me see, the left ankle is swollen": what is said of a place behind a "which" that asks nothing yet is told. */
export function toldAfterWhich({ pieces, i, tokens, draft }: Place): Turn | null {
  const opens = draft.mood === 'question' && tokens[draft.pieces[0]?.from ?? -1]?.word === 'which';
  if (!opens || draft.pieces.length < 2 || pieces[i]?.role !== 'side') return null;
  if (draft.pieces.some(({ role }) => role === 'finding' || role === 'csm')) return null;
  return openingOf(pieces, tokens, i) === 'place' ? begin('statement') : null;
}
