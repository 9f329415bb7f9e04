// "GCS fifteen, chattering away to me about his dog": somebody else who is only spoken of holds his own breath and no other one.

import { isJoin, isReading, openingOf } from '../compose/sayings/index.ts';
import { marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, pauseBefore } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { moodOf } from './mood-words.ts';
import { begin, type Place, type Turn } from './place.ts';

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history']);

/** How many of the pieces said so far the mood of piece `i` leaves alone: those before its breath; 0 for none. */
export function leftAlone(
  said: readonly Piece[],
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): number {
  const at = said.findLastIndex((piece) => isPaused(tokens, piece)) + 1;
  const before = said.slice(0, at);
  const isTold = before.some(({ role, weak }) => STATING.has(role) && !weak);
  return isTold && isSpokenOf(said.slice(at), pieces, i, tokens) ? at : 0;
}

// "Asking for his mum", "his dad says he is diabetic"; "pulse one forty, that's his mate" tells whose it is, and "belongs to his mate" too.
function isSpokenOf(
  breath: readonly Piece[],
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined) return false;
  const isObject =
    ABOUT.test(tokens[piece.from - 1]?.word ?? '') && breath.some(({ role }) => role === 'unknown');
  return isObject || (breath.length === 0 && SAYS.test(tokens[next?.from ?? -1]?.word ?? ''));
}

const ABOUT = /^(about|for|after|with)$/;
const SAYS = /^(says|said|thinks|reckons|tells|told|confirms)$/;

/** "… talking about his boss, sats ninety six": a reading past the pause is of the patient again. */
export function readAfterTalk({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'others' || pauseBefore(tokens, piece) === '' || !isReading(piece)) return null;
  const at = draft.pieces.findLastIndex((one) => moodOf(one) === 'others');
  const first = draft.pieces.slice(0, at).findLastIndex((one) => isPaused(tokens, one)) + 1;
  const from = i - draft.pieces.length + at;
  return isSpokenOf(draft.pieces.slice(first, at), pieces, from, tokens) && at > first
    ? begin('statement')
    : null;
}

/** "I had my hip done years ago, and I've a touch of asthma": what is so today, past the pause, is not of long ago. */
export function toldOfToday({ pieces, i, tokens, draft }: Place): Turn | null {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (draft.mood !== 'past' || before === undefined || piece === undefined) return null;
  if (!isPaused(tokens, before)) return null;
  const end = pieces.findIndex((one, k) => k >= i && isPaused(tokens, one));
  const words = saidIn(tokens, piece.from, pieces[end < 0 ? pieces.length - 1 : end]?.to ?? piece.to);
  const isToday = TODAY.test(words) && !BEFORE.test(words) && !OF_IT.test(words);
  // "I have" opens what is told.
  const lead = pieces.slice(i).findIndex((one) => !isJoin(one) && !marked(one, 'negation', 'stop'));
  return isToday && TOLD.has(openingOf(pieces, tokens, i + Math.max(0, lead))) ? begin('statement') : null;
}

const TODAY = /\b(is|are|am|has|have|takes|take)\b/;
const BEFORE = /\b(was|were|had|did|used|been|ago|last)\b/;
// "Broke his wrist years ago, it's a bit stiff": of the old break.
const OF_IT = /^((and|but|so) )?(it|that|this|they|those) /;
const TOLD: ReadonlySet<string | null> = new Set(['place', 'history', 'reading']);
