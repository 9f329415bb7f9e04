// Injuries: the problems worst first, then what was denied, which limbs' ends are intact, and what was not examined.

import type { Entry } from '../../record/entry.ts';
import type { Day } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { problemsTold } from '../problems.ts';
import { csmTold } from '../sentences/csm.ts';
import { deniedTold } from '../sentences/denials.ts';
import { findingGroups } from '../sentences/groups.ts';
import { and } from '../sentences/list.ts';
import { type Told, written } from '../sentences/told.ts';
import { placesIn, untold } from '../sentences/unexamined.ts';
import { plain, type Sentence } from '../text.ts';

/** The pertinent negatives gathered, head to toe; without those that `given` tells already. */
export function denials(entries: readonly Entry[], day: Day, given: readonly Told[]): readonly Told[] {
  const told = new Set(given.flatMap((one) => one.entries));
  const groups = findingGroups(entries).filter(
    ({ entries: said }) => !said[0].present && !said.every((entry) => told.has(entry)),
  );
  return deniedTold(groups, day);
}

/** `Not examined: …`, or that nothing was left out; never that anything is normal. */
export function notExamined({ coverage }: HandoffInput): readonly Sentence[] {
  if (coverage.length === 0) return [plain('What was not examined was not worked out.')];
  const none = placesIn(coverage, 'not-examined');
  const touched = untold(coverage);
  return [
    plain(none.length === 0 ? 'No site is listed as not examined.' : `Not examined: ${and(none)}.`),
    ...(touched.length === 0 ? [] : [plain(`Touched, with nothing found or denied there: ${and(touched)}.`)]),
  ];
}

export function injuries(input: HandoffInput, day: Day): readonly Sentence[] {
  const problems = problemsTold(input, day);
  return [
    ...(problems.length === 0 ? [plain('No present finding recorded; that clears nothing.')] : []),
    ...problems.map(written),
    ...denials(input.entries, day, problems).map(written),
    ...csmTold(input.entries, day, true).map(written),
    ...notExamined(input),
  ];
}
