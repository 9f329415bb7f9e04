// Present findings as problems, the worst first, each beside whatever was said against it.

import { standing } from '../record/entry.ts';
import type { Day } from '../timeline/index.ts';
import type { HandoffInput } from './input.ts';
import { rankOf } from './problem-order.ts';
import { csmTold } from './sentences/csm.ts';
import { type FindingEntry, isContrary } from './sentences/fact.ts';
import { findingTold } from './sentences/finding.ts';
import { type FactGroup, findingGroups } from './sentences/groups.ts';
import { joined, type Told } from './sentences/told.ts';

/** The standing answers that say the opposite of a present finding, in words, each with its time. */
function against(absent: readonly FindingEntry[], group: FactGroup, day: Day): readonly Told[] {
  const contrary = absent.filter((entry) => group.entries.some((present) => isContrary(present, entry)));
  return findingGroups(contrary).map(({ entries }) => {
    const told = findingTold({ entries, timed: true }, day);
    return { ...told, words: `also said: ${told.words.replace(/^No /, 'no ')}` };
  });
}

/** One for each place with a present finding and each limb that is not intact, worst first. */
export function problemsTold(input: HandoffInput, day: Day): readonly Told[] {
  const rank = rankOf(input);
  const absent = standing(input.entries, 'finding').filter(({ present }) => !present);
  const findings = findingGroups(input.entries)
    .filter(({ entries: [first] }) => first.present)
    .map((group) => joined([findingTold(group, day), ...against(absent, group, day)]));
  const limbs = csmTold(input.entries, day, false);
  const own = (input.problems ?? [])
    .filter(({ by, struck }) => by === 'responder' && !struck)
    .map((problem): Told => ({ words: `${problem.text} (added by the responder)`, entries: [] }));
  const ranked = [...findings, ...limbs].map((told) => ({ told, rank: rank(told.entries) }));
  const sorted = [...ranked].sort((one, other) => one.rank - other.rank).map(({ told }) => told);
  return [...sorted, ...own];
}
