// Questions that a recogniser writes without their sign: "how old are you thirty four" asks, and answers in the same breath.

import { figureIn, marked, type Piece, tagIn } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { begin, type Place, type Turn } from './place.ts';

// A number or a time after a question of these is its answer, and no part of the question.
const BY_NUMBER: ReadonlySet<string> = new Set(['age', 'weight', 'onset', 'time', 'last-intake']);

/** True where no question mark comes before the sentence ends. */
export const isOpenEnd = (tokens: readonly Token[], from: number): boolean =>
  tokens.slice(from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';

/** Begins the answer where a number or a time follows a question after one, with no question mark behind it. */
export function repliedByNumber({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  if (draft.mood !== 'question' || before === undefined || isPaused(tokens, before)) return null;
  if (isScore(before, piece, draft.pieces, pieces.slice(i + 1), tokens)) return begin('answer');
  if (!BY_NUMBER.has(tagIn(before, 'history.ask', 'asks') ?? '') || !isOpenEnd(tokens, piece.from))
    return null;
  const isNumber = piece.role === 'time' || piece.role === 'figure' || figureIn(piece) !== null;
  const isSaid = piece.role === 'history' && (piece.islands[0]?.slots.length ?? 0) > 0;
  return isNumber || isSaid ? begin('statement') : null;
}

// "How bad is it out of ten I'd say a six": a figure of its own behind the whole question.
function isScore(
  before: Piece,
  piece: Piece,
  said: readonly Piece[],
  next: readonly Piece[],
  tokens: readonly Token[],
): boolean {
  if (piece.role !== 'figure' || !isOpenEnd(tokens, piece.from)) return false;
  if (/^(to|out|or|of)$/.test(tokens[piece.to]?.word ?? '')) return false;
  if (next.some(({ role }) => role === 'figure')) return false;
  const ask = said.findLast((one) => tagIn(one, 'history.ask', 'asks-vital') === 'pain-score');
  if (ask === undefined) return false;
  return tokens.slice(ask.to, before.to).every(({ word }) => HEDGES.has(word));
}

const HEDGES: ReadonlySet<string> = new Set(
  'i id would say a an about around maybe probably like it is that is call it guess more of well oh'.split(
    ' ',
  ),
);

// In one breath with the whole question after it, such a word begins what is answered.
const BY_WORDS: Readonly<Record<string, RegExp>> = {
  medications: /^(just|only)$/,
  'past-history': /^(just|only)$/,
  allergies: /^(just|only)$/,
  'last-intake': /^(just|only|about|around|at|this|last|yesterday)$/,
  onset: /^(this|last|yesterday|about|around|just|maybe|since|earlier)$/,
};

/** "Any meds just the pill", "when did it start this morning": the words behind the whole question are its answer. */
export function repliedInWords({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  if (draft.mood !== 'question' || before === undefined || isPaused(tokens, before)) return null;
  const topic = tagIn(before, 'history.ask', 'asks') ?? '';
  const { word = '' } = tokens[piece.from] ?? {};
  if (BY_WORDS[topic]?.test(word) !== true || !isOpenEnd(tokens, piece.from)) return null;
  // "When did it start this time", "any meds only for the pain", "allergic to anything, just tell me".
  if (goesOnAsking(tokens, piece.from + 1)) return null;
  return /^(time|one|for|when|if)$/.test(tokens[piece.from + 1]?.word ?? '') ? null : begin('statement');
}

// What opens an answer in the breath of a question, and could not go on with it.
const LIMITS = /^(just|only)$/;
const TELLS_ON =
  /^((?!something|morning|evening)\w*ing|tell|let|say|give|hold|relax|breathe|wait|nod|answer|be|try|in|so|when|if|because|now|yes|no|quickly|curious|whatever|think)$/;
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
  // "What happened I slipped", "how did you fall caught an edge".
  const isMechanism = piece.role === 'history' && marked(piece, 'topic', 'mechanism');
  if (HAPPENED.test(topic) && (isMechanism || (TELLS.test(word) && tokens[piece.to] !== undefined)))
    return begin('statement');
  const opens =
    isJust ||
    // "Any meds I don't take anything".
    (piece.role === 'history' && marked(piece, 'denied') && marked(piece, 'topic', topic)) ||
    (topic === 'medications' && (piece.role === 'care' || piece.role === 'figure')) ||
    ((topic === 'onset' || topic === 'time') && SINCE.test(word)) ||
    (topic === 'radiation' && WAY.test(word));
  return opens && (tokens[piece.to] !== undefined || marked(piece, 'denied')) ? begin('statement') : null;
}

const HAPPENED = /^(events|mechanism)$/;
const TELLS = /^(i|my|we|he|she)$/;
const OWNED = 4;

/** True for "just tell me", "just to be sure": what may begin an answer asks on. */
export const goesOnAsking = (tokens: readonly Token[], at: number): boolean =>
  TELLS_ON.test(tokens[at]?.word ?? '') ||
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
export function answeredAsked({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'instruction' || piece.role !== 'answer') return null;
  // "Push down on my hand, yep."
  const isBehind = isPaused(tokens, pieces[i - 1] ?? piece) || piece.to === tokens.length;
  if (isBehind && /^(yes|yeah|yep|yup|aye|no|nope|nah)$/.test(saidIn(tokens, piece.from, piece.to)))
    return begin('statement');
  if (piece.weak) return null;
  const first = draft.pieces.find(({ role }) => role !== 'talk' && role !== 'small');
  return /^(can|could|are)$/.test(tokens[first?.from ?? -1]?.word ?? '') ? begin('statement') : null;
}

/** "Grip my fingers, can't": so says who was told to. */
export function cannotAsTold({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'instruction' || i === 0 || !isPaused(tokens, pieces[i - 1] ?? piece)) return null;
  const words = saidIn(tokens, piece.from, pieces.at(-1)?.to ?? piece.to);
  return /^(i |he |she )?(can|could) not( do it| move it)?$/.test(words) ? begin('statement') : null;
}

/** "Can you push down on my hands good strong push both feet": how strong it was tells what the patient did who was asked to. */
export function toldWhenAsked({ piece, tokens, draft }: Place): Turn | null {
  const isAsked = draft.pieces.some((one) => tagIn(one, 'csm.ask', 'ask') === 'motion');
  if (draft.mood !== 'instruction' && !(draft.mood === 'question' && isAsked)) return null;
  if (piece.role !== 'csm' || !marked(piece, 'strength') || !isOpenEnd(tokens, piece.from)) return null;
  return draft.pieces.some((one) => one.role === 'mood' || one.role === 'ask') ? begin('statement') : null;
}

/** "Where does it hurt top of the shoulder": the place behind it is the answer; "where does it hurt on your leg" asks on. */
export function repliedByPlace({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'question' || (piece.role !== 'site' && piece.role !== 'side' && piece.role !== 'part'))
    return null;
  const hurts = draft.pieces.findLast(({ role }) => role === 'finding');
  const isWhere = draft.pieces.some((one) => one.role === 'asking' && marked(one, 'where'));
  if (!isWhere || hurts === undefined || !isOpenEnd(tokens, hurts.to - 1)) return null;
  const lead = saidIn(tokens, hurts.to, piece.to);
  const isLed = pieces
    .slice(pieces.indexOf(hurts) + 1, i)
    .every(({ role }) => role === 'small' || role === 'talk');
  const asksOn =
    /\byour\b/.test(lead) || (/^(in|on|at|with|of|down|along)\b/.test(lead) && !/\bmy\b/.test(lead));
  return isLed && !asksOn ? begin('statement') : null;
}
