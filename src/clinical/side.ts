// Which sides of the body a statement covers: `both` covers two, a side that was not said covers none but its own row.

import { isPaired, type Side, type Site } from '../terms/index.ts';

/** A side as a row holds it: `both` is always taken apart. */
export type RowSide = Exclude<Side, 'both'> | null;

const BOTH: readonly RowSide[] = ['left', 'right'];
const WHOLE: readonly RowSide[] = [null];

/**
 * The sides that a statement about a site covers. A paired site without a side gives `[null]`: neither left nor right
 * is covered. An unpaired site's middle, or both its sides, is the whole site.
 */
export function sidesOf(site: Site, side: Side | null): readonly RowSide[] {
  if (side === 'both') return isPaired(site) ? BOTH : WHOLE;
  if (side === 'midline' && !isPaired(site)) return WHOLE;
  return [side];
}

/** The sides a site has in the record's tables: left and right, or the one whole. */
export const rowSidesOf = (site: Site): readonly RowSide[] => (isPaired(site) ? BOTH : WHOLE);

/** The other side of the body, or null where there is none. */
export const otherSide = (side: Side | null): 'left' | 'right' | null =>
  side === 'left' ? 'right' : side === 'right' ? 'left' : null;
