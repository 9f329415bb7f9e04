// What was found at one place in one sentence; ribs of one side of which the same was found share theirs.

import type { Day } from '../../timeline/index.ts';
import type { FindingEntry } from './fact.ts';
import { findingTold } from './finding.ts';
import type { FactGroup } from './groups.ts';
import { and, once } from './list.ts';
import { findingPhrase } from './phrase.ts';
import type { Told } from './told.ts';
import { unspokenOfFact } from './trust.ts';

export interface Found {
  /** never empty */
  readonly groups: readonly [FactGroup, ...FactGroup[]];
  readonly told: Told;
}

const ribOf = ({ site, level }: FindingEntry): string | null =>
  site === 'ribs' && level?.startsWith('rib-') === true ? level.slice(4) : null;

/** What the ribs of one side must have in common to share a sentence; null for anything else. */
function ribKey({ facts, entries: [first] }: FactGroup): string | null {
  if (ribOf(first) === null || (first.side !== 'left' && first.side !== 'right')) return null;
  if (facts.some(({ when, latest }) => when !== 'never' || latest.part !== undefined)) return null;
  const slots = new Set(facts.map(({ entries }) => unspokenOfFact(entries).join()));
  if (slots.size > 1) return null;
  const phrases = facts.map(({ latest }) => findingPhrase(latest)).sort();
  return [first.side, first.state, ...slots, ...phrases].join('|');
}

/** `Left ribs 7 and 8: tenderness and crepitus` */
function ribsTold(groups: readonly [FactGroup, ...FactGroup[]], day: Day): Told {
  const [{ facts, entries }] = groups;
  const [{ side }] = entries;
  const what = and(once(facts.map(({ latest }) => findingPhrase(latest))));
  const numbers = and(groups.map((group) => ribOf(group.entries[0]) ?? ''));
  return {
    words: `${side === 'left' ? 'Left' : 'Right'} ribs ${numbers}: ${what}`,
    entries: groups.flatMap((group) => group.entries),
    slots: unspokenOfFact(facts[0].entries),
    clauses: groups.map((group) => findingTold(group, day)),
  };
}

/** The groups of present findings, each with its sentence, in the order given. */
export function foundTold(found: readonly FactGroup[], day: Day): readonly Found[] {
  return found.flatMap((group): readonly Found[] => {
    const key = ribKey(group);
    if (key === null) return [{ groups: [group], told: findingTold(group, day) }];
    const [first, ...others] = found.filter((one) => ribKey(one) === key);
    if (first !== group) return [];
    const groups = [first, ...others] as const;
    return [{ groups, told: others.length === 0 ? findingTold(group, day) : ribsTold(groups, day) }];
  });
}
