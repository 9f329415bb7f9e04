// Tells "nothing sore", which denies what follows it, from the "nothing" that is all there is to say of a site.

import { isLikely, isSmall, likelyTag, marked } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isAdjective, isSmallItem, pieceOf, wordsOf } from '../sites/item.ts';

/** True for a "nothing" at item `i` with an adjective straight after it ("nothing sore", "nothing is swollen"), or a finding and no more. */
export function isNothingSuch(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const piece = pieceOf(items[i]);
  if (piece === null || !marked(piece, 'nothing') || isPaused(tokens, piece)) return false;
  if (isNothingThere(items, tokens, i)) return true;
  const next = pieceOf(items[i + 1]);
  const at = next !== null && isSmall(next, 'link') ? i + 2 : i + 1;
  const said = pieceOf(items[at]);
  if (said?.role !== 'finding' || likelyTag(said, 'present') === 'false') return false;
  // "Nothing guarding." is all that is said there; "knees nothing swelling on the ankle" goes on with a finding.
  if (!isLikely(said, 'adj')) return at === i + 1 && (items[at + 1] === undefined || isPaused(tokens, said));
  // "Elbow nothing tender wrist" is free of anything at the elbow, and tender at the wrist.
  const isNext = items[i - 1]?.type === 'site' && items[at + 1]?.type === 'site' && !isPaused(tokens, said);
  return !isNext || isStretch(items, tokens, at + 1);
}

// "Spine nothing tender neck to tailbone": from the one place to the other.
const isStretch = (items: readonly Item[], tokens: readonly Token[], site: number): boolean => {
  const to = pieceOf(items[site + 1]);
  return (
    to !== null && /^(to|through)$/.test(tokens[to.from]?.word ?? '') && items[site + 2]?.type === 'site'
  );
};

// "Nothing on the left hip is tender", "nothing below the knee hurts".
function isNothingThere(items: readonly Item[], tokens: readonly Token[], i: number): boolean {
  const site = items.findIndex((item, k) => k > i && item.type === 'site');
  const said = items.findIndex((item, k) => k > site && isAdjective(item));
  const between = items.slice(i + 1, said);
  if (site < 0 || said < 0 || between.some((item) => isPaused(tokens, wordsOf(item)))) return false;
  if (!between.every((item) => item.type === 'site' || hasRole(item, 'small'))) return false;
  const words = wordsOf(items[said] as Item);
  const isVerb = /^(hurts|bleeds|aches|throbs)$/.test(tokens[words.from]?.word ?? '');
  return isVerb || isSmallItem(items[said - 1], 'link');
}
