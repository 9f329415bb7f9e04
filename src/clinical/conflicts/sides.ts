// Slips of side: a side that jumps within one sentence, unlike sides called equal, and care where nothing was found.

import { type Care, type Finding, type Region, regionOf, SITES } from '../../terms/index.ts';
import { type Chart, type EntryOf, vitalsOf } from '../chart.ts';
import { isImpaired } from '../limb-end.ts';
import { isWithin, placeText } from '../place.ts';
import type { FindingEntry } from '../said.ts';
import { otherSide, sidesOf } from '../side.ts';
import { type Conflict, conflictOf } from './conflict.ts';

export const PAIRED_REGIONS: readonly Region[] = ['shoulder', 'arm', 'leg'];

/** In one utterance the left of one site and the right of another in the same limb; both sides of one site, or of its parts, are a comparison. */
export function sideJumps(chart: Chart, region: Region): readonly Conflict[] {
  const spoken = new Map<string, (FindingEntry | EntryOf<'csm'>)[]>();
  for (const site of SITES) {
    if (regionOf(site) !== region) continue;
    for (const entry of chart.at(site)) {
      if (entry.kind === 'visit' || otherSide(entry.side) === null) continue;
      const together = spoken.get(entry.heardAt);
      if (together === undefined) spoken.set(entry.heardAt, [entry]);
      else together.push(entry);
    }
  }
  return [...spoken.values()].flatMap((entries) => {
    const oneSided = entries.filter(
      (entry) =>
        !entries.some(
          (other) =>
            (isWithin(other.site, entry.site) || isWithin(entry.site, other.site)) &&
            other.side === otherSide(entry.side),
        ),
    );
    const left = oneSided.find((entry) => entry.side === 'left');
    const right = oneSided.find((entry) => entry.side === 'right');
    if (left === undefined || right === undefined) return [];
    const question = `${placeText(left.site, 'left')} and ${placeText(right.site, 'right')} in one sentence. Are both sides meant?`;
    return [conflictOf('side-jump', question, [left, right])];
  });
}

/** Pupils called equal while the two sides were told unlike. */
export const unlikePupils = (chart: Chart): readonly Conflict[] =>
  vitalsOf(chart, 'pupils').flatMap((entry) => {
    const { equal, leftMm, rightMm, leftReactive, rightReactive } = entry.value;
    const sizes = leftMm !== undefined && rightMm !== undefined && leftMm !== rightMm;
    const light = leftReactive !== undefined && rightReactive !== undefined && leftReactive !== rightReactive;
    if (equal !== true || !(sizes || light)) return [];
    const unlike = sizes ? `left ${leftMm} mm, right ${rightMm} mm` : 'only one reacts';
    return [conflictOf('not-equal', `Pupils called equal, but ${unlike}. Which holds?`, [entry])];
  });

/** Strength called equal while the two sides were told unlike. */
export const unlikeStrength = (chart: Chart): readonly Conflict[] =>
  chart.csm
    .filter((entry) => entry.strength === 'equal')
    .flatMap((equal) => {
      const unlike = chart.csm.filter(
        (entry) =>
          entry.site === equal.site &&
          entry.aspect === equal.aspect &&
          entry.heardAt === equal.heardAt &&
          (entry.strength === 'unequal' || isImpaired(entry)),
      );
      if (unlike.length === 0) return [];
      const question = `Strength called equal, but not so of the ${unlike.map((entry) => placeText(entry.site, entry.side)).join(', ')}. Which holds?`;
      return [conflictOf('not-equal', question, [equal, ...unlike])];
    });

/** Care that is given to an injury; oxygen, fluids and the like go anywhere. */
const FOR_AN_INJURY: readonly Care[] = [
  'tourniquet',
  'direct-pressure',
  'wound-packing',
  'dressing',
  'bandage',
  'splint',
  'sling',
  'traction-splint',
  'chest-seal',
  'irrigation',
  'reduction',
];

/** Care that is for a wound: a bruise on the same limb does not explain it. */
const FOR_A_WOUND: readonly Care[] = [
  'tourniquet',
  'direct-pressure',
  'wound-packing',
  'chest-seal',
  'irrigation',
];
const WOUNDS: readonly Finding[] = [
  'bleeding',
  'laceration',
  'puncture',
  'avulsion',
  'amputation',
  'abrasion',
  'impaled-object',
  'burn',
  'bite',
];

const isWound = (entry: FindingEntry): boolean =>
  WOUNDS.includes(entry.finding) || (entry.quality ?? []).includes('open-fracture');

/** Care on a side of a region where nothing was found on that side. */
export const careWithoutFinding = (chart: Chart): readonly Conflict[] =>
  chart.care.flatMap((care) => {
    if (care.site === undefined || !FOR_AN_INJURY.includes(care.care)) return [];
    const side = care.side ?? null;
    const other = otherSide(side);
    if (other === null) return [];
    const region = regionOf(care.site);
    const wound = FOR_A_WOUND.includes(care.care);
    // A sling for the arm may be for the shoulder, a tourniquet for the groin on the thigh.
    const near = (entry: FindingEntry | EntryOf<'csm'>): boolean => {
      const regions = [region, regionOf(entry.site)];
      return (
        regions[0] === regions[1] ||
        (regions.includes('arm') && regions.includes('shoulder')) ||
        (regions.includes('leg') && regions.includes('pelvis')) ||
        (regions.includes('chest') && regions.includes('shoulder'))
      );
    };
    const told = [
      ...chart.found().filter((entry) => near(entry) && (!wound || isWound(entry))),
      ...chart.csm.filter((entry) => isImpaired(entry) && near(entry) && !wound),
    ];
    const on = (wanted: 'left' | 'right') =>
      told.filter((entry) => {
        const sides = sidesOf(entry.site, entry.side);
        return sides.includes(wanted) || sides.includes(null);
      });
    if (side !== 'left' && side !== 'right') return [];
    if (on(side).length > 0) return [];
    const mirrored = on(other);
    const what = `${care.care.replaceAll('-', ' ')} on the ${placeText(care.site, side)}`;
    const question =
      mirrored.length > 0
        ? `${what}, but the finding is on the ${other}. Which side?`
        : `${what}, but nothing was found there. What is it for?`;
    return [conflictOf('care-without-finding', question, [care, ...mirrored])];
  });
