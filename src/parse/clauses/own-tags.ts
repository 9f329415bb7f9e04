// "There's a nail in his heel and we're not pulling it out, are we?": a tag asks of what its own "we" says, and not of what was found before.

import { isJoin } from '../compose/sayings/index.ts';
import type { Piece, Role } from '../pieces/piece.ts';
import { isPaused } from '../span.ts';
import { saidIn, type Token } from '../token.ts';
import type { Clause } from './clause.ts';

/** The clauses, where each question by such a tag is parted from what is told before its "and". */
export const withOwnTags = (clauses: readonly Clause[], tokens: readonly Token[]): readonly Clause[] =>
  clauses.flatMap((clause) => {
    const at = clause.mood === 'question' && clause.pause === 'ask' ? parting(clause.pieces, tokens) : 0;
    if (at === 0) return [clause];
    const told = {
      ...clause,
      pieces: clause.pieces.slice(0, at),
      mood: 'statement' as const,
      pause: '' as const,
    };
    return [told, { ...clause, pieces: clause.pieces.slice(at) }];
  });

const TAG = /^(are|am|were|do|did|have|will|shall|can|could|would|should)( not)? (we|i|you|they)\b/;
const TOLD: ReadonlySet<Role> = new Set(['finding', 'csm', 'vital', 'care']);
const ASKING: ReadonlySet<Role> = new Set(['ask', 'asking', 'mood']);

// "Is the wrist swollen and we missed it, did we?"
const OPENS_QUESTION = /^(is|are|was|were|do|does|did|has|have|can|could|any|anything) /;

/** Where the "and" stands that the tag's own clause begins with; 0 where there is none. */
function parting(pieces: readonly Piece[], tokens: readonly Token[]): number {
  const words = (from: number, to: number): string =>
    saidIn(tokens, pieces[from]?.from ?? 0, pieces[to - 1]?.to ?? 0);
  // "Are we, my love": whom it is said to may stand behind it.
  const breaths = pieces.flatMap((piece, k) => (isPaused(tokens, piece) ? [k + 1] : []));
  const tag = breaths.findLast((from) => TAG.test(words(from, pieces.length)));
  if (tag === undefined || tag === pieces.length) return 0;
  const who = TAG.exec(words(tag, pieces.length))?.[3] ?? '';
  const at = pieces.findLastIndex(
    (piece, k) => k < tag && isJoin(piece) && words(k + 1, tag).split(' ')[0] === who,
  );
  if (at <= 0) return 0;
  const before = pieces.slice(0, at);
  const isTold = before.some(({ role, weak }) => TOLD.has(role) && !weak);
  // "You fell on it and you hurt it, didn't you" asks of both.
  const isOfSame = words(0, at).split(' ').includes(who);
  if (OPENS_QUESTION.test(words(0, at))) return 0;
  return isTold && !isOfSame && !before.some(({ role, weak }) => ASKING.has(role) && !weak) ? at : 0;
}
