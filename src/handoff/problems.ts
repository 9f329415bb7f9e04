// Present findings as problems, the worst first, each beside whatever was said against it.

import { standing } from '../record/entry.ts';
import type { Day } from '../timeline/index.ts';
import type { HandoffInput } from './input.ts';
import { rankOf } from './problem-order.ts';
import { limbProblems } from './sentences/csm-return.ts';
import { type FindingEntry, isContrary, isGone } from './sentences/fact.ts';
import { findingTold } from './sentences/finding.ts';
import { foundTold } from './sentences/found.ts';
import { type FactGroup, findingGroups } from './sentences/groups.ts';
import { capital } from './sentences/list.ts';
import { joined, type Told } from './sentences/told.ts';

/** The standing answers that say the opposite of a present finding, in words, each with its time. */
function against(absent: readonly FindingEntry[], groups: readonly FactGroup[], day: Day): readonly Told[] {
  const found = groups.flatMap(({ entries }) => entries);
  const contrary = absent.filter((entry) =>
    found.some((present) => isContrary(present, entry) || isGone(present, entry)),
  );
  return findingGroups(contrary).map(({ entries }) => {
    const told = findingTold({ entries, timed: true }, day);
    return { ...told, words: `also said: ${told.words.replace(/^No /, 'no ')}` };
  });
}

/** One for each place with a present finding and each limb that is not intact, worst first. */
export function problemsTold(input: HandoffInput, day: Day): readonly Told[] {
  const rank = rankOf(input);
  const absent = standing(input.entries, 'finding').filter(({ present }) => !present);
  const present = findingGroups(input.entries).filter(({ entries: [first] }) => first.present);
  const findings = foundTold(present, day).map(({ groups, told }) => ({
    told: joined([told, ...against(absent, groups, day)]),
    rank: rank(groups.flatMap(({ entries }) => entries)),
  }));
  const limbs = limbProblems(input.entries, day, 'any').map((told) => ({ told, rank: rank(told.entries) }));
  const own = (input.problems ?? [])
    .filter(({ by, struck }) => by === 'responder' && !struck)
    .map(({ text }): Told => ({ words: `${capital(text)} (added by the responder)`, entries: [] }));
  const sorted = [...findings, ...limbs].sort((one, other) => one.rank - other.rank);
  return [...sorted.map(({ told }) => told), ...own];
}
