// What a person must settle of a finding: words that sound like others, and a "no" that was not read as one.

import { hasTag, type Island } from '../../islands/island.ts';
import { tagIn } from '../../pieces/piece.ts';
import { type Item, pieceOf, type SitePhrase } from '../sites/item.ts';

/** The doubts of words that were taken for a side, a site or a finding that sounds like them. */
export const soundsLike = (phrases: readonly SitePhrase[], island: Island | null): readonly string[] => [
  ...phrases.flatMap(({ homophone }) =>
    homophone === null ? [] : [`"${homophone}" was taken for a side or a site that sounds like it.`],
  ),
  ...(island !== null && hasTag(island, 'homophone')
    ? ['A word was taken for a finding that sounds like it.']
    : []),
];

/** The last net under a missed negation: a "no" or "not" straight before a finding that is stated is asked about. */
export function hearsNo(before: Item | undefined): readonly string[] {
  const piece = pieceOf(before);
  if (piece === null || piece.role === 'finding') return [];
  return tagIn(piece, 'negation', 'negation') === 'before' ? ['Is this there, or not there?'] : [];
}
