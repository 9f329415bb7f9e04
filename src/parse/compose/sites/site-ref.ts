// Sites as they are kept in mind: a plain one, and one without the spot on it.

import type { Side, Site } from '../../../terms/index.ts';
import type { SiteRef } from '../../context.ts';

/** A site with a side that was said, or with none. */
export const plainSite = (site: Site, side: Side | null = null): SiteRef => ({
  site,
  side,
  sideKnown: side === null ? null : 'spoken',
  parts: [],
  level: null,
});

/** The site stays in mind, not the spot on it: "tender at T nine" and then "no swelling" is said of the spine. */
export const wholeSite = ({ stretch: _, ...ref }: SiteRef): SiteRef => ({ ...ref, parts: [], level: null });
