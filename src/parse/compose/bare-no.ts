// A bare "no" after words that only named a place ("pressing on the sternum", "no") is kept with them: of what it is a no nobody said.

import { marked, type Piece } from '../pieces/piece.ts';
import { state, type Talk } from './talk.ts';

/** True where an utterance named places to look at, and said and asked nothing of them. */
export const lookedOnly = ({ frames, clauses }: Talk): boolean =>
  frames.length > 0 &&
  frames.every((frame) => frame.frame === 'statement' && frame.statement.kind === 'visit') &&
  clauses.every(({ mood }) => mood === 'statement' || mood === 'instruction');

/** Notes "pressing on the sternum: no" where that is all this utterance says; `looked` is the one before. */
export function noteBareNo(talk: Talk, looked: string | null): void {
  const pieces = talk.clauses.flatMap((clause) => clause.pieces);
  if (looked === null || talk.frames.length > 0) return;
  if (!pieces.some(isPlain) || !pieces.every((piece) => isPlain(piece) || isPassed(piece))) return;
  const text = `${looked}: ${talk.utterance.text}`;
  state(talk, [{ statement: { kind: 'note', text }, from: 0, to: talk.tokens.length }]);
}

const isPlain = (piece: Piece): boolean => marked(piece, 'plain');

const isPassed = ({ role }: Piece): boolean => role === 'small' || role === 'talk';
