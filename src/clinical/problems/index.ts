// Promises the present findings as problems by site, worst first, in the order that the responder gives where they do.

import type { Entry } from '../../record/entry.ts';
import { regionOf, SITES, type Site } from '../../terms/index.ts';
import type { Chart } from '../chart.ts';
import { type Reckoned, reckoned } from '../evidence.ts';
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

interface Group {
  readonly site: Site;
  readonly side: RowSide;
  readonly entries: Entry[];
}

function groupsOf(chart: Chart): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const entry of chart.all) {
    const bad =
      (entry.kind === 'finding' && entry.present) || (entry.kind === 'csm' && !entry.present) ? entry : null;
    if (bad === null) continue;
    for (const side of sidesOf(bad.site, bad.side)) {
      const id = placeText(bad.site, side);
      const group = groups.get(id) ?? { site: bad.site, side, entries: [] };
      group.entries.push(bad);
      groups.set(id, group);
    }
  }
  return [...groups.values()];
}

const nameOf = (entry: Entry): string =>
  entry.kind === 'csm'
    ? `${entry.aspect} not intact`
    : entry.kind === 'finding'
      ? entry.finding.replaceAll('-', ' ')
      : '';

function problemOf(group: Group, red: ReadonlySet<string>, struck: ReadonlySet<string>): Problem {
  const id = placeText(group.site, group.side);
  const { rank, why } = rankOf(group.site, group.entries, red);
  const watchFor = [
    ...(WATCH_BY_REGION[regionOf(group.site)] ?? []),
    ...group.entries.flatMap((entry) =>
      entry.kind === 'finding' ? (WATCH_BY_FINDING[entry.finding] ?? []) : [],
    ),
  ];
  return {
    id,
    text: `${id}: ${[...new Set(group.entries.map(nameOf))].join(', ')}`,
    rank,
    why,
    watchFor: [...new Set(watchFor)],
    by: 'findings',
    struck: struck.has(id),
    ...reckoned(group.entries, COMMON_PRACTICE),
  };
}

const bySite = new Map(SITES.map((site, index) => [site, index]));

/** Worst first by the stated ranks, then in exam order; what the responder ordered goes before, what they struck last. */
export function problemsOf(
  chart: Chart,
  flags: readonly Flag[],
  given: ProblemOrder = {},
): readonly Problem[] {
  const red = new Set(
    flags.filter((flag) => flag.level === 'red' && flag.state === 'met').flatMap((flag) => flag.evidence),
  );
  const struck = new Set(given.struck ?? []);
  const found = groupsOf(chart)
    .map((group) => ({ group, problem: problemOf(group, red, struck) }))
    .sort(
      (a, b) =>
        (a.problem.rank ?? 0) - (b.problem.rank ?? 0) ||
        (bySite.get(a.group.site) ?? 0) - (bySite.get(b.group.site) ?? 0) ||
        (a.problem.id < b.problem.id ? -1 : 1),
    )
    .map(({ problem }) => problem);
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
