// A side between the site and what is said of it: "no deformity to either thigh, though the left is swollen".

import type { SiteRef } from '../../context.ts';
import type { Token } from '../../token.ts';
import { hasRole, type Item, isSmallItem } from '../sites/item.ts';
import { type LooseSide, looseSide } from '../sites/loose-side.ts';

/** The side that turns the site at `site` for the finding at `i` after it, or null. */
export function turnedSide(
  items: readonly Item[],
  tokens: readonly Token[],
  i: number,
  site: number,
  mind: readonly SiteRef[],
): LooseSide | null {
  if (site >= i) return null;
  const at = items.slice(0, i).findLastIndex((item) => hasRole(item, 'side'));
  if (at <= site) return null;
  const straight = items
    .slice(at + 1, i)
    .every((item) => hasRole(item, 'small') || isSmallItem(item, 'article'));
  const turned = straight ? looseSide(items, tokens, i, mind) : null;
  // "Right ankle and left hip are both sore": each keeps its side.
  return turned?.side === 'both' ? null : turned;
}
