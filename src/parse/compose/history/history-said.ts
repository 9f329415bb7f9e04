// States the history of a clause, or leaves its topic open for what is said next.

import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { bear, isPlaced, place, state, type Talk, textOf } from '../talk.ts';
import { type FoundHistory, isOpen } from './found-history.ts';
import { headingOf } from './heading.ts';
import { historyOf } from './history.ts';
import { namedBefore } from './named-before.ts';
import { isOfBody } from './of-body.ts';

/** States the history at `i`; returns the token past its words. */
export function stateHistory(talk: Talk, pieces: readonly Piece[], i: number, negated: boolean): number {
  const piece = pieces[i];
  if (piece === undefined) return 0;
  if (marked(piece, 'of-body') && !isOfBody(talk.tokens, pieces, i)) return piece.to;
  // "I ran over him from head to toe": so he was looked at, and not hurt.
  if ((marked(piece, 'led') || marked(piece, 'theirs')) && isOurs(talk, piece)) return piece.to;
  // "Was nine when it started": when that was, nobody said.
  if (marked(piece, 'topic', 'onset') && isBehindWhen(talk, piece)) return piece.to;
  // "Normally he's around fifty five": so much of something, and no years.
  if (marked(piece, 'topic', 'age') && isBehindUsual(talk, piece)) return piece.to;
  const named = namedBefore(talk, pieces, i, negated);
  const found = named === null ? historyOf(talk, pieces.slice(i), negated) : [named];
  if (isOpen(found)) {
    bear(talk, { asked: { about: 'topic', topic: found.topic } });
    return piece.to;
  }
  const [first, ...others] = marked(piece, 'led') ? ledFrom(talk, pieces, i, found) : found;
  const heading = first === undefined ? undefined : headingOf(talk, first.statement.topic, first.from);
  const told =
    first === undefined || heading === undefined || isPlaced(talk, heading)
      ? [first, ...others].flatMap((one) => one ?? [])
      : [{ ...first, from: heading.from }, ...others];
  state(talk, told);
  place(talk, ...told);
  return Math.max(piece.to, ...found.map(({ to }) => to));
}

const isBehindWhen = ({ tokens }: Talk, { from }: Piece): boolean =>
  tokens[from - 1]?.pause === '' && /^(when|since|before|until|where)$/.test(tokens[from - 1]?.word ?? '');

const isBehindUsual = ({ tokens }: Talk, { from }: Piece): boolean =>
  tokens[from - 1]?.pause === '' && /^(normally|usually|typically)$/.test(tokens[from - 1]?.word ?? '');

const isOurs = ({ tokens }: Talk, { from }: Piece): boolean => /^(i|we)$/.test(tokens[from - 1]?.word ?? '');

// Words that may name who or what did it.
const NAMES: ReadonlySet<Role> = new Set(['unknown', 'small', 'attribute', 'figure', 'negation', 'side']);

// "A lump of ice the size of a bucket hit him": what did it stands before, in the same breath.
function ledFrom(
  talk: Talk,
  pieces: readonly Piece[],
  i: number,
  [first, ...others]: readonly FoundHistory[],
): readonly FoundHistory[] {
  if (first === undefined) return others;
  let at = i;
  while (mayName(talk, pieces[at - 1])) at--;
  const from = pieces[at]?.from ?? first.from;
  const text = textOf(talk, from, first.to);
  return [{ ...first, from, statement: { ...first.statement, text } }, ...others];
}

const mayName = (talk: Talk, piece: Piece | undefined): boolean =>
  piece !== undefined &&
  (NAMES.has(piece.role) || (piece.role === 'vital' && piece.islands[0]?.slots.length === 0)) &&
  !isPaused(talk.tokens, piece) &&
  !isPlaced(talk, piece) &&
  !isSmall(piece, 'join') &&
  !/^(no|not|denies|never|without|says|said)$/.test(talk.tokens[piece.from]?.word ?? '');
