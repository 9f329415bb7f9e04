// Where a finding after a denial is said to be there by what is said of it: a size, a count, "a little", "large".

import { marked, type Piece } from '../../pieces/piece.ts';
import type { Token } from '../../token.ts';
import { ownedAttributes } from '../findings/attribute-owners.ts';
import type { Attributes } from '../findings/attributes.ts';
import { hasRole, type Item, pieceOf } from '../sites/item.ts';
import { isAfterNoun } from './after-noun.ts';
import { joinedByOr } from './list-end.ts';
import { isInListWithOr } from './or-list.ts';

/**
 * The token at which the finding at item `i` begins to be stated again, or null. "No bleeding, laceration three centimetres",
 * "no bruising, slight tenderness": what is not there has no size, is not counted and is not a little of anything.
 */
export function startOfMeasured(items: readonly Item[], tokens: readonly Token[], i: number): number | null {
  const piece = pieceOf(items[i]);
  const first = items.slice(0, i).findLastIndex((item) => !hasRole(item, 'attribute')) + 1;
  if (piece?.role !== 'finding' || !isAfterNoun(items, i)) return null;
  if (joinedByOr(items, first) || isInListWithOr(items, i)) return null;
  const measures = ownedAttributes(items, tokens).filter(
    ({ finding, attributes, piece: words }) => finding === i && isMeasure(attributes, words, tokens),
  );
  return measures.length === 0 ? null : Math.min(piece.from, ...measures.map((one) => one.piece.from));
}

// "No deformity, severe pain" may go on denying; "no swelling, big bruise" hardly.
const isMeasure = ({ size, count, severity }: Attributes, words: Piece, tokens: readonly Token[]): boolean =>
  size !== undefined ||
  count !== undefined ||
  severity === 'mild' ||
  typeof severity === 'number' ||
  (marked(words, 'there') && tokens[words.from - 1]?.pause !== '');
