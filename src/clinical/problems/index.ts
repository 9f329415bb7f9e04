// Promises the present findings as problems by site, worst first, in the order that the responder gives where they do.

import { regionOf, SITES, type Site } from '../../terms/index.ts';
import type { Chart, EntryOf, Rule } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
import { findingName } from '../finding-name.ts';
import { isImpaired, limbWord } from '../limb-end.ts';
import { placeText } from '../place.ts';
import { type RowSide, sidesOf } from '../side.ts';
import { COMMON_PRACTICE } from '../source.ts';
import type { Flag } from '../triage/index.ts';
import { rankOf } from './rank.ts';
import { WATCH_BY_FINDING, WATCH_BY_REGION } from './watch.ts';

/** What the responder did to the list: ids first in their order, problems of their own, and ids struck from it. */
export interface ProblemOrder {
  readonly order?: readonly string[];
  readonly added?: readonly { readonly id: string; readonly text: string }[];
  readonly struck?: readonly string[];
}

export interface Problem extends Reckoned {
  /** stays the same while the site has a finding: `left wrist` */
  readonly id: string;
  readonly text: string;
  /** 1 worst to 5; null for a problem that the responder added */
  readonly rank: number | null;
  readonly why: string;
  /** what to watch for; it has not happened */
  readonly watchFor: readonly string[];
  readonly by: 'findings' | 'responder';
  readonly struck: boolean;
}

type Bad = EntryOf<'finding'> | EntryOf<'csm'>;

/** What was found at one place, before it is ranked. */
interface Group {
  readonly site: Site;
  readonly entries: readonly Bad[];
  readonly facts: Pick<Problem, 'id' | 'text' | 'watchFor' | 'by' | keyof Reckoned>;
}

const nameOf = (entry: Bad): string => {
  if (entry.kind === 'finding') return findingName(entry);
  const word = limbWord(entry);
  return `${entry.aspect} ${word}`;
};

function groupAt(site: Site, side: RowSide, entries: readonly Bad[]): Group {
  const id = placeText(site, side);
  const watchFor = [
    ...(WATCH_BY_REGION[regionOf(site)] ?? []),
    ...entries.flatMap((entry) => (entry.kind === 'finding' ? (WATCH_BY_FINDING[entry.finding] ?? []) : [])),
  ];
  return {
    site,
    entries,
    facts: {
      id,
      text: `${id}: ${[...new Set(entries.map(nameOf))].join(', ')}`,
      watchFor: [...new Set(watchFor)],
      by: 'findings',
      ...reckoned(entries, COMMON_PRACTICE),
    },
  };
}

function groupsAt(chart: Chart, site: Site): readonly Group[] {
  const bad = [
    ...chart.foundAt(site),
    ...(site === 'hand' || site === 'foot'
      ? chart.csm.filter((entry) => entry.site === site && isImpaired(entry))
      : []),
  ];
  const sides = new Set(bad.flatMap((entry) => sidesOf(site, entry.side)));
  return [...sides].sort().map((side) =>
    groupAt(
      site,
      side,
      bad.filter((entry) => sidesOf(site, entry.side).includes(side)),
    ),
  );
}

/** A rule for each site: what was found there, by side. */
export const PROBLEM_RULES: readonly Rule<readonly Group[]>[] = SITES.map(
  (site) => (chart) => groupsAt(chart, site),
);

/** Worst first by the stated ranks, then in exam order; what the responder ordered goes before, what they struck last. */
export function problemsOf(
  groups: readonly Group[],
  flags: readonly Flag[],
  given: ProblemOrder = {},
): readonly Problem[] {
  const red = new Set(
    flags.filter((flag) => flag.level === 'red' && flag.state === 'met').flatMap((flag) => flag.evidence),
  );
  const struck = new Set(given.struck ?? []);
  const found = groups
    .map(
      (group): Problem => ({
        ...group.facts,
        ...rankOf(group.site, group.entries, red),
        struck: struck.has(group.facts.id),
      }),
    )
    // The groups come in exam order, which a sort by rank alone keeps.
    .sort((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
  const added = (given.added ?? []).map(
    (own): Problem => ({
      id: own.id,
      text: own.text,
      rank: null,
      why: 'added by the responder',
      watchFor: [],
      by: 'responder',
      struck: struck.has(own.id),
      ...reckoned([], COMMON_PRACTICE),
    }),
  );
  const all = [...found, ...added];
  const first = (given.order ?? []).flatMap((id) => all.filter((problem) => problem.id === id));
  const listed = [...new Set([...first, ...all])];
  return [...listed.filter((problem) => !problem.struck), ...listed.filter((problem) => problem.struck)];
}
