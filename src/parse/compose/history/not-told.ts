// Words of the history that tell none: they are denied, or said of care, of a swelling or of a limb's check.

import { isLikely, isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Reach } from '../negations/reach.ts';
import type { Talk } from '../talk.ts';

/** True for "the tourniquet came off": said of care it tells how nobody was hurt. */
export const isComingOff = (pieces: readonly Piece[], i: number): boolean => {
  const piece = pieces[i];
  return (
    piece?.role === 'history' &&
    marked(piece, 'removal', 'after') &&
    pieces.slice(0, i).some(({ role }) => role === 'care')
  );
};

/** True for "swelling of the lips going down": what is no pain goes nowhere, it changes. */
export const isOfSwelling = (pieces: readonly Piece[], i: number): boolean => {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'topic', 'radiation')) return false;
  const found = pieces.slice(0, i).filter(({ role }) => role === 'finding');
  return found.length > 0 && found.every((one) => SHRINKS.some((finding) => marked(one, 'finding', finding)));
};

const SHRINKS = ['swelling', 'rash', 'bleeding', 'contusion'];

/** True for "foot pulse better after": said of a check of a limb it tells of no pain. */
export const isOfCheck = ({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean => {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || !marked(piece, 'topic', 'provocation')) return false;
  // "Arms are weak, worse on the left": a side is nothing that makes it worse.
  if (next?.role === 'side' && !isPaused(tokens, piece)) return true;
  return before?.role === 'csm' || before?.role === 'vital';
};

/**
 * True where the history at `i` is denied: a "no" before a list reaches its names ("no allergies, medications or history"), and
 * what is told in words only where it stands straight before them.
 */
export function isDenied(talk: Talk, pieces: readonly Piece[], i: number, reach: Reach): boolean {
  const [piece, before] = [pieces[i], pieces[i - 1]];
  if (piece === undefined) return false;
  // "Not dizzy or nauseous".
  const [or, one] = [before, pieces[i - 2]];
  if (or !== undefined && isSmall(or, 'or') && one?.role === 'history' && !isSmall(or, 'before'))
    return marked(one, 'denied') || isDenied(talk, pieces, i - 2, reach);
  // "Takes nothing, last ate at noon": what was denied was told by itself.
  if (before?.role === 'history' && marked(piece, 'topic', 'last-intake')) return false;
  const straight = before !== undefined && marked(before, 'negation', 'before');
  const isName = isLikely(piece, 'noun') || isLikely(piece, 'named');
  if (hasOwnText(talk, pieces, i)) return false;
  // "No allergies takes ramipril last ate at ten": a meal is denied by its own words only.
  if (!straight && marked(piece, 'topic', 'last-intake')) return false;
  // "Wasn't knocked out, remembers it all": past a pause what has a verb of its own is told.
  if (!isName && before !== undefined && isPaused(talk.tokens, before)) return false;
  if (!straight && isOfPlace(pieces.slice(0, i), piece)) return false;
  const adjective = !straight && !isName;
  if (reach.polarity(piece.from, adjective) !== 'negated') return false;
  // "Worse on walking, none at rest": past a pause a "none" is of something else.
  const no = reach.kind(piece.from, adjective) === 'after' ? reach.span(piece.from, adjective) : null;
  // "Had this once before and it went away": it was so, and then it passed.
  if (no !== null && /^(it|that|they|this)$/.test(talk.tokens[no.from - 1]?.word ?? '')) return false;
  if (no === null || talk.tokens.slice(piece.from, no.from).every(({ pause }) => pause === '')) return true;
  // "Headache, none": a symptom by its name, and nothing else in the breath of the "none".
  const isWhole = no.to === talk.tokens.length || talk.tokens[no.to - 1]?.pause !== '';
  return isWhole && piece.to === no.from && marked(piece, 'topic', 'symptoms');
}

// "His hips don't hurt, takes metoprolol": what a place is not, or what is not there, says nothing of what somebody takes.
function isOfPlace(before: readonly Piece[], piece: Piece): boolean {
  const denial = before.findLastIndex((one) => one.role !== 'finding' && marked(one, 'negation', 'before'));
  const between = before.slice(denial + 1);
  const isSaid = between.some(({ role }) => role === 'finding' || role === 'csm' || role === 'history');
  const isSubject = before.slice(0, denial).some(({ role }) => role === 'site');
  const isOwn = OWN.some((topic) => isLikely(piece, 'topic', topic)) && !isLikely(piece, 'noun');
  const isOther = isOwn || isLikely(piece, 'topic', 'last-intake');
  const isNamed = before.some((one) => one.role === 'history' && marked(one, 'denied'));
  return (denial >= 0 && isSaid && (isSubject || isOther)) || (isNamed && isOther);
}

const OWN = ['allergies', 'medications', 'mechanism', 'last-intake'];
// "No allergies, meds ramipril": what has words of its own is told.
function hasOwnText({ tokens }: Talk, pieces: readonly Piece[], i: number): boolean {
  const [before, piece, next] = [pieces[i - 1], pieces[i], pieces[i + 1]];
  if (piece === undefined || next?.role !== 'unknown' || !isLikely(piece, 'noun')) return false;
  return before?.role === 'history' && !isPaused(tokens, piece);
}
