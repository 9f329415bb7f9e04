// "CSM intact in both hands, absent in both feet": what is said of a second limb takes its aspects from the first.

import type { SiteRef } from '../../context.ts';
import { hasTag } from '../../islands/island.ts';
import { isSmall, type Piece, readingOf, tagIn } from '../../pieces/piece.ts';
import { around } from '../../span.ts';
import { hasRole, type Item, isSmallItem, pieceOf, type SitePhrase } from '../sites/item.ts';
import { withSides } from '../sites/sides.ts';
import type { FoundCsm } from './found-csm.ts';
import { endsOfSites } from './limb-ends.ts';

/** What was found, and what its later limbs add. */
export const withEllipses = (
  found: readonly FoundCsm[],
  items: readonly Item[],
  mind: readonly SiteRef[],
): readonly FoundCsm[] => [
  ...found,
  ...items.flatMap((item, i) =>
    item.type === 'site' && !found.some((one) => one.group.includes(i))
      ? (ellipsisAt(found, items, i, item.phrase, mind) ?? [])
      : [],
  ),
];

function ellipsisAt(
  found: readonly FoundCsm[],
  items: readonly Item[],
  i: number,
  phrase: SitePhrase,
  mind: readonly SiteRef[],
): FoundCsm | null {
  const model = found.findLast((one) => one.present !== null && one.piece.to <= phrase.from);
  const before = items.slice(0, i).findLast((one) => !hasRole(one, 'small') || isSmallItem(one, 'there'));
  const word = pieceOf(before);
  if (model === undefined || word === null || word.from < model.to) return null;
  const present = presentBy(word);
  const ends = endsOfSites(withSides(phrase, mind), null);
  if (present === null || ends.length === 0) return null;
  return {
    ...model,
    piece: word,
    ends,
    endSpoken: true,
    group: [i],
    present,
    details: {},
    known: { aspect: 'carried' },
    ...around([word, phrase]),
    spans: [word, phrase],
    negatedFrom: null,
    leads: false,
  };
}

/** What a word that stands for the whole check says of it, or null where it says nothing. */
function presentBy(word: Piece): boolean | null {
  if (tagIn(word, 'negation', 'negation') === 'after') return false;
  const normal = readingOf(word, 'findings.finding');
  return isSmall(word, 'there') || (normal !== null && hasTag(normal, 'soft')) ? true : null;
}
