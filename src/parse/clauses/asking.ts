// Where words that could ask do ask, and where they only look so: "does not hurt", "the pulse is there", "any".

import { isJoin } from '../compose/sayings/index.ts';
import { figureIn, isLikely, isSmall, marked, type Piece, type Role } from '../pieces/piece.ts';
import { isPaused, pauseBefore } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { asksWhich } from './choices.ts';
import type { Draft } from './draft.ts';
import { isSaidOf } from './inverted.ts';
import { become, begin, type Place, type Turn } from './place.ts';
import { isTail } from './question-tail.ts';

// "The sternum does not hurt": a bare "does" asks only where a clause begins, and an "any" also behind a place ("neck, any pain").
export function bareAsking({ piece, pieces, i, tokens, full, draft }: Place): 'stay' | null {
  // "Tourniquet on the right thigh, any headache?": with its question mark it begins what is asked.
  const before = pieces[i - 1];
  const isParted = before !== undefined && (isPaused(tokens, before) || isJoined(before));
  if (isParted && piece.role === 'asking' && asksToEnd(tokens, piece)) return null;
  const bare = piece.role === 'asking' && piece.weak && piece.to - piece.from === 1;
  if (bare && draft.mood === 'statement' && isBehindSubject(pieces, i, tokens)) return 'stay';
  const behindPlace =
    isSmall(piece, 'article') && draft.pieces.every(({ role, weak }) => PLACES.has(role) || weak);
  return bare && !behindPlace && full && draft.mood === 'statement' ? 'stay' : null;
}

// "He does limp a bit", "the lady does grunt": behind whom it is said of, and before no other one, a "does" tells.
function isBehindSubject(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || before === undefined || next === undefined) return false;
  if (isPaused(tokens, before) || isPaused(tokens, piece) || !DOES.test(tokens[piece.from]?.word ?? ''))
    return false;
  if (!isSmall(before, 'person') && !PATIENT.test(tokens[before.to - 1]?.word ?? '')) return false;
  // "He does, any pain here", "he does, does it hurt": the breath of the answer asks on.
  const isAskedNext = next.role === 'asking' || next.role === 'ask' || isSmall(next, 'article');
  if (isSmall(before, 'you') || isSmall(next, 'person') || isAskedNext) return false;
  return !asksToEnd(tokens, piece) && !INVERTED.test(tokens[before.from - 1]?.word ?? '');
}

const PATIENT = /^(patient|casualty)$/;
const DOES = /^(does|did)$/;
// "What can he do", "does the patient do that".
const INVERTED = /^(do|does|did|can|could|will|would|is|are|was|were|has|have|had)$/;

// What nobody knows is mostly who is asked: "okay Bethan, any pain", "right my lover any pain".
const PLACES: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small', 'talk', 'intention', 'unknown']);

// "Where's that coming from, two centimetre cut over the ear": nobody asks after a thing that was measured.
export function measured({ piece, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'question' || piece.role !== 'attribute' || !marked(piece, 'num', 'size')) return null;
  const end = tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause;
  return end === 'ask' ? null : begin('statement');
}

/** "What's his pulse, ninety six", "how's his breathing, fast, about thirty": the answer goes on in the breath of the question. */
export function answeredReading({ piece, pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'question' || asksToEnd(tokens, piece)) return null;
  // "How bad is the pain, nought to ten".
  if (/^(to|or|out)$/.test(tokens[piece.to]?.word ?? '')) return null;
  const asks = draft.pieces.some((one) => one.role === 'ask' || one.role === 'asking');
  const before = pieces[i - 1];
  if (!asks || before === undefined) return null;
  // "What's his pulse ninety eight", "how bad is it about a six": a whole question after a sign holds no figure.
  const asked = draft.pieces.findLast(
    (one) => !isSmall(one, 'article') && one.role !== 'small' && one.role !== 'talk' && !one.weak,
  );
  const isWhole = asked !== undefined && marked(asked, 'asks-vital');
  const isFigure = piece.role === 'figure' || (isWhole && piece.role === 'time' && figureIn(piece) !== null);
  if (isFigure)
    return ((isPaused(tokens, before) || isWhole) && draft.pieces.some(asksAfterSign)) ||
      (piece.role === 'figure' && isScaleAsked(before, pieces[i + 1]))
      ? begin('answer')
      : null;
  // The name of the sign is asked after, and its figure follows a pause.
  const figure = piece.role === 'vital' ? piece.islands[0]?.slots[0] : undefined;
  if (piece.role === 'vital' && tellsHow(piece, before, tokens)) return begin('statement');
  if (figure === undefined) return null;
  const named = tokens.slice(piece.from, figure.from);
  const first = firstWord(tokens, draft.pieces);
  const isOpen =
    /^(what|how|which)$/.test(first) || (first === 'any' && marked(piece, 'vital', 'pain-score'));
  return isOpen && named.some(({ pause }) => pause !== '') ? begin('statement') : null;
}

