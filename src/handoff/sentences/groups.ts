// Findings share a sentence only where place, side, yes-or-no and confirmation are the same: what is listed together was
// each said, and nothing is merged that was not.

import { type Entry, standing } from '../../record/entry.ts';
import { SITES, type Side } from '../../terms/index.ts';
import { inOrder, minuteOf } from '../../timeline/index.ts';
import { type Fact, type FindingEntry, factsOf } from './fact.ts';
import { isAtHome } from './home.ts';
import { unspokenOfFact } from './trust.ts';

export type { FindingEntry } from './fact.ts';

export interface FindingGroup {
  /** never empty; all alike in site, side, level, `present` and confirmation */
  readonly entries: readonly [FindingEntry, ...FindingEntry[]];
  /** true where the sentence must carry the time of the first entry, if `facts` are not given */
  readonly timed: boolean;
  /** the facts that the entries state, each with whether it needs its time */
  readonly facts?: readonly Fact[];
}

/** A group as `findingGroups` makes it. */
export interface FactGroup extends FindingGroup {
  readonly facts: readonly [Fact, ...Fact[]];
}

const SIDE_ORDER: readonly (Side | null)[] = ['left', 'right', 'both', 'midline', null];

/** Absent ones stand under one "no" with one place, so their part, time and marks must be the same too. */
function groupKey({ entries, latest, when }: Fact): string {
  const { site, side, level, present, state, part, at } = latest;
  const absent = present
    ? []
    : [part ?? '', when === 'never' ? '' : `${when} ${minuteOf(at)}`, unspokenOfFact(entries)];
  const home = isAtHome(latest) ? latest.finding : '';
  return [site, side, level ?? '', present, state, home, ...absent].join('|');
}

const inBodyOrder = (one: FactGroup, other: FactGroup): number => {
  const [a] = one.entries;
  const [b] = other.entries;
  return (
    SITES.indexOf(a.site) - SITES.indexOf(b.site) ||
    Number(b.present) - Number(a.present) ||
    SIDE_ORDER.indexOf(a.side) - SIDE_ORDER.indexOf(b.side) ||
    Date.parse(a.at) - Date.parse(b.at)
  );
};

const groupOf = (facts: readonly [Fact, ...Fact[]]): FactGroup => {
  const [first, ...others] = facts;
  const entries = [...first.entries, ...others.flatMap((fact) => fact.entries)] as const;
  return { entries, facts, timed: facts.some(({ when }) => when !== 'never') };
};

/** The standing findings in groups, head to toe; at one site the present ones first, then left before right. */
export function findingGroups(entries: readonly Entry[]): readonly FactGroup[] {
  const groups = new Map<string, [Fact, ...Fact[]]>();
  for (const fact of factsOf(standing(inOrder(entries), 'finding'))) {
    const key = groupKey(fact);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [fact]);
    else group.push(fact);
  }
  return [...groups.values()].map(groupOf).sort(inBodyOrder);
}
