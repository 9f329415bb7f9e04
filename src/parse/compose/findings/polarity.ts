// Whether one finding is stated, denied or only possible; words that deny by themselves ("soft") are turned by a "not".

import { hasTag, type Island, tagOf } from '../../islands/island.ts';
import { isSmall, tagIn } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import type { Polarity, Reach } from '../negations/reach.ts';
import { type Item, pieceOf } from '../sites/item.ts';

/** The polarity of the finding at item `i`, whose reading is `island`. */
export function polarityAt(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  island: Island,
  reach: Reach,
): Polarity {
  if (tagOf(island, 'present') !== 'false') return reach.polarity(island.from, hasTag(island, 'adj'));
  // "Soft" and "stable" say that something is absent; only a "not" straight before them turns that round.
  for (let k = i - 1; k >= 0; k--) {
    const before = pieceOf(items[k]);
    if (before === null || isPaused(tokens, before)) return 'stated';
    if (tagIn(before, 'negation', 'negation') === 'before') return 'negated';
    if (before.role !== 'attribute' && !isSmall(before, 'word')) return 'stated';
  }
  return 'stated';
}
