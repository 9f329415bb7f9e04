// "No but the left | does": a verb that ends an answer, or denies in it, and begins a question only by its place.

import type { Clause } from '../../clauses/clause.ts';
import type { Piece } from '../../pieces/piece.ts';
import { pauseBefore } from '../../span.ts';
import type { Talk } from '../talk.ts';

/**
 * The pieces of an answer with those of the next clause where only its verb made a question of it: "no but the left | does", "the
 * thumb | isn't, it's the finger".
 */
export function withSplitOff({ clauses, tokens }: Talk, clause: Clause): readonly Piece[] {
  const next = clauses[clauses.indexOf(clause) + 1];
  const [verb] = next?.pieces ?? [];
  const isSplit =
    next?.mood === 'question' &&
    verb !== undefined &&
    verb.from === clause.pieces.at(-1)?.to &&
    pauseBefore(tokens, verb) === '' &&
    /^(is|are|was|does|do|did|has)$/.test(tokens[verb.from]?.word ?? '');
  return isSplit ? [...clause.pieces, ...next.pieces] : clause.pieces;
}
