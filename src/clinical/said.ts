// What was found and what was denied on the body: a denial counts for the place it names and for all that lies in it.

import { FINDINGS, type Finding, type Site } from '../terms/index.ts';
import { type Answer, no, unknown } from './answer.ts';
import type { Chart, EntryOf, Rule } from './chart.ts';
import { isWithin, type Place, placeText, SELF_AND_HOLDERS, takesIn } from './place.ts';

export type FindingEntry = EntryOf<'finding'>;

/** Present findings of these kinds at these sites or within them, on any side. */
export const foundWithin = (
  chart: Chart,
  sites: readonly Site[],
  findings: readonly Finding[],
): readonly FindingEntry[] =>
  findings
    .flatMap((finding) => chart.found(finding))
    .filter((entry) => sites.some((site) => isWithin(entry.site, site)));

/** Present findings of these kinds at exactly these sites. */
export const foundAt = (
  chart: Chart,
  sites: readonly Site[],
  findings: readonly Finding[],
): readonly FindingEntry[] =>
  findings.flatMap((finding) => chart.found(finding)).filter((entry) => sites.includes(entry.site));

type BySite = ReadonlyMap<Site, readonly FindingEntry[]>;

function bySite(entries: readonly FindingEntry[]): BySite {
  const sites = new Map<Site, FindingEntry[]>();
  for (const entry of entries) {
    const there = sites.get(entry.site);
    if (there === undefined) sites.set(entry.site, [entry]);
    else there.push(entry);
  }
  return sites;
}

/** A rule for each finding: its denials by the site they name. The many questions about one share its answer. */
const DENIED = Object.fromEntries(
  FINDINGS.map((finding) => [finding, (chart: Chart) => bySite(chart.denied(finding))]),
) as Readonly<Record<Finding, Rule<BySite>>>;

/** The denials of a finding, and those of anything abnormal. */
type Denied = readonly BySite[];

const deniedOf = (chart: Chart, finding: Finding): Denied =>
  finding === 'abnormality'
    ? [chart.ask(DENIED.abnormality)]
    : [chart.ask(DENIED[finding]), chart.ask(DENIED.abnormality)];

/** A place is ruled out by a denial at it or at a wider site that takes it in. */
function denialsOf(denied: Denied, place: Place): readonly FindingEntry[] {
  const ruledOut: FindingEntry[] = [];
  for (const site of SELF_AND_HOLDERS[place.site])
    for (const sites of denied)
      for (const entry of sites.get(site) ?? []) if (takesIn(place, site, entry.side)) ruledOut.push(entry);
  return ruledOut;
}

/**
 * The denials that rule the finding out for the whole place: of that finding, or of anything abnormal, at the place or
 * at a wider one.
 */
export const denials = (chart: Chart, place: Place, finding: Finding): readonly FindingEntry[] =>
  denialsOf(deniedOf(chart, finding), place);

/** A place, or the parts that together make it up. */
export interface Zone {
  readonly whole: Place;
  readonly parts?: readonly Place[];
}

function zoneDenials(denied: Denied, zone: Zone): readonly FindingEntry[] {
  const whole = denialsOf(denied, zone.whole);
  if (whole.length > 0 || zone.parts === undefined) return whole;
  const parts = zone.parts.map((part) => denialsOf(denied, part));
  return parts.every((part) => part.length > 0) ? parts.flat() : [];
}

/** No where each of the findings was denied in every zone, else unknown with the places where that was not said. */
export function deniedInAll(chart: Chart, zones: readonly Zone[], findings: readonly Finding[]): Answer {
  const all = findings.map((finding) => deniedOf(chart, finding));
  const asked = zones.map((zone) => ({ zone, denied: all.map((denied) => zoneDenials(denied, zone)) }));
  const open = asked.filter((each) => each.denied.some((denied) => denied.length === 0));
  if (open.length === 0) return no(asked.flatMap((each) => each.denied.flat()));
  const places = open.map(({ zone }) => placeText(zone.whole.site, zone.whole.side)).join(', ');
  return unknown([`${findings.map((finding) => finding.replaceAll('-', ' ')).join(' or ')} at: ${places}`]);
}
