// The moods that colour the clause they stand in: somebody else's, the examiner's own, long ago, or put off till later.

import { isReading } from '../compose/sayings/index.ts';
import { isSmall, likelyTag, marked, type Piece, type Role } from '../pieces/piece.ts';
import type { Token } from '../token.ts';
import type { Mood } from './clause.ts';
import { moodOf } from './mood-words.ts';

const STATING: ReadonlySet<Role> = new Set(['finding', 'csm', 'care', 'vital', 'history', 'same']);

/** The mood that piece `i` gives to a statement whose pieces so far are `said`, or null. */
export function colour(
  piece: Piece,
  said: readonly Piece[],
  pieces: readonly Piece[],
  i: number,
  tokens: readonly Token[],
): Mood | null {
  const mood = moodOf(piece);
  // "History of a stent four years ago": a past that is told as such is not talk of long ago.
  if (mood === 'past' && said.some((one) => OF_PAST.has(likelyTag(one, 'topic') ?? ''))) return null;
  // "Puncture marks where the dog had you": who did it is told of the patient.
  if (mood === 'others' && isDoer(pieces, i, tokens) && said.some(({ role }) => STATING.has(role)))
    return null;
  // "Splint padded with my own fleece", "sling made from his brother's scarf": what it was done with.
  if (
    (mood === 'own' || mood === 'others') &&
    isMeans(pieces, i, tokens) &&
    said.some(({ role }) => role === 'care')
  )
    return null;
  // "Your pressure is one eighteen over seventy six, which is better than mine": the reading was the patient's.
  const isOwn = mood === 'own' && said.some(isReading);
  if (isOwn) return null;
  if (mood === 'others' || mood === 'own' || mood === 'past') return mood;
  const putsOff = mood === 'plan' || isPromised(pieces, i) || marked(piece, 'mood', 'later');
  if (putsOff && namesOnly(said)) return 'plan';
  return calls(pieces, i) ? 'others' : null;
}

// "Where the dog had you", "from the horse".
const isDoer = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const before = pieces[i - 1];
  return before !== undefined && /^(where|from|by)$/.test(tokens[before.to - 1]?.word ?? '');
};

// "Wrapped up with his brother, who has a cut hand": what is told behind is of the brother.
const isMeans = (pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean => {
  const before = pieces[i - 1];
  if (before === undefined || !/^(with|using|from|in|under)$/.test(tokens[before.to - 1]?.word ?? ''))
    return false;
  return pieces.slice(i + 1).every(({ role }) => role === 'unknown' || role === 'small' || role === 'talk');
};

// What is told of these lasts, however long ago it began: "started a new tablet last week".
const OF_PAST: ReadonlySet<string> = new Set(['past-history', 'medications', 'allergies', 'onset', 'time']);

const namesOnly = (said: readonly Piece[]): boolean =>
  said.some(({ role }) => role === 'site') && !said.some(({ role }) => STATING.has(role));

function isPromised(pieces: readonly Piece[], i: number): boolean {
  const piece = pieces[i];
  if (piece === undefined || !marked(piece, 'future')) return false;
  const next = pieces.slice(i + 1).find(({ role }) => role !== 'small');
  return next?.role !== 'site' && next?.role !== 'side';
}

// "Bram you're bleeding": a name that is called before "you" may be anybody's; what is said to it is kept in words.
function calls(pieces: readonly Piece[], i: number): boolean {
  const [piece, next] = [pieces[i], pieces[i + 1]];
  const called = piece?.role === 'unknown' && i === 0;
  return called && next !== undefined && (isSmall(next, 'you') || marked(next, 'you'));
}
