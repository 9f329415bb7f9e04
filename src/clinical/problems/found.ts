// What was found at each site, by side: findings that are present, and a limb's end that is weak, decreased or lost.

import { regionOf, SITES, type Site } from '../../terms/index.ts';
import type { Chart, EntryOf, Rule } from '../chart.ts';
import { reckoned } from '../evidence.ts';
import { findingName } from '../finding-name.ts';
import { isImpaired, limbWord } from '../limb-end.ts';
import { placeText } from '../place.ts';
import { type RowSide, sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';
import type { Found } from './problem.ts';
import { rankOf } from './rank.ts';
import { WATCH_BY_FINDING, WATCH_BY_QUALITY, WATCH_BY_REGION } from './watch.ts';

type Bad = EntryOf<'finding'> | EntryOf<'csm'>;

const nameOf = (entry: Bad): string =>
  entry.kind === 'finding' ? findingName(entry) : `${entry.aspect} ${limbWord(entry)}`;

const watchFor = (entry: Bad): readonly string[] =>
  entry.kind === 'csm'
    ? []
    : [
        ...(WATCH_BY_FINDING[entry.finding] ?? []),
        ...(entry.quality ?? []).flatMap((word) => WATCH_BY_QUALITY[word] ?? []),
      ];

function foundOn(site: Site, side: RowSide, entries: readonly Bad[]): Found {
  const id = placeText(site, side);
  const watched = [...(WATCH_BY_REGION[regionOf(site)] ?? []), ...entries.flatMap(watchFor)];
  return {
    site,
    side,
    heardAt: entries.map((entry) => entry.heardAt),
    problem: {
      id,
      text: `${id}: ${[...new Set(entries.map(nameOf))].join(', ')}`,
      ...rankOf(site, entries),
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
      site,
      side,
      bad.filter((entry) => sidesOf(site, entry.side).includes(side)),
    ),
  );
}

/** A rule for each site, in exam order. */
export const PROBLEM_RULES: readonly Rule<readonly Found[]>[] = SITES.map(
  (site) => (chart) => foundAt(chart, site),
);
