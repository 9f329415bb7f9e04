// How each drawn area stands: by its own site, and by what lies within it; nothing said is never more than not examined.

import type { CoverageRow } from '../../clinical/index.ts';
import type { Entry } from '../../record/index.ts';
import { holdersOf, type Site } from '../../terms/index.ts';
import type { Area } from './outline.ts';

export type AreaState = CoverageRow['state'] | 'part';

export const STATE_NAMES: Readonly<Record<AreaState, string>> = {
  'not-examined': 'Not examined',
  touched: 'Touched, nothing said',
  part: 'Only a part examined',
  clear: 'Only negatives',
  found: 'Something found',
};

/** In the order of the key. */
export const STATES: readonly AreaState[] = ['found', 'clear', 'part', 'touched', 'not-examined'];

/** Sites that no outline shows and no drawn site holds, with the drawn site they are shown at. */
const SHOWN_AT: Readonly<Partial<Record<Site, Site>>> = {
  head: 'skull',
  chest: 'sternum',
  abdomen: 'upper-quadrant',
  back: 'thoracic-spine',
  spine: 'thoracic-spine',
  armpit: 'ribs',
  groin: 'pelvis',
  genitals: 'pelvis',
  arm: 'upper-arm',
  leg: 'thigh',
  ear: 'face',
  'behind-ear': 'skull',
};

/** The nearest of the drawn sites that shows `site`, or null where none does. */
export function shownAt(site: Site, drawn: ReadonlySet<Site>): Site | null {
  if (drawn.has(site)) return site;
  const other = SHOWN_AT[site];
  if (other !== undefined && drawn.has(other)) return other;
  return holdersOf(site).find((holder) => drawn.has(holder)) ?? null;
}

const meets = (area: Area, side: CoverageRow['side'] | 'both' | 'midline'): boolean =>
  area.side === null || side === null || side === 'both' || side === 'midline' || side === area.side;

/** The state of one area of a view in which `drawn` sites have areas. */
export function areaState(area: Area, rows: readonly CoverageRow[], drawn: ReadonlySet<Site>): AreaState {
  const own = rows.find((row) => row.site === area.site && row.side === area.side)?.state ?? 'not-examined';
  const within = rows.filter(
    (row) => row.site !== area.site && shownAt(row.site, drawn) === area.site && meets(area, row.side),
  );
  if (own === 'found' || within.some(({ state }) => state === 'found')) return 'found';
  if (own !== 'not-examined') return own;
  return within.some(({ state }) => state !== 'not-examined') ? 'part' : 'not-examined';
}

/** How many standing findings and failed limb checks are shown at an area. */
export const marksAt = (area: Area, entries: readonly Entry[], drawn: ReadonlySet<Site>): number =>
  entries.filter(
    (entry) =>
      (entry.state === 'heard' || entry.state === 'confirmed') &&
      ((entry.kind === 'finding' && entry.present) || (entry.kind === 'csm' && !entry.present)) &&
      shownAt(entry.site, drawn) === area.site &&
      meets(area, entry.side),
  ).length;
