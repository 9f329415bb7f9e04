// Findings that name their own place: nobody says "no loose teeth of the teeth".

import type { Finding, Side, Site } from '../../terms/index.ts';

const HOMES: Partial<Record<Finding, Site>> = {
  'tracheal-deviation': 'trachea',
  'jugular-distension': 'neck-veins',
  'loose-teeth': 'teeth',
  'missing-teeth': 'teeth',
  'paradoxical-motion': 'chest',
  incontinence: 'pelvis',
  priapism: 'genitals',
};

/** Sites of which such a finding may be said with a side. */
const SIDED: readonly Site[] = ['trachea', 'neck-veins', 'chest'];

interface Stated {
  readonly site: Site;
  readonly side: Side | null;
  readonly finding: Finding;
}

/** True where the finding needs no place beside it. */
export const isAtHome = ({ site, side, finding }: Stated): boolean =>
  HOMES[finding] === site && (side === null || SIDED.includes(site));

/** What is said of the side after the finding: ` to the left`, ` on either side`; empty where there is none to say. */
export function homeTail({ site, side }: Stated, present: boolean): string {
  if (side === null) return site === 'neck-veins' ? ' (side not said)' : '';
  if (side === 'midline') return ' in the midline';
  if (side === 'both') return present ? ' on both sides' : ' on either side';
  if (site === 'trachea') return ` to the ${side}`;
  return site === 'chest' ? ` on the ${side} side of the chest` : ` on the ${side}`;
}
