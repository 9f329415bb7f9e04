// "The lad who fell has a cut on his hand": where nobody else was spoken of, who is told from others by what happened to him may be the
// patient; it is stated, and whose it is is asked.

import type { Clause } from '../clauses/clause.ts';
import { moodOf } from '../clauses/mood-words.ts';
import { marked, type Piece } from '../pieces/piece.ts';
import { saidIn } from '../token.ts';
import { bear, place, type Talk } from './talk.ts';

const WHOSE = 'Was this said of the patient?';

/** Reads what such a clause says behind the words that tell who; false for any other clause. */
export function tellsByFall(talk: Talk, clause: Clause, read: (talk: Talk, clause: Clause) => void): boolean {
  if (clause.mood !== 'others') return false;
  const { pieces } = clause;
  const at = pieces.findIndex((piece) => moodOf(piece) === 'others');
  const [who, fell, ...rest] = pieces.slice(at);
  if (who === undefined || fell === undefined || !isByFall(talk, who, fell, rest) || !isFirst(pieces, at)) {
    bear(talk, { others: true });
    return false;
  }
  if (talk.context.others) return false;
  const before = talk.frames.length;
  place(talk, who);
  read(talk, { ...clause, mood: 'statement', pieces: [fell, ...rest] });
  for (let k = before; k < talk.frames.length; k++) {
    const frame = talk.frames[k];
    if (frame?.frame === 'statement' && frame.statement.kind !== 'note')
      talk.frames[k] = { ...frame, doubt: [...frame.doubt, WHOSE] };
  }
  return true;
}

const isFirst = (pieces: readonly Piece[], at: number): boolean =>
  pieces.slice(0, at).every(({ role }) => role === 'small' || role === 'talk');

// "Who hit you", "who fell over there", "who fell last year": somebody else, or another day.
const ELSE =
  /\b(you|me|us|him|them|i|we|there|yesterday|earlier|ago|last|had|was|were|other|another|also|too)\b/;

function isByFall({ tokens }: Talk, who: Piece, fell: Piece, rest: readonly Piece[]): boolean {
  if (!/ (who|that)$/.test(saidIn(tokens, who.from, who.to)) || !marked(fell, 'topic', 'mechanism'))
    return false;
  const words = saidIn(tokens, fell.from, rest.at(-1)?.to ?? fell.to);
  return !ELSE.test(words) && rest.every((piece) => moodOf(piece) === null);
}
