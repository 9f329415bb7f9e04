// Findings share a sentence only where place, side, yes-or-no, minute and trust are all the same: nothing is merged that was not said.

import { type Entry, standing } from '../../record/entry.ts';
import { SITES, type Side } from '../../terms/index.ts';
import { inOrder, minuteOf } from '../../timeline/index.ts';
import { trustOf } from './trust.ts';

export type FindingEntry = Extract<Entry, { kind: 'finding' }>;

export interface FindingGroup {
  /** never empty; all alike in place, side, `present`, minute and trust */
  readonly entries: readonly [FindingEntry, ...FindingEntry[]];
  /** true where the sentence must carry its time: it was spoken, or the same thing was said again at another time */
  readonly timed: boolean;
}

const SIDE_ORDER: readonly (Side | null)[] = ['left', 'right', 'both', 'midline', null];

const sameThing = (entry: FindingEntry): string =>
  [entry.site, entry.side, entry.finding, entry.part ?? '', entry.level ?? ''].join('|');

const groupKey = (entry: FindingEntry, timed: boolean): string =>
  [
    entry.site,
    entry.side,
    entry.part ?? '',
    entry.level ?? '',
    entry.present,
    minuteOf(entry.at),
    trustOf(entry),
    timed,
  ].join('|');

/** True for a thing that was stated more than once, in another minute or with the other answer. */
function saidAgain(findings: readonly FindingEntry[]): (entry: FindingEntry) => boolean {
  const said = new Map<string, Set<string>>();
  for (const entry of findings) {
    const times = said.get(sameThing(entry)) ?? new Set();
    said.set(sameThing(entry), times.add(`${minuteOf(entry.at)} ${entry.present}`));
  }
  return (entry) => (said.get(sameThing(entry))?.size ?? 0) > 1;
}

const inBodyOrder = (one: FindingGroup, other: FindingGroup): number => {
  const [a] = one.entries;
  const [b] = other.entries;
  return (
    SITES.indexOf(a.site) - SITES.indexOf(b.site) ||
    Number(b.present) - Number(a.present) ||
    SIDE_ORDER.indexOf(a.side) - SIDE_ORDER.indexOf(b.side) ||
    Date.parse(a.at) - Date.parse(b.at)
  );
};

/** The standing findings in groups, head to toe; at one site the present ones first, then left before right. */
export function findingGroups(entries: readonly Entry[]): readonly FindingGroup[] {
  const findings = standing(inOrder(entries), 'finding');
  const again = saidAgain(findings);
  const groups = new Map<string, { entries: [FindingEntry, ...FindingEntry[]]; timed: boolean }>();
  for (const entry of findings) {
    const timed = again(entry) || minuteOf(entry.at) !== minuteOf(entry.heardAt);
    const key = groupKey(entry, timed);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { entries: [entry], timed });
    else group.entries.push(entry);
  }
  return [...groups.values()].sort(inBodyOrder);
}
