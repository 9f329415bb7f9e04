// Questions and answers in one breath: "does your left heel hurt yes it does and the right heel no", "tender over the breastbone no
// and the ribs yes". A place behind an answer that has an answer of its own behind it is asked after.

import { isJoin } from '../compose/sayings/index.ts';
import { startsWithPreposition } from '../compose/sites/site-phrase.ts';
import { isLikely, isSmall, marked, type Piece, type Role, readingOf } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import type { Token } from '../token.ts';
import { answers, isCutShort } from './answers.ts';
import type { Draft } from './draft.ts';
import { become, begin, isAnswer, type Place, type Turn } from './place.ts';

/** Begins a question at a place within an answer, where an answer of that place follows. */
export function askedOn({ pieces, i, tokens, draft }: Place): Turn | null {
  if (draft.mood !== 'answer' || !draft.pieces.some((piece) => isOwnAnswer(piece))) return null;
  return opensAnswered(pieces, i, tokens, draft) ? begin('question') : null;
}

/** True for "and the right one" as a question so far: though no place is named, a yes or a no behind it answers. */
export const asksOtherSide = ({ mood, pieces: [first, ...rest] }: Draft): boolean =>
  mood === 'question' &&
  first !== undefined &&
  isSmall(first, 'join') &&
  rest.some(({ role }) => role === 'side') &&
  rest.every(isOfPlace);

/** "Tender over the sternum no okay and the left ribs yes": without its sign the question is told by the answers. */
export function answeredInBreath({ pieces, i, tokens, draft }: Place): Turn | null {
  const [piece, answer] = [pieces[i], pieces[i + 1]];
  if (draft.mood !== 'statement' || piece === undefined || answer === undefined || isPaused(tokens, piece))
    return null;
  const said = [...draft.pieces, piece].filter(({ role }) => role !== 'talk');
  const finding = said.findIndex(({ role }) => role === 'finding');
  // "Left knee tender no" tells first of all of a knee.
  if (!said.slice(0, Math.max(finding, 0)).every((one) => one.role === 'small' && !isJoin(one))) return null;
  const place = said.slice(finding + 1);
  if (!isThere(said[finding]) || !place.some(isSite) || !place.every(isOfPlace)) return null;
  if (place.some(isJoin)) return null;
  // "Swelling of the left ankle, right ankle none": of the one it is told, and the answer is of the other.
  if (namesAnother(place, tokens)) return null;
  if (!isOwnAnswer(answer) || !isWhole(pieces, i + 1, tokens)) return null;
  const end = endOfAnswer(pieces, i + 1);
  const next = pieces[end];
  // "Sore over the hip no" denies it; a "yes" says nothing that was not told.
  const asksNext = pieces.slice(end).find((one) => !isJoin(one) && one.role !== 'talk')?.role;
  if (asksNext === 'asking' || asksNext === 'ask') return become('question');
  if (next === undefined || isPaused(tokens, pieces[end - 1] as Piece))
    return marked(answer, 'answer', 'no') ? become('question') : null;
  return opensAnswered(pieces, end, tokens, null) ? become('question') : null;
}

// A place behind a place, with a side of its own and nothing that leads to it.
const namesAnother = (place: readonly Piece[], tokens: readonly Token[]): boolean =>
  place.some(
    (piece, k) =>
      piece.role === 'side' &&
      !startsWithPreposition([piece], tokens) &&
      !(place[k - 1] !== undefined && isSmall(place[k - 1] as Piece, 'preposition')) &&
      place.slice(0, k).some(isSite) &&
      place.slice(k + 1).some(isSite),
  );

const isThere = (piece: Piece | undefined): boolean =>
  piece !== undefined && !piece.weak && !marked(piece, 'present', 'false');

const isSite = ({ role }: Piece): boolean => role === 'site';

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part']);

const isOfPlace = (piece: Piece): boolean =>
  PLACE.has(piece.role) || piece.role === 'talk' || (piece.role === 'small' && !marked(piece, 'answer'));

/** True where a place begins at piece `i` that has its own answer; `draft` is the answer before it, where there is one. */
function opensAnswered(
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
  draft: Draft | null,
): boolean {
  const first = pieces[i];
  if (first === undefined || !(PLACE.has(first.role) || isLead(first))) return false;
  const length = pieces.slice(i).findIndex((piece) => !isOfPlace(piece) || marked(piece, 'choice'));
  if (length < 1) return false;
  const place = pieces.slice(i, i + length);
  const answer = pieces[i + length];
  // "Yes my knee yes", "yes in the left one yes": the patient's own words say where it is.
  if (place.some((piece) => isSmall(piece, 'mine'))) return false;
  const isJoined = place.some((piece) => isSmall(piece, 'join'));
  // "No right ankle yes", "no left knee no": of that place, though no "and" stands between them.
  const isOther = draft === null || isNo(answer) || isNo(draft.pieces.findLast(isOwnAnswer));
  const names = place.some(isSite) || (isJoined && place.some(({ role }) => role === 'side'));
  if (!names || !(isJoined || isOther)) return false;
  return answer !== undefined && isOwnAnswer(answer) && isWhole(pieces, i + length, tokens);
}

const isLead = (piece: Piece): boolean =>
  isSmall(piece, 'join') || isSmall(piece, 'article') || isSmall(piece, 'you');

const isOwnAnswer = (piece: Piece): boolean =>
  piece.role === 'answer' &&
  isAnswer(piece) &&
  !marked(piece, 'pointed') &&
  !marked(piece, 'answer', 'unsure');

const isNo = (piece: Piece | undefined): boolean => piece !== undefined && marked(piece, 'answer', 'no');

// "Yes and the left ankle a bit swollen", "and the ribs no bruising": what follows is what the word is said of.
function isWhole(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  if (piece === undefined || isCutShort(piece, tokens) || !answers(pieces, i, tokens)) return false;
  if (next === undefined || isPaused(tokens, piece)) return true;
  const says = next.role === 'attribute' || (next.role === 'finding' && !isCourtesy(next));
  return readingOf(piece, 'negation') !== null || !says;
}

const isCourtesy = (piece: Piece): boolean =>
  marked(piece, 'exclaim') || (piece.weak && isLikely(piece, 'soft'));

/** Past the answer at `i` and the courtesies behind it. */
function endOfAnswer(pieces: readonly Piece[], i: number): number {
  let end = i + 1;
  for (let piece = pieces[end]; piece !== undefined; piece = pieces[++end])
    if (piece.role !== 'talk' && !isCourtesy(piece) && !isOwnAnswer(piece)) break;
  return end;
}
