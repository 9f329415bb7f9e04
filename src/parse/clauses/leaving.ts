// Where what was supposed, planned or told ends, and something is stated again.

import { isJoin, namesAtPlace, openingOf } from '../compose/sayings/index.ts';
import { isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused, pauseBefore } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { answers } from './answers.ts';
import type { Draft } from './draft.ts';
import { moodOf } from './mood-words.ts';
import { begin, isAnswer, type Place, type Turn } from './place.ts';

const isOutOfMood = ({ mood }: Draft): boolean =>
  mood === 'supposing' || mood === 'instruction' || mood === 'plan';

// A "no" or a "yes" after what was supposed or told begins something stated.
export function outOfMood({ piece, pieces, i, tokens, full, waiting, draft }: Place): Turn | null {
  if (!isOutOfMood(draft) || !full) return null;
  // "That'll be the rocks, and same on the other."
  if (
    draft.mood === 'supposing' &&
    piece.role === 'same' &&
    /^(and|same)$/.test(tokens[piece.from]?.word ?? '')
  )
    return begin('statement');
  if (!isAnswer(piece) && readingOf(piece, 'talk.courtesy') === null) return null;
  if (isAnswer(piece) && waiting && answers(pieces, i, tokens)) return begin('answer');
  return i > 0 && piece.role !== 'site' ? begin('statement') : null;
}

// "Lift your arm, left elbow is swollen": what is stated of a place after a pause is told to nobody.
export function statedAfter({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood === 'question') return stateAfterRequest(pieces, i, tokens, draft);
  const before = pieces[i - 1];
  if (before !== undefined && draft.mood === 'instruction' && statesAfterForMe(pieces, tokens, i))
    return begin('statement');
  const isJoined = before !== undefined && isJoin(before);
  if (isJoined && draft.mood === 'instruction' && openingOf(pieces, tokens, i) === 'place')
    return begin('statement');
  if (draft.mood !== 'instruction' || pauseBefore(tokens, piece) === '') return null;
  const end = pieces.findIndex((one, k) => k >= i && isPaused(tokens, one));
  const breath = pieces.slice(i, end < 0 ? pieces.length : end + 1);
  const says = breath.some(({ role, weak }) => STATED.has(role) && !weak) || isToldOfPlace(breath, tokens);
  const tells = breath.some(
    (one) => isSmall(one, 'you') || (moodOf(one) !== null && !one.weak) || one.role === 'asking',
  );
  return says && !tells ? begin('statement') : null;
}

// "Log roll on my count lovely okay thoracic spine no tenderness": the roll is told, and what comes after the courtesies is not.
const TOLD_TO = /(^| )(for (me|us)|on my count|on (three|3)|ready to (roll|lift))$/;

const isCourteous = (piece: Piece): boolean =>
  piece.role === 'talk' ||
  (piece.weak && readingOf(piece, 'talk.courtesy') !== null && piece.role !== 'side');

// "Lie still for me the right hip is tender", "keep still for us we've got a collar on": whom it was told ends what was told.
function statesAfterForMe(pieces: readonly Piece[], tokens: readonly Token[], i: number): boolean {
  const [piece, before] = [pieces[i], pieces.slice(0, i).findLast((one) => !isCourteous(one))];
  if (piece === undefined || before === undefined || isCourteous(piece)) return false;
  const said = saidIn(tokens, Math.max(0, before.to - 3), before.to);
  if (!TOLD_TO.test(said) || moodOf(piece) !== null) return false;
  const first = pieces.slice(i).find(({ role }) => role !== 'small' && role !== 'unknown');
  const isDone = first?.role === 'care' && (marked(first, 'on') || marked(first, 'put'));
  const isRead = first?.role === 'vital' && (first.islands[0]?.slots.length ?? 0) > 0;
  const isFelt = /^(that|it|this)$/.test(tokens[piece.from]?.word ?? '') && first?.role === 'finding';
  const isHeld = first === piece || /^(we|i|he|she|you)$/.test(tokens[piece.from]?.word ?? '');
  // "We're holding your head."
  const isOurs = /^(we|i) (are|have|am|got)$/.test(saidIn(tokens, piece.from, piece.from + 2));
  const isSaid = openingOf(pieces, tokens, i) !== null || namesAtPlace(pieces, tokens, i);
  return isFelt || isOurs || ((isDone || isRead) && isHeld) || isSaid;
}

// "Can you pass me the blanket, pain in the hip": what was asked for has nothing to do with the patient.
function stateAfterRequest(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  draft: Draft,
): Turn | null {
  const [piece, before] = [pieces[i], pieces[i - 1]];
  if (piece === undefined || before === undefined) return null;
  if (!isPaused(tokens, before) && !isJoin(before)) return null;
  const asksOfPatient = draft.pieces.some(({ role }) => OF_PATIENT.has(role));
  const isRequest = draft.pieces.some((one) => moodOf(one) === 'instruction' && !one.weak);
  const asks =
    tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause === 'ask';
  const says = isRequest && !asksOfPatient && !asks && openingOf(pieces, tokens, i) !== null;
  return says ? begin('statement') : null;
}

const OF_PATIENT: ReadonlySet<Role> = new Set(['site', 'finding', 'csm', 'history', 'vital', 'ask']);

// "Hold your arms out, the left one drops": of a place or a side a verb of the third person tells something.
const isToldOfPlace = (breath: readonly Piece[], tokens: readonly Token[]): boolean =>
  breath.some((piece, k) => {
    const { word = '' } = tokens[piece.from] ?? {};
    const ofPlace = breath.slice(0, k).some(({ role }) => role === 'side' || role === 'site');
    return ofPlace && piece.role === 'unknown' && /([^su]s|ed)$/.test(word) && !/wards$/.test(word);
  });

const STATED: ReadonlySet<Role> = new Set(['finding', 'csm', 'history', 'negation', 'care', 'vital']);

// What was done or measured, after a pause, is no part of what was told or planned before it.
export function done({ piece, tokens, draft }: Place): Turn | null {
  const isDone =
    (piece.role === 'care' && (marked(piece, 'on') || marked(piece, 'put'))) ||
    (piece.role === 'vital' && (piece.islands[0]?.slots.length ?? 0) > 0);
  const leaves = isOutOfMood(draft) || draft.mood === 'question';
  return leaves && isDone && pauseBefore(tokens, piece) !== '' ? begin('statement') : null;
}