// "What's the heart rate about eighty", "how's his breathing fast and shallow": nobody asks with what it is.
const tellsHow = (piece: Piece, before: Piece, tokens: readonly Token[]): boolean =>
  /^(what|how)$/.test(tokens[before.from]?.word ?? '') &&
  before.role === 'asking' &&
  !marked(piece, 'heading') &&
  ((piece.islands[0]?.slots.length ?? 0) > 0 || /^(how)$/.test(tokens[before.from]?.word ?? ''));

// "Is his pulse regular, ninety six" answers no "regular".
const firstWord = (tokens: readonly Token[], pieces: readonly Piece[]): string => {
  const asking = pieces.find(({ role }) => role === 'ask' || role === 'asking');
  const [before, first] = [tokens[(asking?.from ?? 0) - 1]?.word, tokens[asking?.from ?? 0]?.word];
  return /^(what|how|which)$/.test(before ?? '') ? (before ?? '') : (first ?? '');
};

// "How bad is it from one to ten seven": behind the whole scale a figure is the answer.
const isScaleAsked = (before: Piece, next: Piece | undefined): boolean =>
  next === undefined && before.role === 'ask' && marked(before, 'asks-vital', 'pain-score');

const asksAfterSign = (piece: Piece): boolean =>
  marked(piece, 'asks-vital') || (piece.role === 'vital' && marked(piece, 'heading'));

export function question({ piece, pieces, i, tokens, draft }: Place): Turn | 'stay' | null {
  if (asksWhich(pieces, i, tokens)) return begin('question');
  // "Both hands, which one can't you feel": the order of its words asks.
  if (marked(piece, 'asked')) return draft.mood === 'statement' ? become('question') : null;
  if (piece.role !== 'asking' && piece.role !== 'ask') return null;
  if (isTail(pieces, i, tokens, draft)) return 'stay';
  if (
    isDenial(pieces, i, tokens) ||
    (isDeniedAny(piece, draft) && !(isJoined(pieces[i - 1]) && asksToEnd(tokens, piece))) ||
    isSaidThere(pieces, i, tokens) ||
    isWhatItIs(pieces, i, tokens) ||
    isBehindModal(pieces, i, tokens) ||
    isDone(pieces, i, tokens) ||
    isSaidOf(pieces, i, tokens) ||
    isPointed(pieces, i, tokens) ||
    isSaidBy(piece, tokens) ||
    isOfWhich(draft, tokens)
  )
    return 'stay';
  // "Breathe in, any pain?": what asks after a pause, to the question mark, is no part of what was told.
  if (draft.mood === 'instruction' && piece.role === 'asking' && asksOfFelt(pieces, i, draft))
    return begin('question');
  if (draft.mood === 'instruction' && piece.role === 'asking')
    return (pauseBefore(tokens, piece) !== '' || isJoined(pieces[i - 1])) && asksToEnd(tokens, piece)
      ? begin('question')
      : 'stay';
  const before = pieces[i - 1];
  const role = before !== undefined && marked(before, 'contrast') ? null : before?.role;
  return role === 'asking' || role === 'negation' || role === 'ask' ? 'stay' : begin('question');
}

// "Which hip is it that hurts": the "which" asks already, and not yet after anything.
const isOfWhich = ({ mood, pieces }: Draft, tokens: readonly Token[]): boolean =>
  mood === 'question' &&
  tokens[pieces[0]?.from ?? -1]?.word === 'which' &&
  !pieces.some(({ role }) => role === 'finding' || role === 'csm');

// "Big breath for me does that hurt your chest": what was told is told whole.
const asksOfFelt = (pieces: readonly Piece[], i: number, draft: Draft): boolean =>
  pieces[i + 1]?.role === 'finding' &&
  !draft.pieces.some((one) => marked(one, 'tell-if') || marked(one, 'mood', 'supposing'));

