// What was found and what was denied on the body: a denial counts for the place it names and for all that lies in it.

import type { Finding, Site } from '../terms/index.ts';
import { type Answer, no, unknown } from './answer.ts';
import type { Chart, EntryOf } from './chart.ts';
import { isWithin, type Place, placeText, takesIn } from './place.ts';

export type FindingEntry = EntryOf<'finding'>;

/** Present findings of these kinds at these sites or within them, on any side. */
export const foundWithin = (
  chart: Chart,
  sites: readonly Site[],
  findings: readonly Finding[],
): readonly FindingEntry[] =>
  chart.findings.filter(
    (entry) =>
      entry.present && findings.includes(entry.finding) && sites.some((site) => isWithin(entry.site, site)),
  );

/** Present findings of these kinds at exactly these sites. */
export const foundAt = (
  chart: Chart,
  sites: readonly Site[],
  findings: readonly Finding[],
): readonly FindingEntry[] =>
  chart.findings.filter(
    (entry) => entry.present && findings.includes(entry.finding) && sites.includes(entry.site),
  );

/**
 * The denials that rule the finding out for the whole place: of that finding, or of anything abnormal, at the place or
 * at a wider one. A denial for a part of it ("distal", "at C5") rules nothing out.
 */
export const denials = (chart: Chart, place: Place, finding: Finding): readonly FindingEntry[] =>
  chart.findings.filter(
    (entry) =>
      !entry.present &&
      (entry.finding === finding || entry.finding === 'abnormality') &&
      entry.part === undefined &&
      entry.level === undefined &&
      takesIn(place, entry.site, entry.side),
  );

/** A place, or the parts that together make it up. */
export interface Zone {
  readonly whole: Place;
  readonly parts?: readonly Place[];
}

function zoneDenials(chart: Chart, zone: Zone, finding: Finding): readonly FindingEntry[] {
  const whole = denials(chart, zone.whole, finding);
  if (whole.length > 0 || zone.parts === undefined) return whole;
  const parts = zone.parts.map((part) => denials(chart, part, finding));
  return parts.every((part) => part.length > 0) ? parts.flat() : [];
}

/** No where each of the findings was denied in every zone, else unknown with the places where that was not said. */
export function deniedInAll(chart: Chart, zones: readonly Zone[], findings: readonly Finding[]): Answer {
  const asked = zones.map((zone) => ({
    zone,
    denied: findings.map((finding) => zoneDenials(chart, zone, finding)),
  }));
  const open = asked.filter((each) => each.denied.some((denied) => denied.length === 0));
  if (open.length === 0) return no(asked.flatMap((each) => each.denied.flat()));
  const places = open.map(({ zone }) => placeText(zone.whole.site, zone.whole.side)).join(', ');
  return unknown([`${findings.map((finding) => finding.replaceAll('-', ' ')).join(' or ')} at: ${places}`]);
}
