// Questions by the order of their words alone: "is left knee swollen", "are both hands numb", "was his arm weak". A verb that opens what
// is said, with what it is said of behind it, asks.

import { isLikely, isSmall, marked, type Piece } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import { begin, type Place, type Turn } from './place.ts';

const BEING = /^(is|are|was|were)$/;
const HAVING = /^(has|have|had)$/;
// What goes on with "has his nose".
const BEEN = /^(been|gone|got|had|started|stopped|become|come|felt)$/;

/** Begins a question at a verb that stands before its subject. */
export function inverted({ piece, pieces, i, tokens, full, draft }: Place): Turn | null {
  if (draft.mood !== 'statement' || full || !draft.pieces.every(isLead)) return null;
  const verb = saidIn(tokens, piece.from, piece.to);
  // "Isn't he bleeding from the ear".
  if (marked(piece, 'tag') && DENIED.test(verb) && pieces[i + 1] !== undefined && !isPaused(tokens, piece))
    return begin('question');
  const next = pieces[i + 1];
  // "Have I broken it", "am I bleeding": so asks who lies there.
  if (isOfOneself(verb, next, tokens)) return begin('question');
  if (!BEING.test(verb) && !HAVING.test(verb)) return null;
  const isDenied = next !== undefined && saidIn(tokens, next.from, next.to) === 'not';
  const from = i + (isDenied ? 2 : 1);
  const person = pieces[from];
  if (person !== undefined && PERSON.test(saidIn(tokens, person.from, person.to))) return begin('question');
  const subject = placeAt(pieces, from, tokens);
  if (subject === null) return null;
  const rest = pieces.slice(from + subject, from + subject + FAR);
  const asks = BEING.test(verb)
    ? isPredicate(rest)
    : rest.some((one) => BEEN.test(tokens[one.from]?.word ?? ''));
  return asks ? begin('question') : null;
}

const isOfOneself = (verb: string, next: Piece | undefined, tokens: readonly Token[]): boolean =>
  /^(am|have)$/.test(verb) && next !== undefined && saidIn(tokens, next.from, next.to) === 'i';

const DENIED = /^\w+ not (he|she|they|it|you)$/;
const FAR = 4;

const isLead = (piece: Piece): boolean =>
  piece.role === 'talk' || (piece.role === 'small' && !isSmall(piece, 'person')) || isLikely(piece, 'soft');

/** How many pieces from `at` on are a place with what tells whose or which it is; null where there is none. */
function placeAt(pieces: readonly Piece[], at: number, tokens: readonly Token[]): number | null {
  for (let k = at; k < Math.min(pieces.length, at + FAR); k++) {
    const piece = pieces[k] as Piece;
    if (piece.role === 'site') return k - at + 1;
    const isWhose =
      piece.role === 'side' || isSmall(piece, 'article') || EACH.test(saidIn(tokens, piece.from, piece.to));
    if (!isWhose || isPaused(tokens, piece)) return null;
  }
  return null;
}

const PERSON = /^(he|she|they|we|you|(the )?patient|casualty)$/;
const EACH = /^(one|both|either|all|each|of)$/;

// "Is left knee pain" names what is there; "is left knee sore" asks how it is.
function isPredicate(rest: readonly Piece[]): boolean {
  const said = rest.find(
    ({ role }) => role !== 'small' && role !== 'attribute' && role !== 'side' && role !== 'site',
  );
  if (said === undefined) return false;
  return (
    said.role === 'csm' ||
    said.role === 'vital' ||
    said.role === 'state' ||
    (said.role === 'finding' && isLikely(said, 'adj') && !marked(said, 'nothing'))
  );
}

/** "Trouble is he can't feel it", "all I know is she fell": with a verb of his own behind him nobody asks. */
export function isSaidOf(pieces: readonly Piece[], i: number, tokens: readonly Token[]): boolean {
  const [piece, next] = pieces.slice(i);
  if (piece === undefined || next === undefined || isPaused(tokens, piece)) return false;
  if (!/^(is|was) (he|she|they)$/.test(saidIn(tokens, piece.from, piece.to))) return false;
  const before = pieces[i - 1];
  const isOfThing =
    before !== undefined &&
    !isPaused(tokens, before) &&
    (before.role === 'unknown' || isSmall(before, 'thing'));
  return isOfThing || FINITE.test(tokens[next.from]?.word ?? '') || marked(next, 'topic', 'mechanism');
}

const FINITE = /^(is|are|was|has|had|have|can|could|will|would|does|did|do|says|thinks|feels|keeps)$/;
