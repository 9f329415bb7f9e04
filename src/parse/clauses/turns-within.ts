// Turns that words within a breath make: back to the patient, to what is seen, to what is told after all or explained away.

import { isLikely, marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { moodOf } from './mood-words.ts';
import { begin, type Place, type Turn } from './place.ts';

/** "It looks a bit knobbly": the "a bit" is of how it looks, and answers nothing. */
export const isOfLook = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  const before = tokens[(piece?.from ?? 0) - 1];
  const looks = before?.pause === '' && /^(looks|look|feels|seems|sounds)$/.test(before.word);
  return looks && next !== undefined && piece !== undefined && !isPaused(tokens, piece);
};

/** "No allergies, wait, penicillin": what stands behind says after all what was denied. */
export function tellsAfterAll(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [denied, piece, ...rest] = pieces.slice(i - 1);
  if (i < 1 || denied === undefined || piece === undefined || rest.length === 0) return false;
  if (!marked(denied, 'denied') || !isPaused(tokens, denied)) return false;
  return rest.every(({ role }) => role === 'unknown' || role === 'care' || role === 'finding');
}

/** "Pupils unequal, no, that was the shadow": with nothing but words that nobody knows, to the end of what is said. */
export function explains(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, ...rest] = pieces.slice(i);
  if (piece === undefined || !(marked(piece, 'plain') || marked(piece, 'correct', 'soft'))) return false;
  const words = saidIn(tokens, piece.from, pieces.at(-1)?.to ?? piece.to);
  return (
    /^(no|wait|sorry|actually|hang|hold|oh)( \S+)?( \S+)? (that|it) (is|was) /.test(words) &&
    rest.some(({ role }) => role === 'unknown') &&
    rest.every(({ role }) => role === 'unknown' || role === 'small' || role === 'asking')
  );
}

const SEEN = /^(oh|ooh|ah|aha|there is)$/;

/** "Hold still while I get this sock off, and oh, that right ankle is puffed up": what is seen then is told to nobody. */
export function seenThen({ pieces, i, tokens, draft }: Place): Turn | null {
  const piece = pieces[i];
  if (draft.mood !== 'instruction' || piece === undefined || !SEEN.test(saidIn(tokens, piece.from, piece.to)))
    return null;
  const end = pieces.findIndex((one, k) => k >= i && /^(end|ask)$/.test(tokens[one.to - 1]?.pause ?? ''));
  const rest = pieces.slice(i + 1, end < 0 ? pieces.length : end + 1);
  const finds = rest.some(({ role, weak }) => role === 'finding' && !weak);
  return finds && !rest.some(({ role, weak }) => role === 'ask' || (role === 'asking' && !weak))
    ? begin('statement')
    : null;
}

/** "His mate rolled an ankle, but this fella's got a cut on the hand": of the patient again. */
export function backToPatient({ pieces, i, tokens, draft }: Place): Turn | null {
  const piece = pieces[i];
  if (draft.mood !== 'others' || piece === undefined || !marked(piece, 'contrast')) return null;
  return THIS_ONE.test(saidIn(tokens, piece.to, Math.min(piece.to + 2, tokens.length)))
    ? begin('statement')
    : null;
}

const THIS_ONE =
  /^(this|our|my) (fella|fellow|guy|one|lad|lass|girl|boy|kid|patient|casualty|bloke|chap|man|woman|lady)$/;

/** "Is his pulse strong, resps twenty": a sign behind a whole question is told. */
export function reading({ piece, asked, tokens }: Place): Turn | null {
  // "What's his usual pressure": the sign's name is part of the question.
  const isNamed = marked(piece, 'heading') && /^(usual|normal)$/.test(tokens[piece.from - 1]?.word ?? '');
  return asked && piece.role === 'vital' && !isNamed ? begin('statement') : null;
}

/** "How old are you?" "I'm forty two, my wife is forty": the age is told, and what follows is of somebody else. */
export function besideAge({ piece, pieces, i, waiting, draft }: Place): Turn | null {
  const before = pieces[i - 1];
  const isTold = before?.role === 'history' && isLikely(before, 'topic', 'age');
  return waiting && isTold && draft.mood === 'statement' && moodOf(piece) === 'others'
    ? begin('others')
    : null;
}

/** "Which elbow hurts?" "The right one, I banged it": the side answers, and what follows is told by itself. */
export function besideSide({ piece, waiting, draft }: Place): Turn | null {
  const isSide =
    draft.pieces.some(({ role }) => role === 'side') &&
    draft.pieces.every(({ role }) => role === 'side' || role === 'small' || role === 'talk');
  return waiting && isSide && draft.mood === 'statement' && moodOf(piece) === 'own' ? begin('own') : null;
}
