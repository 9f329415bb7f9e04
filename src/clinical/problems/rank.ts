// The stated rules by which problems are put worst first; common practice, no source.

import type { Entry } from '../../record/entry.ts';
import { type Finding, regionOf, type Site } from '../../terms/index.ts';
import { isBreak } from '../broken.ts';

export interface Rank {
  readonly rank: 1 | 2 | 3 | 4 | 5;
  readonly why: string;
}

const BONE: readonly Finding[] = [
  'deformity',
  'crepitus',
  'instability',
  'paralysis',
  'weakness',
  'numbness',
];
const OPEN: readonly Finding[] = [
  'bleeding',
  'laceration',
  'puncture',
  'avulsion',
  'amputation',
  'impaled-object',
  'burn',
  'bite',
];

const has = (entries: readonly Entry[], findings: readonly Finding[]): boolean =>
  entries.some((entry) => entry.kind === 'finding' && findings.includes(entry.finding));

const HEAVY = /\b(?:heav\w*|pumping|spurting|arterial|severe|soak\w*)\b/i;

const bleedsHeavily = (entry: Entry): boolean =>
  entry.kind === 'finding' &&
  entry.finding === 'bleeding' &&
  (entry.severity === 'severe' || HEAVY.test((entry.quality ?? []).join(' ')));

// A scrape of the trunk is no injury of the trunk.
const SKIN: readonly Finding[] = ['abrasion', 'rash', 'sting', 'discoloration'];
const isOnSkin = (entries: readonly Entry[]): boolean =>
  entries.every((entry) => entry.kind === 'finding' && SKIN.includes(entry.finding));

/** The rank of what a red triage criterion that is met rests on; it goes before any other. */
export const ON_RED: Rank = { rank: 1, why: 'a red triage criterion rests on it' };

/** Long bones and the knee, where what is out of shape threatens blood or the foot beyond it; common practice, no source. */
const LEG: readonly Site[] = ['leg', 'thigh', 'knee', 'lower-leg'];

/**
 * The first rule that fits. `isLost` is true where circulation, sensation or motion of the limb's end is wholly gone by the
 * latest word on it: that goes with a tender trunk, and before it as the graver.
 */
export function rankOf(site: Site, entries: readonly Entry[], isLost = false): Rank {
  if (entries.some(bleedsHeavily)) return { rank: 1, why: 'heavy bleeding' };
  if (isLost || has(entries, ['paralysis']))
    return { rank: 2, why: 'feeling, movement or circulation of a limb lost' };
  if (['head', 'neck', 'chest', 'abdomen', 'pelvis', 'back'].includes(regionOf(site)) && !isOnSkin(entries))
    return { rank: 2, why: 'head, neck, trunk or spine' };
  if (site === 'thigh' && (has(entries, ['deformity', 'crepitus', 'instability']) || entries.some(isBreak)))
    return { rank: 2, why: 'thigh bone: it can bleed much' };
  if (LEG.includes(site) && has(entries, ['deformity'])) return { rank: 2, why: 'leg out of shape' };
  if (has(entries, BONE) || entries.some(isBreak) || entries.some((entry) => entry.kind === 'csm'))
    return { rank: 3, why: 'bone, nerve or pulse of a limb' };
  if (has(entries, OPEN)) return { rank: 4, why: 'open wound or burn' };
  return { rank: 5, why: 'other finding' };
}
