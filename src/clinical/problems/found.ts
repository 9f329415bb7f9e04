// What was found at each site, by side: findings that are present, and a limb's end that is weak, decreased or lost.

import { ASPECTS, type Aspect, regionOf, SITES, type Site } from '../../terms/index.ts';
import { type Chart, clockText, type EntryOf, type Rule } from '../chart.ts';
import { reckoned } from '../evidence.ts';
import { findingName } from '../finding-name.ts';
import { checksOf, impairedOf, isAbsent, isImpaired, limbWord, standingOf, wordsOf } from '../limb-end.ts';
import { isWithin, type Place, placeText } from '../place.ts';
import { sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';
import { graveness } from './graveness.ts';
import type { Found } from './problem.ts';
import { rankOf } from './rank.ts';
import { WATCH_BY_FINDING, WATCH_BY_QUALITY, WATCH_BY_REGION } from './watch.ts';

type Bad = EntryOf<'finding'> | EntryOf<'csm'>;

/** Findings by name; of each aspect of a limb's end how it is now, and how it was where that has passed. */
function namesOf(
  entries: readonly Bad[],
  standing: (aspect: Aspect) => readonly EntryOf<'csm'>[],
): readonly string[] {
  const findings = entries.flatMap((entry) => (entry.kind === 'finding' ? [findingName(entry)] : []));
  const checks = entries.filter((entry) => entry.kind === 'csm');
  const aspects = ASPECTS.flatMap((aspect) => {
    const [worst] = impairedOf(checks.filter((entry) => entry.aspect === aspect).toReversed());
    const now = standing(aspect);
    const latest = now.at(-1);
    if (worst === undefined) return [];
    return latest === undefined || now.some(isImpaired)
      ? [`${aspect} ${wordsOf(now)}`]
      : [`${aspect} ${limbWord(latest)} ${clockText(latest)}, ${limbWord(worst)} ${clockText(worst)}`];
  });
  return [...new Set([...findings, ...aspects])];
}

const watchFor = (entry: Bad): readonly string[] =>
  entry.kind === 'csm'
    ? []
    : [
        ...(WATCH_BY_FINDING[entry.finding] ?? []),
        ...(entry.quality ?? []).flatMap((word) => WATCH_BY_QUALITY[word] ?? []),
      ];

/** True where a tourniquet is on the limb that this is the end of. */
const isTied = (chart: Chart, { site, side }: Place): boolean =>
  chart.care.some(
    (care) =>
      care.care === 'tourniquet' &&
      care.site !== undefined &&
      isWithin(care.site, site === 'hand' ? 'arm' : 'leg') &&
      ((care.side ?? null) === null || care.side === 'both' || care.side === side),
  );

function foundOn(chart: Chart, { site, side }: Place, entries: readonly Bad[]): Found {
  const id = placeText(site, side);
  const standing = (aspect: Aspect) => {
    const checks = checksOf(chart, { site, side }, aspect);
    // A foot of which the side was not said is no limb's end of the twelve.
    const own = entries.filter((entry) => entry.kind === 'csm').filter((entry) => entry.aspect === aspect);
    return standingOf(checks.length > 0 ? checks : own);
  };
  // A digit alone is not the limb, what has come back is no longer lost, and below a tourniquet it is what was meant.
  const isLost =
    entries.some(({ kind }) => kind === 'csm') &&
    !isTied(chart, { site, side }) &&
    ASPECTS.some((aspect) => standing(aspect).some((entry) => isAbsent(entry) && entry.digit === undefined));
  const watched = [...(WATCH_BY_REGION[regionOf(site)] ?? []), ...entries.flatMap(watchFor)];
  return {
    site,
    side,
    heardAt: entries.map((entry) => entry.heardAt),
    graveness: Math.min(...entries.map(graveness)),
    problem: {
      id,
      text: `${id}: ${namesOf(entries, standing).join(', ')}`,
      ...rankOf(site, entries, isLost),
      watchFor: [...new Set(watched)],
      by: 'findings',
      struck: false,
      ...reckoned(entries, COMMON_PRACTICE),
    },
  };
}

function foundAt(chart: Chart, site: Site): readonly Found[] {
  const ends = site === 'hand' || site === 'foot' ? chart.at(site) : [];
  const bad = [...chart.foundAt(site), ...ends.filter((entry) => entry.kind === 'csm').filter(isImpaired)];
  const sides = new Set(bad.flatMap((entry) => sidesOf(site, entry.side)));
  return [...sides].sort().map((side) =>
    foundOn(
      chart,
      { site, side },
      bad.filter((entry) => sidesOf(site, entry.side).includes(side)),
    ),
  );
}

/** A rule for each site, in exam order. */
export const PROBLEM_RULES: readonly Rule<readonly Found[]>[] = SITES.map(
  (site) => (chart) => foundAt(chart, site),
);
