// Where words to the problem list and words that turn to another patient begin and end, so that ordinary talk is neither.

import { isSmall, type Piece, readingOf } from '../pieces/piece.ts';
import { pauseAfter, pauseBefore } from '../span.ts';
import type { Token } from '../token.ts';

type Tokens = readonly Token[];

const isStop = (pause: string): boolean => pause === 'end' || pause === 'ask';

/** The place of the first piece after the last pause of this kind before piece `i`. */
function afterPause(pieces: readonly Piece[], i: number, tokens: Tokens, stops: (pause: string) => boolean) {
  for (let at = i; at > 0; at--) {
    const piece = pieces[at];
    if (piece !== undefined && stops(pauseBefore(tokens, piece))) return at;
  }
  return 0;
}

/** True for words that may be said to the problem list or turn to another patient. Without one of them nothing does. */
export const mayAddress = (piece: Piece): boolean =>
  readingOf(piece, 'problems') !== null || readingOf(piece, 'patients') !== null;

const VERB = 'problems.verb';
const UNMEANT: ReadonlySet<string> = new Set(['negation', 'mood', 'asking', 'intention']);

/** A piece after which nothing is told to the tool: it asks, supposes, or denies. */
const isOpen = (piece: Piece): boolean =>
  UNMEANT.has(piece.role) && !isOpening(piece) && readingOf(piece, VERB) === null;

/** "Do not add…", "should we switch to…", "if you strike…": what comes next is not asked of the tool. */
const isUnmeant = (pieces: readonly Piece[], i: number): boolean =>
  pieces.slice(Math.max(0, i - 3), i).some((piece) => isOpen(piece) || isSmall(piece, 'person'));

export const ENDING = 'problems.ending';

/** What a name may be made of. */
const mayName = (piece: Piece): boolean =>
  NAMING.has(piece.role) || isSmall(piece, 'article') || isSmall(piece, 'preposition');
const NAMING: ReadonlySet<string> = new Set([
  'site',
  'side',
  'part',
  'finding',
  'attribute',
  'care',
  'unknown',
  'talk',
]);

/** The last piece of the run that piece `i` may name a problem in, where an ending closes it; null where none does. */
function endingAfter(pieces: readonly Piece[], i: number, tokens: Tokens): number | null {
  for (let at = i + 1; at < pieces.length; at++) {
    const piece = pieces[at];
    if (piece === undefined || isStop(pauseBefore(tokens, piece))) return null;
    if (readingOf(piece, ENDING) !== null) return at;
    // A verb nearer to the ending is the one that is meant.
    if (readingOf(piece, VERB) !== null || piece.role === 'problem') return null;
  }
  return null;
}

/** True where words to the problem list begin at piece `i`. */
export function beginsProblem(pieces: readonly Piece[], i: number, tokens: Tokens): boolean {
  const piece = pieces[i];
  if (piece === undefined || isUnmeant(pieces, i)) return false;
  if (piece.role === 'problem' && readingOf(piece, ENDING) === null) return true;
  const end = endingAfter(pieces, i, tokens);
  if (end === null) return false;
  const from = afterPause(pieces, end, tokens, (pause) => pause !== '');
  if (pieces.slice(from, i).some(isOpen)) return false;
  if (readingOf(piece, VERB) !== null) return true;
  // "The left wrist is the top problem": nothing says so before, so it begins where its part of the sentence does.
  return i === from && pieces.slice(i, end).every(mayName);
}

const isLight = (piece: Piece): boolean =>
  piece.role === 'small' || piece.role === 'talk' || piece.role === 'side' || piece.role === 'part';

/** True where the clause is whole before `next`: its ending was said, or a pause came after a name. */
export function isWholeProblem(said: readonly Piece[], next: Piece, tokens: Tokens): boolean {
  const last = said.at(-1);
  if (last === undefined) return false;
  if (said.length > 1 && readingOf(last, ENDING) !== null) return true;
  const named = said.slice(1).some((piece) => !isLight(piece));
  return named && pauseBefore(tokens, next) !== '';
}

const SWITCH = 'patients.switch';
const ALONE = 'patients.alone';

/** True where the words at piece `i` turn to another patient's record. */
export function turnsToPatient(pieces: readonly Piece[], i: number, tokens: Tokens): boolean {
  const piece = pieces[i];
  if (piece === undefined || isUnmeant(pieces, i)) return false;
  if (readingOf(piece, SWITCH) !== null) return true;
  if (readingOf(piece, ALONE) === null) return false;
  const from = afterPause(pieces, i, tokens, isStop);
  const before = pieces.slice(from, i);
  // "Patient two: pulse ninety" heads what follows.
  const ends = (pause: string) => isStop(pause) || pause === 'dash';
  const end = pieces.findIndex((each, at) => at >= i && ends(pauseAfter(tokens, each)));
  const after = pieces.slice(i + 1, end < 0 ? pieces.length : end + 1);
  return before.every(isOpening) && after.every(({ role }) => role === 'talk');
}

// "Okay, and now patient two."
function isOpening(piece: Piece): boolean {
  return (
    piece.role === 'talk' ||
    isSmall(piece, 'join') ||
    isSmall(piece, 'word') ||
    readingOf(piece, 'talk.opening') !== null
  );
}
