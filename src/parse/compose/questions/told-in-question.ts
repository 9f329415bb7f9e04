// "Sats are ninety four, okay?", "that wrist is swollen, isn't it": what only the end of it turns into a question was told, and is asked about.

import type { Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { StatementFrame } from '../../frame.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isTag } from '../../pieces/tag.ts';
import { isPaused } from '../../span.ts';
import { turnAllSaid } from '../corrections/answer-turned.ts';
import { type StateAll, wouldSay } from '../corrections/dry-run.ts';
import { isLight } from '../light.ts';
import { isReading } from '../sayings/index.ts';
import { bear, place, type Talk } from '../talk.ts';
import { answerWord } from './answer-word.ts';

const ASKED = 'It was said as a question: is it so?';

/** States the readings of a question that nothing opens; returns the pieces that still ask. */
export function tellReadings(talk: Talk, clause: Clause, stateAll: StateAll): readonly Piece[] {
  const { pieces } = clause;
  const last = pieces.findLastIndex(isReading);
  if (last < 0 || pieces.slice(0, last).some(({ role }) => role === 'asking' || role === 'ask'))
    return pieces;
  const end = pieces.findIndex((piece, k) => k >= last && isPaused(talk.tokens, piece));
  const told = end < 0 ? pieces : pieces.slice(0, end + 1);
  const before = talk.frames.length;
  stateAll(talk, told);
  doubtFrom(talk, before, ({ kind }) => kind === 'vital');
  return talk.frames.length > before ? pieces.slice(told.length) : pieces;
}

/** What was told so is asked about. */
export function doubtFrom(talk: Talk, first: number, isMeant: (statement: Statement) => boolean): void {
  for (let at = first; at < talk.frames.length; at++) {
    const frame = talk.frames[at];
    if (frame?.frame === 'statement' && isMeant(frame.statement)) talk.frames[at] = asked(frame);
  }
}

/** States what is found in a question that only an "isn't it" makes one; returns the pieces behind it, or all where there is none. */
export function tellFound(talk: Talk, clause: Clause, stateAll: StateAll): readonly Piece[] {
  const { pieces } = clause;
  const tag = pieces.findIndex((piece, k) => k > 0 && isTag(piece, talk.tokens));
  const told = pieces.slice(0, Math.max(tag, 0));
  if (told.some(({ role }) => role === 'ask') || told.some((piece) => piece.role === 'asking' && !piece.weak))
    return pieces;
  const would = told.length === 0 ? [] : wouldSay({ ...talk }, told, stateAll);
  const isFound = would.some(({ statement }) => statement.kind === 'finding' && statement.present);
  if (!isFound) return pieces;
  const before = talk.frames.length;
  stateAll(talk, told);
  doubtFrom(talk, before, (one) => one.kind === 'finding' && one.present);
  place(talk, pieces[tag] as Piece);
  bear(talk, { asked: null, isToldAsking: true, asking: true });
  return pieces.slice(tag + 1);
}

/** Takes a yes or a no for the answer to what was told so; false where it answers something else. */
export function answersTold(talk: Talk, clause: Clause): boolean {
  const { isToldAsking, isSaidLast, asked: open } = talk.context;
  if (!isToldAsking || !isSaidLast || open !== null) return false;
  const answer = answerWord(clause);
  if (answer === null || answer.word === 'unsure' || !clause.pieces.every(isLight)) return false;
  if (answer.word === 'no') return turnAllSaid(talk, clause, 'no');
  place(talk, ...clause.pieces);
  bear(talk, { isToldAsking: false });
  return true;
}

const asked = (frame: StatementFrame): StatementFrame => ({ ...frame, doubt: [...frame.doubt, ASKED] });
