// What is worked out from the open record, anew whenever it or the time changes, and only while something shows it.

import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { leftText, type Memo, type Reckoning, reckonAfter } from '../../clinical/index.ts';
import type { HandoffInput } from '../../handoff/index.ts';
import { type Derived, type Desk, timeIn } from '../desk/index.ts';
import { MINUTES, type VitalsPace } from '../voice/reminding.ts';

export interface Worked {
  readonly reckoning: ReadonlySignal<Reckoning>;
  readonly report: ReadonlySignal<HandoffInput>;
  /** the answer to "what's left" */
  readonly left: ReadonlySignal<string>;
}

/** The reckoning of the open record at its own time, and what its reports are made from. */
export function workOut(
  desk: Desk,
  { entries, startedAt }: Derived,
  pace: ReadonlySignal<VitalsPace> = signal('usual'),
): Worked {
  const now = computed(() => {
    const record = desk.record.value;
    return record === null ? desk.wall.value : timeIn(record, desk.wall.value);
  });
  const problems = computed(() => desk.record.value?.exam.state.problemChanges ?? []);
  // What was worked out for the entries before, so that a rule is asked again only where something it looked at changed.
  let memo: Memo | null = null;
  const reckoning = computed(() => {
    const worked = reckonAfter(memo, entries.value, {
      now: now.value,
      problems: problems.value,
      due: MINUTES[pace.value],
    });
    memo = worked.memo;
    return worked.reckoning;
  });
  const report = computed((): HandoffInput => {
    const { coverage, flags, scores, scoreCards, problems } = reckoning.value;
    const at = { startedAt: startedAt.value, now: now.value };
    return { ...at, entries: entries.value, coverage, flags, scores, scoreCards, problems };
  });
  return { reckoning, report, left: computed(() => leftText(reckoning.value)) };
}
