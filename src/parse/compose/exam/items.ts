// The items of a stretch of talk, less the sites whose word means something else there ("be right back").

import type { Piece, Role } from '../../pieces/piece.ts';
import { isPaused } from '../../span.ts';
import { type Item, isSmallItem, pieceOf, type SitePhrase } from '../sites/item.ts';
import { joinSites } from '../sites/join-sites.ts';
import type { Talk } from '../talk.ts';

/** The items of these pieces, in the light of the sites in mind. */
export function itemsOf(talk: Talk, pieces: readonly Piece[]): readonly Item[] {
  const items = joinSites(pieces, talk.tokens, talk.context.sites);
  return items.filter(
    (item, i) => item.type === 'piece' || !item.phrase.doubtful || holds(talk, items, i, item.phrase),
  );
}

const BESIDE: ReadonlySet<Role> = new Set(['finding', 'negation', 'intention', 'csm']);

// A doubtful word for a site holds where a finding or a link stands beside it, or where it is all that was said.
function holds({ tokens }: Talk, items: readonly Item[], i: number, phrase: SitePhrase): boolean {
  if (phrase.to - phrase.from === tokens.length) return true;
  const pausedBefore = phrase.from === 0 || isPaused(tokens, { to: phrase.from });
  const pausedAfter = isPaused(tokens, phrase);
  if (pausedBefore && pausedAfter) return true;
  const [before, after] = [items[i - 1], pausedAfter ? undefined : items[i + 1]];
  return isBeside(before) || isBeside(after) || isSmallItem(after, 'link');
}

const isBeside = (item: Item | undefined): boolean => {
  const piece = pieceOf(item);
  return item?.type === 'site' || isSmallItem(item, 'join') || (piece !== null && BESIDE.has(piece.role));
};
