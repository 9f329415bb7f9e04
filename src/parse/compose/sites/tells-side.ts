// "My arm hurts." "The left one": a side alone tells which it was that was said, or asks it, where no side was said before.

import { isPaired, type Statement } from '../../../terms/index.ts';
import type { Clause } from '../../clauses/clause.ts';
import { isSmall, marked, type Piece, type Role } from '../../pieces/piece.ts';
import { spanned } from '../../span.ts';
import type { Talk } from '../talk.ts';
import { sideIn } from './side-in.ts';

const TELLING: ReadonlySet<Role> = new Set(['side', 'small', 'talk', 'answer', 'asking']);

/** The side that is all a clause says, where what was last stated lacks one; null otherwise. */
export function tellsSide(talk: Talk, clause: Clause): 'left' | 'right' | null {
  const { pieces } = clause;
  const side = sideIn(pieces)?.side;
  if ((side !== 'left' && side !== 'right') || !pieces.every(isTelling)) return null;
  // A bare "right" may be mere talk.
  if (!isAskedWhich(talk, pieces) && pieces.every((piece) => piece.role !== 'side' || piece.weak))
    return null;
  const { said } = talk.context;
  return said.length > 0 && said.every(lacksSide) ? side : null;
}

/** True after "which one?": a bare "right" is the side that was asked for. */
export function isAskedWhich({ clauses, tokens, context }: Talk, [first]: readonly Piece[]): boolean {
  const before = clauses.findLast(({ pieces }) => (pieces.at(-1)?.to ?? 0) <= (first?.from ?? 0));
  if (before === undefined) return context.asking && WHICH.test(context.question?.toLowerCase() ?? '');
  if (before.mood !== 'question') return false;
  const { from, to } = spanned(before.pieces);
  const words = tokens.slice(from, to).map(({ word }) => word);
  return WHICH.test(words.join(' '));
}

const WHICH = /\bwhich\b|\b(left or right|right or left)\b/;

// "It's the left one" opens as a denial may that ends another.
const isTelling = (piece: Piece): boolean =>
  ((TELLING.has(piece.role) || isSmall(piece, 'person')) &&
    !marked(piece, 'answer', 'no') &&
    !isSmall(piece, 'before')) ||
  marked(piece, 'negation', 'stop');

const lacksSide = (one: Statement): boolean =>
  (one.kind === 'finding' || one.kind === 'csm') && one.side === null && isPaired(one.site);
