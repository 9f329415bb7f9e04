// States the history of a clause, or leaves its topic open for what is said next.

import { marked, type Piece } from '../../pieces/piece.ts';
import { bear, isPlaced, place, state, type Talk } from '../talk.ts';
import { isOpen } from './found-history.ts';
import { headingOf } from './heading.ts';
import { historyOf } from './history.ts';
import { namedBefore } from './named-before.ts';
import { isOfBody } from './of-body.ts';

/** States the history at `i`; returns the token past its words. */
export function stateHistory(talk: Talk, pieces: readonly Piece[], i: number, negated: boolean): number {
  const piece = pieces[i];
  if (piece === undefined) return 0;
  if (marked(piece, 'of-body') && !isOfBody(talk.tokens, pieces, i)) return piece.to;
  const named = namedBefore(talk, pieces, i, negated);
  const found = named === null ? historyOf(talk, pieces.slice(i), negated) : [named];
  if (isOpen(found)) {
    bear(talk, { asked: { about: 'topic', topic: found.topic } });
    return piece.to;
  }
  const [first, ...others] = found;
  const heading = first === undefined ? undefined : headingOf(talk, first.statement.topic, first.from);
  const told =
    first === undefined || heading === undefined || isPlaced(talk, heading)
      ? found
      : [{ ...first, from: heading.from }, ...others];
  state(talk, told);
  place(talk, ...told);
  return Math.max(piece.to, ...found.map(({ to }) => to));
}
