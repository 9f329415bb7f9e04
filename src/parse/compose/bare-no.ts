// A bare "no" after words that only named a place ("pressing on the sternum", "no") is kept with them: of what it is a no nobody said.

import type { Clause } from '../clauses/clause.ts';
import { marked, type Piece, type Role } from '../pieces/piece.ts';
import { type Span, spanned } from '../span.ts';
import { saidIn } from '../token.ts';
import { callsNormal } from './exam/called-fine.ts';
import { isChatter } from './light.ts';
import { isPlaced, state, type Talk, textOf } from './talk.ts';
import { isHeard } from './unheard-denials.ts';

/** True where an utterance named places to look at, and said and asked nothing of them. */
export const lookedOnly = ({ frames, clauses }: Talk): boolean =>
  frames.length > 0 &&
  frames.every((frame) => frame.frame === 'statement' && frame.statement.kind === 'visit') &&
  clauses.every(({ mood }) => mood === 'statement' || mood === 'instruction');

/** Notes "pressing on the sternum: no" where that is all this utterance says; `looked` is the one before. */
export function noteBareNo(talk: Talk, looked: string | null): void {
  const pieces = talk.clauses.flatMap((clause) => clause.pieces);
  if (looked === null || talk.frames.length > 0) return;
  if (!pieces.some(isPlain) || !pieces.every((piece) => isPlain(piece) || isChatter(piece))) return;
  const text = `${looked}: ${talk.utterance.text}`;
  state(talk, [{ statement: { kind: 'note', text }, from: 0, to: talk.tokens.length }]);
}

/** "Can you feel this foot, yes, and that one, no": which one is meant nobody said, and the "no" is kept. */
export function notePointedNo(talk: Talk): void {
  const { tokens } = talk;
  for (const piece of talk.clauses.flatMap(({ pieces }) => pieces)) {
    const from = Math.max(0, piece.from - 2);
    if (!isPlain(piece) || isPlaced(talk, piece) || !POINTED.test(saidIn(tokens, from, piece.from))) continue;
    const text = textOf(talk, from, piece.to);
    const isKept = talk.frames.some(
      (frame) =>
        frame.frame === 'statement' && frame.statement.kind === 'note' && frame.statement.text.includes(text),
    );
    if (isKept) continue;
    state(talk, [{ statement: { kind: 'note', text }, from, to: piece.to }]);
  }
}

const POINTED = /\b(this|that|these|those|other)( ones?)?$/;

const PLACE: ReadonlySet<Role> = new Set(['site', 'side', 'part', 'small']);

/** "Elbow, no. Shoulder, no.", "ankle? Fine.": the words from a place to what is all that was said behind it, or null. */
export function answeredPlace(talk: Talk, place: Clause | undefined, clause: Clause): Span | null {
  if (place === undefined || (place.mood !== 'statement' && place.mood !== 'question')) return null;
  const [first] = place.pieces;
  const isPlace =
    place.pieces.some(({ role }) => role === 'site') && place.pieces.every(({ role }) => PLACE.has(role));
  if (!isPlace || first === undefined || isHeard(talk, first)) return null;
  const answers = (piece: Piece): boolean => isNo(piece) || (place.mood === 'question' && callsNormal(piece));
  const says = clause.pieces.some((piece) => answers(piece) && !isHeard(talk, piece));
  const isAll = clause.pieces.every((piece) => isNo(piece) || callsNormal(piece) || isChatter(piece));
  return says && isAll ? { from: spanned(place.pieces).from, to: spanned(clause.pieces).to } : null;
}

const isPlain = (piece: Piece): boolean => marked(piece, 'plain');

// "Left hip: none."
const isNo = (piece: Piece): boolean =>
  isPlain(piece) || (piece.role === 'answer' && marked(piece, 'negation', 'after'));
