// How bad a finding is by itself, for the order of problems and of the words of a report; it decides nothing else.

import type { Entry } from '../../record/entry.ts';
import type { Finding, Site } from '../../terms/index.ts';
import { isLess } from '../limb-end.ts';

/**
 * Worst first; what is not listed comes after. Common practice, no source: bleeding, then breathing, then the nerves and
 * the belly, then bones and skin.
 */
const WORST_FIRST: readonly Finding[] = [
  'amputation',
  'bleeding',
  'paradoxical-motion',
  'tracheal-deviation',
  'jugular-distension',
  'impaled-object',
  'puncture',
  'paralysis',
  'weakness',
  'numbness',
  'rigidity',
  'guarding',
  'distension',
  'instability',
  'deformity',
  'avulsion',
  'burn',
  'fluid',
  'priapism',
  'incontinence',
  'crepitus',
  'laceration',
  'swelling',
  'tenderness',
];

const placeOf = (finding: Finding): number => {
  const place = WORST_FIRST.indexOf(finding);
  return place < 0 ? WORST_FIRST.length : place;
};

/** A lost pulse, feeling or movement stands where paralysis does; a pain in the spine where a bone that gives way does. */
const LOSS = placeOf('paralysis');
const WEAKNESS = placeOf('weakness');
const SPINAL = placeOf('instability');
/** Bleeding that is small or has been stopped stands just before a wound. */
const WOUND = placeOf('laceration');
const HELD_BLEEDING = WOUND - 0.5;
const SEVERE = -100;

const SPINE: readonly Site[] = ['cervical-spine', 'spine', 'thoracic-spine', 'lumbar-spine', 'sacrum'];
const HELD = /\b(?:controlled|stopped|oozing|minor|slow|slight|dried)\b/i;

/** How bad one entry is by itself: lower is worse, below 0 where it was called severe. */
export function graveness(entry: Entry): number {
  if (entry.kind === 'csm') return entry.present || isLess(entry) ? WEAKNESS : LOSS;
  if (entry.kind !== 'finding') return WORST_FIRST.length + 1;
  const { finding, severity, quality, site } = entry;
  const isHeld =
    finding === 'bleeding' && (severity === 'mild' || (quality ?? []).some((word) => HELD.test(word)));
  const isSpinal = SPINE.includes(site) && (finding === 'tenderness' || finding === 'pain');
  const place = isHeld ? HELD_BLEEDING : isSpinal ? SPINAL : placeOf(finding);
  return place + (severity === 'severe' && !isHeld ? SEVERE : 0);
}

/** True for what asks for more than a line of a report: anything worse than a wound, a swelling or a pain. */
export const isGrave = (entry: Entry): boolean => graveness(entry) < HELD_BLEEDING;
