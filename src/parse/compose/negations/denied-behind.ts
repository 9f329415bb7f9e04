// Whether a finding's adjective is said of a thing that a "no" before it denies: "no tender spots", "no swollen or bruised areas".

import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, isSmallItem, pieceOf } from '../sites/item.ts';

/** What stands behind a denied adjective: a thing, which is denied with it, or a site, of which it may be stated. */
export type Denied = 'thing' | 'site' | null;

/** What the adjective at item `i` is denied of; null where no "no" leads to it or nothing stands behind it. */
export function deniedBehind(items: readonly Item[], tokens: readonly Token[], i: number): Denied {
  if (!isLed(items, tokens, i)) return null;
  const at = items.findIndex((item, k) => k > i && !isListed(item));
  const [last, noun] = [pieceOf(items[at - 1]), items[at]];
  if (noun === undefined || last === null || isPaused(tokens, last)) return null;
  if (noun.type === 'site') return 'site';
  return hasRole(noun, 'unknown') || isSmall(noun.piece, 'thing') ? 'thing' : null;
}

// A "no" with no pause after it, and nothing but the list between.
function isLed(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.slice(0, i).findLastIndex((item) => !isListed(item) && !isColour(item));
  const no = pieceOf(items[at]);
  return no !== null && denies(no) && !isPaused(tokens, no);
}

const denies = (piece: Piece): boolean =>
  marked(piece, 'negation', 'before') && (marked(piece, 'nouns') || marked(piece, 'exists'));

const isListed = (item: Item): boolean =>
  isSmallItem(item, 'join') || isSmallItem(item, 'or') || isAdjective(item);

const isColour = (item: Item): boolean => hasRole(item, 'attribute') || hasRole(item, 'small');
