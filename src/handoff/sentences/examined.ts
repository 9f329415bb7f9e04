// The findings of a region as a medic tells them: what was found, beside what the other side is like, then what was denied.

import type { Day } from '../../timeline/index.ts';
import { comparedTold, deniedTold } from './denials.ts';
import type { FindingEntry } from './fact.ts';
import { findingTold } from './finding.ts';
import type { FactGroup } from './groups.ts';
import { and, once } from './list.ts';
import { findingPhrase } from './phrase.ts';
import { joined, type Told } from './told.ts';
import { unspokenIn } from './trust.ts';

const opposite = ({ side }: FindingEntry): 'left' | 'right' | null =>
  side === 'left' ? 'right' : side === 'right' ? 'left' : null;

/** True where a group denies, of the other side, something that was found on this one. */
function isAgainst(found: FactGroup, denied: FactGroup): boolean {
  const [one] = found.entries;
  const [other] = denied.entries;
  return (
    one.site === other.site &&
    one.state === other.state &&
    other.side !== null &&
    other.side === opposite(one) &&
    other.part === undefined &&
    denied.entries.some(
      ({ finding }) => finding === 'abnormality' || found.entries.some((entry) => entry.finding === finding),
    )
  );
}

const ribOf = ({ site, level }: FindingEntry): string | null =>
  site === 'ribs' && level?.startsWith('rib-') === true ? level.slice(4) : null;

/** What the ribs of one side must have in common to share a sentence. */
function ribKey({ facts, entries }: FactGroup): string | null {
  const [first] = entries;
  if (ribOf(first) === null || (first.side !== 'left' && first.side !== 'right')) return null;
  if (facts.some(({ when, latest }) => when !== 'never' || latest.part !== undefined)) return null;
  return [
    first.side,
    first.state,
    unspokenIn(entries),
    ...facts.map(({ latest }) => findingPhrase(latest)),
  ].join('|');
}

/** `Left ribs 7 and 8: tenderness and crepitus`, where the same was found of each. */
function ribsTold(groups: readonly FactGroup[], day: Day): Told | null {
  const [first] = groups;
  if (first === undefined) return null;
  const told = groups.map((group) => findingTold(group, day));
  if (groups.length === 1) return told[0] ?? null;
  const [entry] = first.entries;
  const what = and(once(first.facts.map(({ latest }) => findingPhrase(latest))));
  const numbers = and(groups.map(({ entries: [one] }) => ribOf(one) ?? ''));
  const side = entry.side === 'left' ? 'Left' : 'Right';
  return {
    words: `${side} ribs ${numbers}: ${what}`,
    entries: groups.flatMap(({ entries }) => entries),
    clauses: told,
  };
}

function foundTold(found: readonly FactGroup[], denied: readonly FactGroup[], day: Day): readonly Told[] {
  return found.flatMap((group) => {
    const key = ribKey(group);
    if (key !== null) {
      const alike = found.filter((one) => ribKey(one) === key);
      const told = alike[0] === group ? ribsTold(alike, day) : null;
      return told === null ? [] : [told];
    }
    const against = denied.filter((one) => isAgainst(group, one)).map((one) => comparedTold(one, day));
    return [joined([findingTold(group, day), ...against])];
  });
}

/**
 * The sentences of a region's groups, confirmed ones first; in each half what was found, then what was denied. A denial
 * that stands beside the other side's finding is not told again.
 */
export function examinedTold(groups: readonly FactGroup[], day: Day): readonly Told[] {
  return [true, false].flatMap((confirmed) => {
    const half = groups.filter(({ entries: [first] }) => (first.state === 'confirmed') === confirmed);
    const found = half.filter(({ entries: [first] }) => first.present);
    const denied = half.filter(({ entries: [first] }) => !first.present);
    const left = denied.filter((one) => !found.some((group) => isAgainst(group, one)));
    return [...foundTold(found, denied, day), ...deniedTold(left, day)];
  });
}
