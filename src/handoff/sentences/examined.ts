// The findings of a region as a medic tells them: what was found, beside what the other side is like, then what was denied.

import type { Day } from '../../timeline/index.ts';
import { comparedTold, deniedTold } from './denials.ts';
import type { FindingEntry } from './fact.ts';
import { foundTold } from './found.ts';
import type { FactGroup } from './groups.ts';
import { joined, type Told } from './told.ts';

const opposite = ({ side }: FindingEntry): 'left' | 'right' | null =>
  side === 'left' ? 'right' : side === 'right' ? 'left' : null;

/** True where a group denies, of the other side, something that was found on this one. */
function isAgainst(found: FactGroup, denied: FactGroup): boolean {
  const [one] = found.entries;
  const [other] = denied.entries;
  return (
    one.site === other.site &&
    one.level === undefined &&
    one.state === other.state &&
    other.side !== null &&
    other.side === opposite(one) &&
    other.part === undefined &&
    other.level === undefined &&
    denied.entries.some(
      ({ finding }) => finding === 'abnormality' || found.entries.some((entry) => entry.finding === finding),
    )
  );
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
    const beside = foundTold(found, day).map(({ groups: [group], told }) => {
      const against = denied.filter((one) => isAgainst(group, one));
      return joined([told, ...against.map((one) => comparedTold(one, day))]);
    });
    return [...beside, ...deniedTold(left, day)];
  });
}
