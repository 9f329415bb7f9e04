// Whether a finding's adjective is said of a thing that a "no" before it denies: "no tender spots", "no swollen or bruised areas".

import { isSmall, marked, type Piece } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import {
  hasRole,
  type Item,
  isAdjective,
  isSmallItem,
  pieceOf,
  type SitePhrase,
  wordsOf,
} from '../sites/item.ts';

/**
 * What stands behind a denied adjective: a thing, which is denied with it; a site's bare name ("no stiff neck"), which most likely
 * is; or a site with its side or owner, of which it may be stated ("no, tender left knee" without its comma).
 */
export type Denied = 'thing' | 'bare-site' | 'site' | null;

/** What the adjective at item `i` is denied of; null where no "no" leads to it or nothing stands behind it. */
export function deniedBehind(items: readonly Item[], tokens: readonly Token[], i: number): Denied {
  if (!isLed(items, tokens, i)) return null;
  const at = items.findIndex((item, k) => k > i && !isListed(item));
  const [last, noun] = [pieceOf(items[at - 1]), items[at]];
  if (noun === undefined || last === null || isPaused(tokens, last)) return null;
  // "Neck, no, tender back" without its commas: where a place stands before, nobody knows what the "no" answers.
  if (noun.type === 'site')
    return !answersForPlace(items, tokens, i) && isBare(noun.phrase, tokens) ? 'bare-site' : 'site';
  return hasRole(noun, 'unknown') || isSmall(noun.piece, 'thing') ? 'thing' : null;
}

function answersForPlace(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const no = items.slice(0, i).findLastIndex((item) => denies(pieceOf(item)));
  const start = items.slice(0, no).findLastIndex((item) => isPaused(tokens, wordsOf(item))) + 1;
  const before = items.slice(start, no);
  return before.some(({ type }) => type === 'site') && !before.some((item) => denies(pieceOf(item)));
}

const isBare = ({ from, sites }: SitePhrase, tokens: readonly Token[]): boolean =>
  sites.every(({ sideKnown }) => sideKnown !== 'spoken') && !OWNED.test(tokens[from]?.word ?? '');

const OWNED = /^(the|his|her|my|your|their|this|that|on|in|at|over|to)$/;

// A "no" with no pause after it, and nothing but the list between.
function isLed(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const at = items.slice(0, i).findLastIndex((item) => !isListed(item) && !isColour(item));
  // "No stiff neck or sore throat" goes on past its place.
  if (items[at]?.type === 'site' && isSmallItem(items[at + 1], 'or')) return isLed(items, tokens, at);
  const no = pieceOf(items[at]);
  return denies(no) && no !== null && !isPaused(tokens, no);
}

const denies = (piece: Piece | null): boolean =>
  piece !== null &&
  marked(piece, 'negation', 'before') &&
  (marked(piece, 'nouns') || marked(piece, 'exists'));

const isListed = (item: Item): boolean =>
  isSmallItem(item, 'join') || isSmallItem(item, 'or') || isAdjective(item);

const isColour = (item: Item): boolean => hasRole(item, 'attribute') || hasRole(item, 'small');