const isJoined = (before: Piece | undefined): boolean => before !== undefined && isJoin(before);

const asksToEnd = (tokens: readonly Token[], { from }: Piece): boolean =>
  tokens.slice(from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause === 'ask';

// "Did not give any oxygen" asks nobody, unless a person follows ("did not you fall") or a question mark stands at its end.
function isDenial(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, not, next] = [pieces[i], pieces[i + 1], pieces[i + 2]];
  if (piece === undefined || not === undefined || next === undefined) return false;
  const bare = piece.weak && piece.to - piece.from === 1 && not.role === 'negation' && not.weak;
  // "Doesn't his left knee look swollen": what it is said of stands behind the verb.
  if (next.role === 'site' || next.role === 'side' || isSmall(next, 'owner')) return false;
  const asks = tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause;
  return bare && !isSmall(next, 'person') && asks !== 'ask';
}

// "The pulse in the left foot is there": after its subject, with no pause between, "is there" asks nothing. A question mark at
// the end of the sentence says otherwise.
function isSaidThere(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece === undefined || before === undefined || isPaused(tokens, before)) return false;
  if (
    !marked(piece, 'state', 'there') ||
    !(before.role === 'site' || before.role === 'csm' || before.role === 'side')
  )
    return false;
  return tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';
}

// "The left foot is the cold one", "it's the wrist that is what hurts": behind its subject an "is the" tells what that is.
function isWhatItIs(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || before === undefined || next === undefined || isPaused(tokens, before))
    return false;
  const said = saidIn(tokens, piece.from, piece.to);
  const isThe =
    /^(is|are) the$/.test(said) && (before.role === 'site' || before.role === 'side') && !isAskedOf(next);
  const isWhat = /^what (is|are)$/.test(said) && isSmall(before, 'link') && next.role === 'finding';
  return (isThe || isWhat) && !asksToEnd(tokens, piece);
}

// "Left hand is the wrist okay", "left foot is the sensation normal": another thing is asked after.
const isAskedOf = (next: Piece): boolean =>
  next.role === 'site' ||
  next.role === 'side' ||
  (next.role === 'finding' && !isLikely(next, 'adj')) ||
  (next.role === 'csm' && !marked(next, 'csm-warmth'));

// "He can't do it with the right", "wants to have it looked at": the verb of what is told.
function isBehindModal(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece === undefined || before === undefined || isPaused(tokens, before)) return false;
  const said = tokens.slice(Math.max(0, before.to - 2), before.to).map(({ word }) => word);
  return /^(do|have|be)$/.test(tokens[piece.from]?.word ?? '') && MODAL.test(said.join(' '));
}

// "Thumb to little finger, does that on the right": with nothing to ask after, that is what somebody does.
function isDone(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || next?.role !== 'side') return false;
  const words = tokens.slice(piece.from, piece.to).map(({ word }) => word);
  if (!/^does (that|it|this|so)$/.test(words.join(' '))) return false;
  return tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';
}

const MODAL = /(^| )(can|could|will|would|should|might|must|to|does|did|do)( not)?$/;

// "That is the left, not the right" points and does not ask.
function isPointed(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [before, piece] = [pieces[i - 1], pieces[i]];
  if (piece === undefined || before === undefined || isPaused(tokens, before)) return false;
  if (!POINTING.has(tokens[before.to - 1]?.word ?? '') || !/^(is|are)$/.test(tokens[piece.from]?.word ?? ''))
    return false;
  return tokens.slice(piece.from).find(({ pause }) => pause === 'ask' || pause === 'end')?.pause !== 'ask';
}

// "His hip is he says sore."
const isSaidBy = ({ to }: Piece, tokens: readonly Token[]): boolean =>
  /^(he|she)$/.test(tokens[to - 1]?.word ?? '') &&
  /^(says|said|reckons|thinks|feels|claims)$/.test(tokens[to]?.word ?? '');

const POINTING: ReadonlySet<string> = new Set(['that', 'this', 'it', 'these', 'those', 'they', 'he', 'she']);

// "We did not give any oxygen": "any" goes with the "not" before it.
const isDeniedAny = (piece: Piece, draft: Draft): boolean =>
  piece.weak &&
  (isSmall(piece, 'article') || isSmall(piece, 'word')) &&
  draft.mood === 'statement' &&
  draft.pieces.some(
    (one) => (one.role === 'negation' || marked(one, 'short')) && marked(one, 'negation', 'before'),
  );
