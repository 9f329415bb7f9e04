// Tells "nothing sore", which denies what follows it, from the "nothing" that is all there is to say of a site.

import { isLikely, isSmall, likelyTag, marked } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { type Item, pieceOf } from '../sites/item.ts';

/** True for a "nothing" at item `i` with an adjective straight after it ("nothing sore", "nothing is swollen"), or a finding and no more. */
export function isNothingSuch(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || !marked(piece, 'nothing') || isPaused(tokens, piece)) return false;
  const next = pieceOf(items[i + 1]);
  const at = next !== null && isSmall(next, 'link') ? i + 2 : i + 1;
  const said = pieceOf(items[at]);
  if (said?.role !== 'finding' || likelyTag(said, 'present') === 'false') return false;
  // "Nothing guarding." is all that is said there; "knees nothing swelling on the ankle" goes on with a finding.
  if (!isLikely(said, 'adj')) return at === i + 1 && (items[at + 1] === undefined || isPaused(tokens, said));
  // "Elbow nothing tender wrist" is free of anything at the elbow, and tender at the wrist.
  return !(items[i - 1]?.type === 'site' && items[at + 1]?.type === 'site' && !isPaused(tokens, said));
}
