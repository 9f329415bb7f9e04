// The criteria that wounds decide: penetrating injury, and bleeding that took a tourniquet or packing.

import { type Finding, regionOf, type Site } from '../../terms/index.ts';
import { type Answer, unknown, yes } from '../answer.ts';
import type { Chart, EntryOf } from '../chart.ts';
import { isWithin } from '../place.ts';
import { deniedInAll, type FindingEntry, foundWithin } from '../said.ts';
import { sidesOf } from '../side.ts';
import { EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import * as zones from '../zones.ts';
import { named } from './reason.ts';

const PENETRATING: readonly Finding[] = ['puncture', 'impaled-object'];
const TORSO_AND_PROXIMAL: readonly Site[] = [
  'head',
  'neck',
  'chest',
  'abdomen',
  'pelvis',
  'back',
  'shoulder',
  'upper-arm',
  'thigh',
];

/** Penetrating wounds of head, neck, torso and the limbs above elbow and knee. */
export function penetrating(chart: Chart): Answer {
  const wounds = foundWithin(chart, [...TORSO_AND_PROXIMAL, 'arm', 'leg'], PENETRATING);
  const near = (entry: FindingEntry): boolean =>
    TORSO_AND_PROXIMAL.some((site) => isWithin(entry.site, site)) ||
    ((entry.site === 'arm' || entry.site === 'leg') &&
      (entry.part ?? []).some((part) => part === 'proximal' || part === 'upper'));
  const met = wounds.filter(near);
  if (met.length > 0) return yes(met, named(met));
  const open = wounds.filter(
    (entry) =>
      ['arm', 'leg', 'elbow', 'knee'].includes(entry.site) &&
      !(entry.part ?? []).some((part) => part === 'distal' || part === 'lower'),
  );
  if (open.length > 0) return unknown(['whether the wound is above the elbow or knee'], open, named(open));
  const told = mentionOf(chart, EVENT_TOPICS, /\b(?:stab\w*|gun ?shot|shot|impaled|knife|bullet)\b/);
  const hints = [...told.said, ...told.hinted];
  if (hints.length > 0) return unknown(['where the wound is'], hints);
  return deniedInAll(
    chart,
    [...zones.TRUNK, ...zones.SHOULDERS, ...zones.UPPER_ARMS, ...zones.THIGHS],
    ['puncture'],
  );
}

const WOUNDS: readonly Finding[] = ['bleeding', 'laceration', 'puncture', 'avulsion', 'amputation'];

/** The wounds of the same limb or region and side that a care may be for. */
const woundsFor = (chart: Chart, care: EntryOf<'care'>): readonly FindingEntry[] =>
  WOUNDS.flatMap((finding) => chart.found(finding)).filter(
    (entry) =>
      care.site !== undefined &&
      regionOf(entry.site) === regionOf(care.site) &&
      sidesOf(care.site, care.side ?? null).some((side) => sidesOf(entry.site, entry.side).includes(side)),
  );

/** Bleeding that took a tourniquet or packing. Bleeding without them asks whether it needs them. */
export function bleeding(chart: Chart): Answer {
  const cared = chart.care.filter((entry) => entry.care === 'tourniquet' || entry.care === 'wound-packing');
  if (cared.length > 0) {
    const evidence = cared.flatMap((care) => [care, ...woundsFor(chart, care)]);
    return yes(evidence, [...new Set(cared.map((entry) => entry.care.replaceAll('-', ' ')))].join(', '));
  }
  const open = chart.found('bleeding');
  if (open.length > 0)
    return unknown(['whether the bleeding needs a tourniquet or packing'], open, named(open));
  return deniedInAll(chart, zones.BODY, ['bleeding']);
}
