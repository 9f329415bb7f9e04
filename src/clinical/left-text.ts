// The spoken answer to "what's left": what was not examined, in exam order and short; nothing is called normal by it.

import { REGIONS, type Region, type Site } from '../terms/index.ts';
import type { CoverageRow } from './coverage.ts';
import type { LimbEnd, Step } from './exam/index.ts';
import { isWithin, type Place } from './place.ts';

/** What the answer rests on: a part of a reckoning. */
export interface Left {
  readonly steps: readonly Step[];
  readonly limbEnds: readonly LimbEnd[];
  readonly coverage: readonly CoverageRow[];
}

/** More than these and the rest are counted: nobody keeps a longer list in the ear. */
const MOST = 8;

const PLURAL: Readonly<Partial<Record<Site, string>>> = { foot: 'feet', ribs: 'ribs' };

const spoken = (site: Site): string => site.replaceAll('-', ' ');
const plural = (site: Site): string => PLURAL[site] ?? `${spoken(site)}s`;

/** `the pelvis`, `left knee`, `both knees` */
function placeName(site: Site, sides: readonly Step['place']['side'][]): string {
  if (sides.includes('left') && sides.includes('right')) return `both ${plural(site)}`;
  const side = sides[0] ?? null;
  return side === null ? spoken(site) : `${side} ${spoken(site)}`;
}

type Wanted = (step: Step) => boolean;

function inSided(
  region: 'shoulder' | 'arm' | 'leg',
  steps: readonly Step[],
  wanted: Wanted,
): readonly string[] {
  const whole = (['left', 'right'] as const).filter((side) =>
    steps.filter((step) => step.place.side === side).every(wanted),
  );
  const rest = steps.filter((step) => wanted(step) && !whole.some((side) => side === step.place.side));
  return [...(whole.length === 0 ? [] : [placeName(region, whole)]), ...bySite(rest)];
}

function bySite(steps: readonly Step[]): readonly string[] {
  const sites = [...new Set(steps.map((step) => step.place.site))];
  return sites.map((site) =>
    placeName(
      site,
      steps.filter((step) => step.place.site === site).map((step) => step.place.side),
    ),
  );
}

function inRegion(region: Region, steps: readonly Step[], wanted: Wanted): readonly string[] {
  if (region === 'shoulder' || region === 'arm' || region === 'leg') return inSided(region, steps, wanted);
  return steps.every(wanted) ? [region] : bySite(steps.filter(wanted));
}

/** The wanted steps in exam order: whole regions and limbs where all of their steps are wanted, else the sites. */
const named = (steps: readonly Step[], wanted: Wanted): readonly string[] =>
  REGIONS.flatMap((region) => {
    const there = steps.filter((step) => step.region === region);
    return there.length === 0 ? [] : inRegion(region, there, wanted);
  });

/** The parts left to examine, in exam order: whole regions where nothing of them was said, else their sites. */
export const leftParts = (steps: readonly Step[]): readonly string[] =>
  named(steps, (step) => step.state === 'not-examined');

const list = (names: readonly string[]): string => names.join(', ');

function counted(names: readonly string[]): string {
  const rest = names.length - MOST;
  return rest > 1 ? `${list(names.slice(0, MOST))}, and ${rest} more` : list(names);
}

/** Hands and feet of which circulation, sensation or motion was not checked at all, and those where a part lacks. */
function unchecked(limbEnds: readonly LimbEnd[]): readonly string[] {
  const open = limbEnds.filter((end) => end.state === 'not-checked');
  const wholly = (place: LimbEnd['place']): boolean =>
    limbEnds.every((end) => end.place !== place || end.state === 'not-checked');
  const none = [...new Set(open.map((end) => end.place))].filter(wholly);
  const sites = [...new Set(none.map((place) => place.site))];
  const whole = sites.map((site) =>
    placeName(
      site,
      none.filter((place) => place.site === site).map((place) => place.side),
    ),
  );
  const parts = open
    .filter((end) => !none.includes(end.place))
    .map((end) => `${end.aspect} of the ${end.place.side} ${end.place.site}`);
  return [...(whole.length === 0 ? [] : [`C S M of ${whole.join(' and ')}`]), ...parts];
}

/** True where a wider site was found or denied something of: "left arm, burned" spoke of the forearm with it. */
const isSpokenOf = (place: Place, rows: readonly CoverageRow[]): boolean =>
  rows.some(
    (row) =>
      (row.state === 'found' || row.state === 'clear') &&
      row.site !== place.site &&
      isWithin(place.site, row.site) &&
      (row.side === null || row.side === place.side),
  );

/**
 * What to say to "what's left". Sites that were only looked at or felt are named apart, since nothing was said of them;
 * where nothing is left it says that every step was spoken of, and not what was found.
 */
export function leftText({ steps, limbEnds, coverage }: Left): string {
  const parts = leftParts(steps);
  const touched = named(steps, (step) => step.state === 'touched' && !isSpokenOf(step.place, coverage));
  const checks = unchecked(limbEnds);
  const sentences = [
    ...(parts.length === 0 ? [] : [`Left to examine: ${counted(parts)}.`]),
    ...(touched.length === 0 ? [] : [`Touched, nothing said: ${counted(touched)}.`]),
    ...(checks.length === 0 ? [] : [`Not checked: ${counted(checks)}.`]),
  ];
  return sentences.length === 0 ? 'Every step was spoken of.' : sentences.join(' ');
}
