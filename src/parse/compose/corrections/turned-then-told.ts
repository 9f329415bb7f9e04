// "Hang on, it's the left wrist, the right wrist is fine": the side is put right first, and what follows is told of its own place.

import type { Clause } from '../../clauses/clause.ts';
import { sideAnew } from '../../clauses/side-anew.ts';
import type { Piece, Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { openingOf } from '../sayings/index.ts';
import type { Talk } from '../talk.ts';

const MOODS: ReadonlySet<Clause['mood']> = new Set(['statement', 'correction']);
const PLACES: ReadonlySet<Role> = new Set(['side', 'site', 'small']);

/** The clause parted behind words that do no more than put the side right, where another place and what is so of it follow; else null. */
export function turnedThenTold(talk: Talk, clause: Clause): readonly [Clause, Clause] | null {
  const { pieces, mood } = clause;
  if (!MOODS.has(mood) || talk.context.asked !== null || talk.context.said.length === 0) return null;
  const at = pieces.findIndex((piece, k) => k > 0 && opensNext(talk, pieces, k, piece));
  if (at < 0) return null;
  const first = pieces.slice(0, at);
  const anew = sideAnew(first, talk.tokens);
  if (anew === null || !anew.turns || anew.wrong) return null;
  return [
    { ...clause, pieces: first, pause: 'pause' },
    { ...clause, pieces: pieces.slice(at), mood: 'statement' },
  ];
}

// "| The right wrist is fine", "| the left is fine".
function opensNext({ tokens }: Talk, pieces: readonly Piece[], k: number, piece: Piece): boolean {
  const before = pieces[k - 1];
  if (before === undefined || !PLACES.has(piece.role)) return false;
  if (openingOf(pieces, tokens, k) === 'place') return before.role === 'site' || isPaused(tokens, before);
  const next = pieces[k + 1];
  return piece.role === 'side' && isPaused(tokens, before) && next?.role === 'small';
}
