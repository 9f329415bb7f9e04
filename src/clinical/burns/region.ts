// Which patches of a chart a spoken burn takes in; a site smaller than the chart's areas takes in none.

import { isPaired, type Part, type Site } from '../../terms/index.ts';
import type { FindingEntry } from '../said.ts';
import type { Area } from './charts.ts';
import type { Face, Half, Patch } from './patches.ts';

export type Method = 'rule-of-nines' | 'lund-browder';

interface Region {
  readonly areas: readonly Area[];
  readonly face?: Face;
  readonly half?: Half;
}

const ARM: readonly Area[] = ['upper-arm', 'forearm', 'hand'];
const LEG: readonly Area[] = ['thigh', 'lower-leg', 'foot'];

/** The rule of nines knows only head with neck, and counts the buttocks to the back. */
const regions = (method: Method): Partial<Record<Site, Region>> => ({
  head: { areas: method === 'rule-of-nines' ? ['head', 'neck'] : ['head'] },
  face: { areas: method === 'rule-of-nines' ? ['head', 'neck'] : ['head'], face: 'front' },
  neck: { areas: ['neck'] },
  chest: { areas: ['chest'] },
  abdomen: { areas: ['abdomen'] },
  'upper-quadrant': { areas: ['abdomen'], half: 'upper' },
  'lower-quadrant': { areas: ['abdomen'], half: 'lower' },
  back: { areas: method === 'rule-of-nines' ? ['back', 'buttock'] : ['back'] },
  buttock: { areas: ['buttock'] },
  genitals: { areas: ['genitals'] },
  arm: { areas: ARM },
  'upper-arm': { areas: ['upper-arm'] },
  forearm: { areas: ['forearm'] },
  hand: { areas: ['hand'] },
  palm: { areas: ['hand'], face: 'front' },
  leg: { areas: LEG },
  thigh: { areas: ['thigh'] },
  'lower-leg': { areas: ['lower-leg'] },
  foot: { areas: ['foot'] },
});

const REGIONS: Readonly<Record<Method, Partial<Record<Site, Region>>>> = {
  'rule-of-nines': regions('rule-of-nines'),
  'lund-browder': regions('lund-browder'),
};

export interface Share {
  readonly patch: Patch;
  /** 1, or a half where only the inner, outer or middle part was said */
  readonly fraction: number;
  /** the side was not said: the patch is of one side, it is not known which */
  readonly unsided: boolean;
}

const faceOf = (parts: readonly Part[], region: Region): Face | undefined => {
  const [anterior, posterior] = [parts.includes('anterior'), parts.includes('posterior')];
  if (region.face !== undefined || anterior === posterior) return region.face;
  return anterior ? 'front' : 'back';
};

const halfOf = (parts: readonly Part[]): Half | undefined => {
  const upper = parts.includes('upper') || parts.includes('proximal');
  const lower = parts.includes('lower') || parts.includes('distal');
  return upper === lower ? undefined : upper ? 'upper' : 'lower';
};

/** The shares of patches that one spoken burn takes in; null where the site is smaller than the chart's areas. */
export function sharesOf(
  burn: FindingEntry,
  patches: readonly Patch[],
  method: Method,
): readonly Share[] | null {
  const region = REGIONS[method][burn.site];
  if (region === undefined) return null;
  const parts = burn.part ?? [];
  const face = faceOf(parts, region);
  const half = region.half ?? halfOf(parts);
  const limb = region.areas === ARM || region.areas === LEG;
  // Half of a whole limb is one or two of its areas; half of one area is half its patches.
  const areas =
    limb && half !== undefined ? region.areas.slice(...(half === 'upper' ? [0, 1] : [1])) : region.areas;
  const unsided = isPaired(burn.site) && (burn.side === null || burn.side === 'midline');
  const side = unsided ? 'left' : burn.side;
  const narrow = parts.some((part) => part === 'medial' || part === 'lateral' || part === 'mid');
  return patches
    .filter(
      (patch) =>
        areas.includes(patch.area) &&
        (face === undefined || patch.face === face) &&
        (limb || half === undefined || patch.half === half || patch.area === 'buttock') &&
        (side === 'left' || side === 'right' ? patch.side === side : true),
    )
    .filter((patch) => !(patch.area === 'buttock' && half === 'upper' && burn.site === 'back'))
    .map((patch) => ({ patch, fraction: narrow ? 0.5 : 1, unsided }));
}
