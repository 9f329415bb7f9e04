// A limb is one chain: after "left arm", "the elbow" is the left one until another limb or side is named.

import { regionOf, type Site } from '../../../terms/index.ts';

const LIMBS: Readonly<Record<string, string>> = { shoulder: 'arm', arm: 'arm', leg: 'leg' };

/** `arm`, `leg` or null for a site of no limb. */
export const limbOf = (site: Site): string | null =>
  site === 'hip' ? 'leg' : (LIMBS[regionOf(site)] ?? null);

/** True for two sites of one limb. */
export const sameLimb = (a: Site, b: Site): boolean => limbOf(a) !== null && limbOf(a) === limbOf(b);
