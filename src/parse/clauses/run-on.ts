// Questions that a recogniser writes without their sign: "how old are you thirty four" asks, and answers in the same breath.

import { figureIn, marked, type Piece, type Role, tagIn } from '../pieces/piece.ts';
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

// What opens an answer in the breath of a question, and could not go on with it.
const LIMITS = /^(just|only)$/;
const ASKS_ON =
  /^(tell|let|say|give|hold|relax|breathe|wait|nod|answer|be|try|asking|checking|wondering|so|when|if)$/;
const SINCE = /^(since|about|maybe|must|probably|around|roughly|like|over|nearly|almost)$/;
const WAY = /^(down|up|into|through|across|along|toward|towards|round|around)$/;

/** "Are you allergic to anything just sulfa", "is it going anywhere down my arm": the answer follows the whole question without a pause. */
export function repliedInBreath({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  if (draft.mood !== 'question' || before === undefined || isPaused(tokens, before)) return null;
  if (!isOpenEnd(tokens, piece.from)) return null;
  const word = tokens[piece.from]?.word ?? '';
  // Asked of the patient it would go on with "your".
  if (tokens.slice(piece.from, piece.from + OWNED).some((one) => one.word === 'your')) return null;
  const isJust = LIMITS.test(word) && !goesOnAsking(tokens, piece.from + 1);
  // "Can you move your toes just the big one".
  if (isJust && draft.pieces.some((one) => tagIn(one, 'csm.ask', 'ask') !== null)) return begin('statement');
  const topic = tagIn(before, 'history.ask', 'asks');
  if (topic === null || marked(before, 'to-end')) return null;
  const opens =
    isJust ||
    (topic === 'medications' && (piece.role === 'care' || piece.role === 'figure')) ||
    (topic === 'onset' && SINCE.test(word)) ||
    (topic === 'radiation' && WAY.test(word));
  return opens && tokens[piece.to] !== undefined ? begin('statement') : null;
}

const OWNED = 4;

// "Are you allergic to anything, just tell me", "just to be sure".
const goesOnAsking = (tokens: readonly Token[], at: number): boolean =>
  ASKS_ON.test(tokens[at]?.word ?? '') ||
  (tokens[at]?.word === 'to' && /^(be|check|make|see|know|confirm)$/.test(tokens[at + 1]?.word ?? ''));

const ENDED = /^(hurt|hurts|hurting|pain|sore|most|worst|anywhere|somewhere|badly)$/;
const POINTS = /^(just|right|only|here|there)$/;
const OF_MINE = /^(my|just|right|only|here|there|below|above|under|behind|left|both)$/;

/** "Where does it hurt my left hip", "does it hurt anywhere just here low down": the place in the breath of the question answers it. */
export function repliedWithPlace({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const [first, before] = [draft.pieces.find(({ role }) => role !== 'talk'), pieces[i - 1]];
  if (draft.mood !== 'question' || first === undefined || before === undefined) return null;
  if (isPaused(tokens, before) || !isOpenEnd(tokens, piece.from)) return null;
  if (!ENDED.test(tokens[before.to - 1]?.word ?? '')) return null;
  if (tokens.slice(piece.from, piece.from + OWNED).some((one) => one.word === 'your')) return null;
  if (!pieces.slice(i, i + OWNED).some(({ role }) => role === 'site' || role === 'part')) return null;
  const word = tokens[piece.from]?.word ?? '';
  const asksWhere = tokens[first.from]?.word === 'where';
  const isPlace = asksWhere
    ? piece.role === 'site' || OF_MINE.test(word)
    : POINTS.test(word) && /^(any|some)where$/.test(tokens[before.to - 1]?.word ?? '');
  return isPlace ? begin('statement') : null;
}

/** "Can you breathe okay not really it hurts": who was asked to do something, answers. */
export function answeredAsked({ piece, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'instruction' || piece.role !== 'answer' || piece.weak) return null;
  const first = draft.pieces.find(({ role }) => role !== 'talk' && role !== 'small');
  return /^(can|could|are)$/.test(tokens[first?.from ?? -1]?.word ?? '') ? begin('statement') : null;
}

/** "Can you push down on my hands good strong push both feet": how strong it was tells what the patient did who was asked to. */
export function toldWhenAsked({ piece, tokens, draft }: Place): Turn | null {
  const isAsked = draft.pieces.some((one) => tagIn(one, 'csm.ask', 'ask') === 'motion');
  if (draft.mood !== 'instruction' && !(draft.mood === 'question' && isAsked)) return null;
  if (piece.role !== 'csm' || !marked(piece, 'strength') || !isOpenEnd(tokens, piece.from)) return null;
  return draft.pieces.some((one) => one.role === 'mood' || one.role === 'ask') ? begin('statement') : null;
}

const TOLD: ReadonlySet<Role> = new Set(['unknown', 'figure', 'time', 'history', 'ask', 'attribute', 'care']);

const isNot = ({ from, to }: Piece, tokens: readonly Token[]): boolean =>
  to - from === 1 && /^(not|never)$/.test(tokens[from]?.word ?? '');

/** True where words that may be an answer follow a whole question of history in the same breath, and no question mark. */
export function mayHoldAnswer(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const at = pieces.findIndex((piece) => tagIn(piece, 'history.ask', 'asks') !== null);
  const ask = pieces[at];
  if (ask === undefined || !isOpenEnd(tokens, ask.to - 1)) return false;
  // "Do you feel dizzy not now."
  return pieces.slice(at + 1).some((piece) => (TOLD.has(piece.role) && !piece.weak) || isNot(piece, tokens));
}
