// "Fifteen in thirty seconds": beats and breaths are counted alike, so the sign named before says which it is.

import type { Vital } from '../../../terms/index.ts';
import { hasTag, type Island } from '../../islands/island.ts';
import { likelyTag, type Piece } from '../../pieces/piece.ts';
import type { Talk } from '../talk.ts';

/** The island of a count as one of the sign it is of; null where no sign was named. Any other island is as it was. */
export function ofNamedSign(talk: Talk, piece: Piece, island: Island): Island | null {
  if (!hasTag(island, 'needs')) return island;
  const words = talk.tokens.slice(piece.from, piece.to).map(({ word }) => word);
  if (words.includes('beats') || words.includes('pulse')) return island;
  const vital = signBefore(talk, piece);
  if (vital === null) return null;
  return {
    ...island,
    tags: island.tags.map((tag) => (tag.key === 'vital' ? { key: 'vital', value: vital } : tag)),
  };
}

function signBefore({ clauses, context }: Talk, { from }: Piece): Vital | null {
  const named = clauses
    .flatMap(({ pieces }) => pieces)
    .findLast((one) => one.to <= from && one.role === 'vital');
  const { asked } = context;
  const last = context.said.at(-1);
  const vital =
    (named === undefined ? null : (likelyTag(named, 'vital') as Vital | null)) ??
    (asked?.about === 'vital' ? asked.vital : null) ??
    (last?.kind === 'vital' ? last.vital : null);
  return vital === 'pulse' || vital === 'respirations' ? vital : null;
}
