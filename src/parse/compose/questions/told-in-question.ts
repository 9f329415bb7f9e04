// "Sats are ninety four, okay?", "pulse ninety, right?": a reading that only the end of what is said turns into a question was told, and is
// asked about.

import type { Clause } from '../../clauses/clause.ts';
import type { StatementFrame } from '../../frame.ts';
import type { Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { StateAll } from '../corrections/dry-run.ts';
import { isReading } from '../sayings/index.ts';
import type { Talk } from '../talk.ts';

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
  for (let at = before; at < talk.frames.length; at++) {
    const frame = talk.frames[at];
    if (frame?.frame === 'statement' && frame.statement.kind === 'vital') talk.frames[at] = asked(frame);
  }
  return talk.frames.length > before ? pieces.slice(told.length) : pieces;
}

const asked = (frame: StatementFrame): StatementFrame => ({ ...frame, doubt: [...frame.doubt, ASKED] });
