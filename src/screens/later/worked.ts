// What is worked out from the open record, anew whenever it or the time changes, and only while something shows it.

import { computed, type ReadonlySignal } from '@preact/signals';
import { type Reckoning, reckon } from '../../clinical/index.ts';
import type { HandoffInput } from '../../handoff/index.ts';
import { type Derived, type Desk, timeIn } from '../desk/index.ts';

export interface Worked {
  readonly reckoning: ReadonlySignal<Reckoning>;
  readonly report: ReadonlySignal<HandoffInput>;
}

/** The reckoning of the open record at its own time, and what its reports are made from. */
export function workOut(desk: Desk, { entries, startedAt }: Derived): Worked {
  const now = computed(() => {
    const record = desk.record.value;
    return record === null ? desk.wall.value : timeIn(record, desk.wall.value);
  });
  const reckoning = computed(() => reckon(entries.value, { now: now.value }));
  const report = computed((): HandoffInput => {
    const { coverage, flags, scores, scoreCards, problems } = reckoning.value;
    const at = { startedAt: startedAt.value, now: now.value };
    return { ...at, entries: entries.value, coverage, flags, scores, scoreCards, problems };
  });
  return { reckoning, report };
}
