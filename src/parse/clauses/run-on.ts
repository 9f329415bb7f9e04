// Questions that a recogniser writes without their sign: "how old are you thirty four" asks, and answers in the same breath.

import { figureIn, marked, type Piece, type Role, tagIn } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
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

// "Any medical problems just asthma": what restricts is the answer.
export function repliedByOnly({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  if (draft.mood !== 'question' || before === undefined || piece.to - piece.from > 1) return null;
  if (!/^(just|only)$/.test(tokens[piece.from]?.word ?? '') || i === pieces.length - 1) return null;
  // "Just asking", "just in case".
  if (NO_NAME.test(tokens[piece.to]?.word ?? '')) return null;
  const topic = tagIn(before, 'history.ask', 'asks') ?? '';
  return OF_OLD.has(topic) && isOpenEnd(tokens, piece.from) ? begin('statement') : null;
}

const NO_NAME =
  /^((?!something)\w*ing|to|in|so|say|tell|let|nod|now|yes|no|quickly|curious|if|when|because|whatever|give|think)$/;
const OF_OLD: ReadonlySet<string> = new Set(['allergies', 'medications', 'past-history']);

// "Where does it hurt top of the shoulder": the place behind it is the answer; "where does it hurt on your leg" asks on.
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

const TOLD: ReadonlySet<Role> = new Set(['unknown', 'figure', 'time', 'history', 'ask', 'attribute']);

const PERSON = /^(i|he|she|they)$/;
const TIED =
  /^(when|if|where|while|after|before|since|that|what|which|how|because|did|do|does|has|have|had|is|are|was|were|can|and|or)$/;

/**
 * True where an answer was given in the breath of a question, in words that are none by themselves: "did it click I heard a
 * snap", "is it worse when you cough no it's always there", "taken anything for it two aspirin", "does it hurt only when I turn".
 */
export function mayBeAnswered(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const [first, ...rest] = pieces;
  const last = pieces.at(-1);
  if (first === undefined || last === undefined || !isOpenEnd(tokens, last.to - 1)) return false;
  return rest.some((piece, k) => {
    const before = pieces[k];
    const [word, lead] = [tokens[piece.from]?.word ?? '', tokens[piece.from - 1]?.word ?? ''];
    if (before === undefined) return false;
    if (marked(piece, 'denies')) return true;
    // "Is your vision blurred only on the left".
    const next = tokens[piece.to]?.word ?? '';
    if (/^(only|just)$/.test(word) && k > 0 && /^(in|on|at|when|if|after)$/.test(next)) return true;
    // A drug with its amount.
    if (piece.role === 'care') return piece.islands[0]?.slots[0]?.from === piece.from;
    if (piece.role === 'history') return PERSON.test(word) && !TIED.test(lead);
    return (
      piece.role === 'finding' && / (only|just) (when|if) i\b/.test(saidIn(tokens, piece.from, piece.to))
    );
  });
}

/** True where words that may be an answer follow a whole question of history in the same breath, and no question mark. */
export function mayHoldAnswer(pieces: readonly Piece[], tokens: readonly Token[]): boolean {
  const at = pieces.findIndex((piece) => tagIn(piece, 'history.ask', 'asks') !== null);
  const ask = pieces[at];
  if (ask === undefined || !isOpenEnd(tokens, ask.to - 1)) return false;
  return pieces.slice(at + 1).some(({ role, weak }) => TOLD.has(role) && !weak);
}
