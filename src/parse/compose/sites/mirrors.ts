// Gives "the other arm" its side once, before anything is said of it: the other one of the side named or borne in mind last.

import type { SiteRef } from '../../context.ts';
import type { Item } from './item.ts';
import { sideAfter } from './said-side.ts';
import { oneSide, otherSide } from './side.ts';

/** The items with the side of each "other" resolved; it has none where no one side came before. */
export function withMirrors(items: readonly Item[], mind: readonly SiteRef[]): readonly Item[] {
  let near = oneSide(mind);
  return items.map((item): Item => {
    // "A cut on the left, the other eye is fine".
    if (item.type !== 'site') {
      const said = item.piece.role === 'side' ? sideAfter(item.piece) : null;
      if (said === 'left' || said === 'right') near = said;
      return item;
    }
    const { phrase } = item;
    const side = phrase.mirrored ? otherSide(near) : oneSide(phrase.sites);
    if (side !== null) near = side;
    if (!phrase.mirrored) return item;
    const sideKnown = side === null ? null : ('carried' as const);
    return {
      ...item,
      phrase: { ...phrase, sites: phrase.sites.map((ref) => ({ ...ref, side, sideKnown })) },
    };
  });
}
